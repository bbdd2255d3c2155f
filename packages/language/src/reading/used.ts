import { AstUtils } from 'langium';
import { type Block, type Document, isAccept } from '../generated/ast.js';

/** What is imported in order to be chosen from; the rest is imported in order to be there. */
const chosen = new Set<Block['kind']>(['operator', 'crowd', 'desk', 'stool', 'chair', 'monitor', 'rack']);

/**
 * The blocks that make up a booth: all of the first file, and of the others those that are meant to be there or that a
 * block which counts refers to. The booth block of an imported file never counts.
 */
export function usedBlocks(roots: readonly Document[]): readonly Block[] {
  const [own, ...imported] = roots;
  if (!own) return [];
  const used = new Set<Block>(own.blocks);
  for (const block of imported.flatMap(({ blocks }) => blocks))
    if (block.kind !== 'booth' && !chosen.has(block.kind)) used.add(block);
  for (const placement of roots.flatMap(({ placements }) => placements))
    for (const { ref } of placement.pieces) if (ref) used.add(ref);
  for (const block of used) {
    for (const { reference, container } of AstUtils.streamAst(block).flatMap(AstUtils.streamReferences)) {
      const target = 'ref' in reference ? (reference.ref as Block | undefined) : undefined;
      if (target && !isAccept(container) && target.$container.$type === 'Document') used.add(target);
    }
  }
  const racks = imported
    .flatMap(({ blocks }) => blocks)
    .filter((block) => block.kind === 'rack' && hangsUnderUsed(block, used));
  return [...used, ...racks.filter((rack) => !used.has(rack))];
}

function hangsUnderUsed(rack: Block, used: ReadonlySet<Block>): boolean {
  return AstUtils.streamAst(rack)
    .flatMap(AstUtils.streamReferences)
    .some(({ reference }) => 'ref' in reference && used.has(reference.ref as Block));
}

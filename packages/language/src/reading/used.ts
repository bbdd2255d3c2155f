import type { Block, Document, Item } from '../generated/ast.js';
import { isBetween, isBlock, isNames, isScreen } from '../generated/ast.js';

/** What is imported in order to be chosen from; the rest is imported in order to be there. */
const chosen = new Set<Block['kind']>(['operator', 'crowd', 'desk', 'stool', 'chair', 'monitor', 'rack']);

/**
 * The blocks that make up a booth: all of the first file, and of the others those that are meant to be there or that a
 * block which counts refers to. The booth block of an imported file never counts.
 */
export function usedBlocks([own, ...imported]: readonly Document[]): readonly Block[] {
  if (!own) return [];
  if (imported.length === 0) return own.blocks;
  const used = new Set<Block>(own.blocks);
  const others = imported.flatMap(({ blocks }) => blocks);
  for (const block of others) if (block.kind !== 'booth' && !chosen.has(block.kind)) used.add(block);
  for (const { pieces } of [own, ...imported].flatMap(({ placements }) => placements))
    for (const { ref } of pieces) if (ref) used.add(ref);
  for (const block of used) for (const target of targetsOf(block.items)) if (isOuter(target)) used.add(target);
  for (const rack of others)
    if (rack.kind === 'rack' && targetsOf(rack.items).some((desk) => used.has(desk))) used.add(rack);
  return [...used];
}

/** The blocks that these properties, and those of nested blocks, name. */
function targetsOf(items: readonly Item[]): readonly Block[] {
  return items.flatMap((item) => {
    if (isNames(item)) return item.refs.flatMap(({ ref }) => ref ?? []);
    if (isBetween(item)) return item.sides.flatMap(({ piece }) => piece?.ref ?? []);
    if (isScreen(item)) return item.monitor?.ref ?? [];
    return isBlock(item) ? targetsOf(item.items) : [];
  });
}

function isOuter(block: Block): boolean {
  return block.$container.$type === 'Document';
}

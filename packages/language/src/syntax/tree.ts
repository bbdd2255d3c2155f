import { AstUtils, type AstNode, type CstNode, CstUtils, GrammarUtils, type LangiumDocument } from 'langium';
import type { Origin, TextPosition } from '@boothwright/fit';
import {
  type Block,
  type Document,
  isBlock,
  isDocument,
  isFlag,
  isBetween,
  isNames,
  isPlacement,
  isProperty,
  isScreen,
  type Between,
  type Flag,
  type Names,
  type Placement,
  type Property,
  type Screen,
} from '../generated/ast.js';
import { entryOf, propertyOf } from '../vocabulary/vocabulary.js';
import type { BlockEntry, Kind, PropertyEntry } from '../vocabulary/entries.js';

/** A node that holds properties. */
export type Holder = Block | Screen | Placement;
/** A node that is a property. */
export type PropertyNode = Property | Names | Flag | Between;

export function isHolder(node: unknown): node is Holder {
  return isBlock(node) || isScreen(node) || isPlacement(node);
}

export function isPropertyNode(node: unknown): node is PropertyNode {
  return isProperty(node) || isNames(node) || isFlag(node) || isBetween(node);
}

export function kindOf(holder: Holder): Kind {
  if (isPlacement(holder)) return 'place';
  return isScreen(holder) ? 'screen' : holder.kind;
}

export function itemsOf(holder: Holder): readonly AstNode[] {
  return isPlacement(holder) ? holder.settings : holder.items;
}

export function propertiesOf(holder: Holder): readonly PropertyNode[] {
  return itemsOf(holder).filter(isPropertyNode);
}

/** The blocks and screens directly in a block. */
export function nestedOf(holder: Holder): readonly (Block | Screen)[] {
  return itemsOf(holder).filter((item): item is Block | Screen => isBlock(item) || isScreen(item));
}

export function entryOfHolder(holder: Holder): BlockEntry {
  return entryOf(kindOf(holder));
}

/** What the vocabulary says of a property where it stands; nothing if it stands in the wrong place. */
export function entryOfProperty(property: PropertyNode): PropertyEntry | undefined {
  const holder = property.$container;
  return isHolder(holder) ? propertyOf(kindOf(holder), property.key) : undefined;
}

/** A nested block in a block that may hold it, or a block in the file. */
export function isInPlace(block: Block | Screen): boolean {
  const { within } = entryOfHolder(block);
  const container = block.$container as AstNode;
  return isHolder(container) ? within === kindOf(container) : within === 'file';
}

/** The declarations of a file, and what stands between them, kind by kind. */
export function topLevel({ parseResult: { value } }: LangiumDocument): readonly AstNode[] {
  if (!isDocument(value)) return [value];
  const { imports, blocks, placements, accepts, strays } = value;
  return [...imports, ...blocks, ...placements, ...accepts, ...strays];
}

/** The index of the last of the blocks of a document that begins at a place or before it; the first, if all begin after it. */
export function lastBlockFrom(blocks: readonly Block[], offset: number): number {
  let low = 0;
  let high = blocks.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (blocks[middle]!.$cstNode!.offset <= offset) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** All blocks of a document, the nested ones after the block that holds them. */
export function allBlocks(document: Document): readonly Block[] {
  return document.blocks.flatMap((block) => [block, ...block.items.filter(isBlock)]);
}

/** The place of a property of a node: its name, its key, one of its values. */
export function partOf(node: AstNode, property: string, index?: number): CstNode | undefined {
  return GrammarUtils.findNodeForProperty(node.$cstNode, property, index) ?? node.$cstNode;
}

/** The place of a keyword of a node. */
export function keywordOf(node: AstNode, keyword: string): CstNode | undefined {
  return GrammarUtils.findNodeForKeyword(node.$cstNode, keyword) ?? node.$cstNode;
}

/** The first comma in a node that no value follows. */
export function loneComma(node: { readonly $cstNode?: CstNode }): CstNode | undefined {
  if (!node.$cstNode?.text.includes(',')) return undefined;
  const leaves = CstUtils.flattenCst(node.$cstNode)
    .filter(({ hidden }) => !hidden)
    .toArray();
  return leaves.find(({ text }, index) => text === ',' && (leaves[index + 1]?.text ?? ',') === ',');
}

export function originOf(part: CstNode | undefined): Origin {
  const zero = { line: 0, character: 0 };
  if (!part) return { uri: '', start: zero, end: zero };
  const document = AstUtils.getDocument(part.astNode);
  return { uri: document.uri.toString(), start: part.range.start, end: part.range.end };
}

/** The node whose text stands at a place of a document: the innermost. */
export function nodeAt({ parseResult, textDocument }: LangiumDocument, place: TextPosition): AstNode | undefined {
  const root = parseResult.value.$cstNode;
  return root && CstUtils.findLeafNodeAtOffset(root, textDocument.offsetAt(place))?.astNode;
}

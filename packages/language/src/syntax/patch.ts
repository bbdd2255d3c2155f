import { type AstNode, type CstNode, isCompositeCstNode, isLeafCstNode, type ParseResult } from 'langium';
import { bounds } from '../bounds.js';
import { type Block, type Document, isDocument } from '../generated/ast.js';
import { type Difference, differenceBetween } from './difference.js';
import { lastBlockFrom } from './tree.js';

/** Parses a text that stands for a whole document. */
export type Parse = (text: string) => ParseResult;

/**
 * The parse result of a text that differs from the last one in the inside of one block only: the block is parsed by itself and set in
 * place of the old one, the others move. Nothing if that cannot be told apart from luck: if either text has a fault of syntax, or the change
 * touches anything outside the block's braces. The old result is used up.
 */
export function patch(old: ParseResult, text: string, parse: Parse): ParseResult | undefined {
  const exchange = exchangeIn(old, text, parse);
  return exchange && { ...old, value: replace(exchange, text) };
}

/** A block of a changed text, and the one of the document in whose place it would stand. */
export interface Instead {
  readonly block: Block;
  readonly of: Block;
}

/** The block that `patch` would set in place of an old one, as it would stand there. The old result stays as it is. */
export function tryBlock(old: ParseResult, text: string, parse: Parse): Instead | undefined {
  const exchange = exchangeIn(old, text, parse);
  if (!exchange) return undefined;
  const { root, index, block } = exchange;
  const of = root.blocks[index]!;
  moveTo(of, block);
  (block.$cstNode!.root as CstNode as CstInside)._text = text;
  return { block: Object.assign(block, { $container: root }), of };
}

interface Exchange {
  readonly root: Document;
  readonly index: number;
  /** Parsed by itself: it stands at the beginning of a text. */
  readonly block: Block;
  readonly growth: number;
}

function exchangeIn(old: ParseResult, text: string, parse: Parse): Exchange | undefined {
  const root = old.value;
  const rootCst = root.$cstNode;
  if (!isDocument(root) || !rootCst || !isClean(old) || text.length > bounds.characters) return undefined;
  const change = differenceBetween(rootCst.root.fullText, text);
  const index = blockAround(root.blocks, change);
  const block = root.blocks[index];
  const cst = block?.$cstNode;
  if (!block || !cst || !isDelimited(block)) return undefined;
  const start = cst.offset;
  const { growth } = change;
  const end = cst.end + growth;
  const made = onlyBlock(parse(text.slice(start, end)), end - start);
  return made?.kind === block.kind ? { root, index, block: made, growth } : undefined;
}

function isClean({ lexerErrors, parserErrors }: ParseResult): boolean {
  return lexerErrors.length === 0 && parserErrors.length === 0;
}

/** The index of the block inside whose braces all of the change lies; −1 if there is none. */
function blockAround(blocks: readonly Block[], change: Difference): number {
  const index = lastBlockFrom(blocks, change.start);
  const cst = blocks[index]?.$cstNode;
  if (!cst || !isCompositeCstNode(cst)) return -1;
  const opening = cst.content.find((node) => isLeafCstNode(node) && node.text === '{');
  return opening && change.start >= opening.end && change.end <= cst.end - 1 ? index : -1;
}

/** Its head says by itself what it is: what stands before cannot make it read in another way. */
function isDelimited({ kind, name, $cstNode }: Block): boolean {
  const isNamed = name !== undefined || kind === 'room' || kind === 'booth';
  return isNamed && $cstNode!.text.endsWith('}');
}

/** The block, if the text holds nothing else and has no fault. */
function onlyBlock(part: ParseResult, length: number): Block | undefined {
  const { value } = part;
  if (!isClean(part) || !isDocument(value)) return undefined;
  const { imports, blocks, placements, accepts, strays } = value;
  const [block] = blocks;
  const others = imports.length + placements.length + accepts.length + strays.length;
  if (blocks.length !== 1 || others > 0 || block!.$cstNode!.offset !== 0 || block!.$cstNode!.end !== length)
    return undefined;
  return block;
}

type Mutable<T> = { -readonly [K in keyof T]: T[K] };

/** A new root over the old declarations, the changed one aside: whatever was remembered of the old root is not of this one. */
function replace({ root: old, index, block, growth }: Exchange, text: string): Document {
  const oldBlock = old.blocks[index]!;
  const oldCst = oldBlock.$cstNode!;
  const cst = block.$cstNode!;
  const rootCst = old.$cstNode as CstNode & CstInside;
  const last = oldCst.range.end;

  moveTo(oldBlock, block);
  const { end } = cst.range;
  const at = rootCst.content!.indexOf(oldCst);
  rootCst.content![at] = cst;
  Object.assign(cst, { container: rootCst });
  const lines = end.line - last.line;
  const columns = end.character - last.character;
  if (growth !== 0 || lines !== 0 || columns !== 0)
    for (let next = at + 1; next < rootCst.content!.length; next++)
      move(rootCst.content![next]!, { offset: growth, lines, line: last.line, columns });
  rootCst._text = text;
  rootCst._rangeCache = undefined;

  const blocks = [...old.blocks];
  blocks[index] = block;
  const root: Document = Object.assign(Object.create(Object.getPrototypeOf(old) as object) as Document, old, {
    blocks,
  });
  delete (root as Mutable<AstNode>).$document;
  rootCst._astNode = root;
  for (const children of [root.imports, root.blocks, root.placements, root.accepts, root.strays])
    for (const child of children) (child as Mutable<AstNode>).$container = root;
  return root;
}

/** Makes a block that was parsed by itself stand where another stands. */
function moveTo({ $cstNode, $containerProperty, $containerIndex }: Block, block: Block): void {
  const { offset, range } = $cstNode!;
  const { line, character } = range.start;
  move(block.$cstNode!, { offset, lines: line, line: 0, columns: character });
  Object.assign(block, { $containerProperty, $containerIndex });
}

/** The fields that a node of the library keeps its place in; `patch.test.ts` holds a patched tree against a fresh one. */
interface CstInside {
  content?: CstNode[];
  container?: unknown;
  _text?: string;
  _astNode?: AstNode;
  _rangeCache?: unknown;
  _offset?: number;
  _startLine?: number;
  _endLine?: number;
  _startColumn?: number;
  _endColumn?: number;
}

/** How far to move: offset and lines, and what stands on one line (counted before the move) also sideways. */
interface Way {
  readonly offset: number;
  readonly lines: number;
  readonly line: number;
  readonly columns: number;
}

function move(node: CstNode, way: Way): void {
  const inside = node as CstNode & CstInside;
  if (inside.content) {
    inside._rangeCache = undefined;
    for (const child of inside.content) move(child, way);
    return;
  }
  if (inside._startLine === way.line) inside._startColumn! += way.columns;
  if (inside._endLine === way.line) inside._endColumn! += way.columns;
  inside._offset! += way.offset;
  inside._startLine! += way.lines;
  inside._endLine! += way.lines;
}

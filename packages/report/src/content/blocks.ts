import type { Verdict } from '@boothwright/fit';
import type { Drawing } from '../drawings/drawing.js';
import type { ChartTold } from '../telling/curves.js';
import { verdictWords } from '../words.js';

/** The report as plain data: what each writer sets in its own way. */
export type Block =
  | { readonly kind: 'heading'; readonly level: Level; readonly text: string }
  | { readonly kind: 'paragraph'; readonly text: Text }
  | { readonly kind: 'list'; readonly numbered: boolean; readonly items: readonly Item[] }
  | TableBlock
  | FiguresBlock
  | { readonly kind: 'charts'; readonly charts: readonly ChartTold[] }
  | GroupBlock
  | MoreBlock;

export type Level = 1 | 2 | 3;

export interface TableBlock {
  readonly kind: 'table';
  readonly caption: string;
  readonly head: readonly Text[];
  readonly rows: readonly (readonly Text[])[];
}

/** Drawings that stand side by side where there is room. */
export interface FiguresBlock {
  readonly kind: 'figures';
  readonly figures: readonly Figure[];
}

export interface Figure {
  readonly caption: string;
  readonly drawing: Drawing;
  /** The same for narrow paper. */
  readonly narrow?: Drawing | undefined;
}

/** Blocks that stand on one page, or that ask for a writer that can draw. */
export interface GroupBlock {
  readonly kind: 'page' | 'drawn';
  readonly blocks: readonly Block[];
}

/** Blocks that a page folds away, and that paper leaves out. */
export interface MoreBlock {
  readonly kind: 'more';
  readonly title: string;
  readonly blocks: readonly Block[];
}

/** An item of a list, or several lines of one. */
export type Item = readonly Text[];

/** Spans that follow one another with a space between. */
export type Text = readonly Span[];

export type Span = string | StyledSpan | VerdictSpan;

export interface StyledSpan {
  readonly text: string;
  readonly as: 'strong' | 'soft' | 'code';
}

/** A verdict by its word, and by its shape where a writer can draw. */
export interface VerdictSpan {
  readonly verdict: Verdict;
  readonly word: string;
}

export function heading(level: Level, text: string): Block {
  return { kind: 'heading', level, text };
}

export function paragraph(...text: Text): Block {
  return { kind: 'paragraph', text };
}

/** Nothing without items. */
export function list(items: readonly Item[], numbered = false): Block[] {
  return items.length === 0 ? [] : [{ kind: 'list', numbered, items }];
}

/** Nothing without rows. */
export function table(
  caption: string,
  head: readonly (Span | Text)[],
  rows: readonly (readonly (Span | Text)[])[],
): Block[] {
  if (rows.length === 0) return [];
  return [{ kind: 'table', caption, head: head.map(textOf), rows: rows.map((row) => row.map(textOf)) }];
}

/** A heading and what stands below it; nothing if nothing does. */
export function section(title: string, blocks: readonly Block[], level: Level = 2): Block[] {
  return blocks.length === 0 ? [] : [heading(level, title), ...blocks];
}

/** Nothing without blocks. */
export function group(kind: GroupBlock['kind'], blocks: readonly Block[]): Block[] {
  return blocks.length === 0 ? [] : [{ kind, blocks }];
}

/** Nothing without blocks. */
export function more(title: string, blocks: readonly Block[]): Block[] {
  return blocks.length === 0 ? [] : [{ kind: 'more', title, blocks }];
}

export function strong(text: string): Span {
  return { text, as: 'strong' };
}

export function soft(text: string): Span {
  return { text, as: 'soft' };
}

export function code(text: string): Span {
  return { text, as: 'code' };
}

export function verdictSpan(verdict: Verdict, word = verdictWords[verdict]): Span {
  return { verdict, word };
}

function textOf(given: Span | Text): Text {
  return isText(given) ? given : [given];
}

function isText(given: Span | Text): given is Text {
  return Array.isArray(given);
}

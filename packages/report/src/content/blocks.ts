import type { Verdict } from '@boothwright/fit';
import type { Drawing } from '../drawings/drawing.js';
import type { ChartTold } from '../telling/curves.js';
import { verdictWords } from '../words.js';

/** The report as plain data: what each writer sets in its own way. */
export type Block =
  | { readonly kind: 'heading'; readonly level: 1 | 2 | 3; readonly text: string }
  | { readonly kind: 'paragraph'; readonly text: Text }
  | { readonly kind: 'list'; readonly numbered: boolean; readonly items: readonly Item[] }
  | { readonly kind: 'table'; readonly head: readonly Text[]; readonly rows: readonly (readonly Text[])[] }
  | { readonly kind: 'drawings'; readonly drawings: readonly Captioned[] }
  | { readonly kind: 'chart'; readonly chart: ChartTold };

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

export interface Captioned {
  readonly caption: string;
  readonly drawing: Drawing;
}

export function heading(level: 1 | 2 | 3, text: string): Block {
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
export function table(head: readonly (Span | Text)[], rows: readonly (readonly (Span | Text)[])[]): Block[] {
  if (rows.length === 0) return [];
  return [{ kind: 'table', head: head.map(textOf), rows: rows.map((row) => row.map(textOf)) }];
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

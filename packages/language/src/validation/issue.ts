import type { CstNode } from 'langium';
import type { Origin } from '@boothwright/fit';
import type { Range } from 'vscode-languageserver-types';

/** What is wrong with the text itself, by a code that does not change. */
export const issueCodes = [
  'syntax',
  'stray-brace',
  'missing-brace',
  'open-comment',
  'open-text',
  'curly-quotes',
  'missing-value',
  'stray-value',
  'no-unit',
  'unknown-unit',
  'malformed-number',
  'wrong-quantity',
  'out-of-bounds',
  'range-reversed',
  'range-unwanted',
  'too-many-values',
  'unwanted-word',
  'unknown-word',
  'unknown-property',
  'misplaced',
  'duplicate-property',
  'duplicate-block',
  'duplicate-name',
  'missing-name',
  'unwanted-name',
  'reserved-name',
  'unknown-name',
  'wrong-kind',
  'repeated-name',
  'unknown-check',
  'no-single-limit',
  'missing-reason',
  'unused-acceptance',
  'import-path',
  'import-missing',
  'import-circle',
  'hidden-character',
  'too-large',
  'more-faults',
  'checks-stopped',
] as const;

export type IssueCode = (typeof issueCodes)[number];

/** What a quick fix needs to know. */
export interface IssueData {
  /** The text as typed. */
  readonly text?: string;
  /** Texts that may replace it, the likeliest first. */
  readonly suggestions?: readonly string[];
}

/** One fault of the text, at the smallest place that shows it. */
export interface Issue {
  readonly code: IssueCode;
  readonly message: string;
  readonly range: Range;
  /** True for what stands there to no purpose; anything else is an error. */
  readonly isIdle?: boolean;
  readonly data?: IssueData;
  readonly related?: readonly { readonly origin: Origin; readonly message: string }[];
}

export type Report = (issue: Issue) => void;

/** The place of a syntax node; the start of the text if it has none. */
export function rangeOf(node: CstNode | undefined): Range {
  return node?.range ?? { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };
}

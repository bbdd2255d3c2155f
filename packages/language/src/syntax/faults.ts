import type { LexerResult } from 'langium';
import type { IssueCode, IssueData } from '../validation/issue.js';

export type Token = LexerResult['tokens'][number];

/** A lexing error of our own, with a code. */
export type Fault = LexerResult['errors'][number] & { readonly code: IssueCode; readonly data?: IssueData };

/** A fault over one token, or from the first to the last of several on one line. */
export function fault(code: IssueCode, at: Token | readonly Token[], message: string, data?: IssueData): Fault {
  const tokens = Array.isArray(at) ? (at as readonly Token[]) : [at as Token];
  const first = tokens[0]!;
  const last = tokens[tokens.length - 1]!.startLine === first.startLine ? tokens[tokens.length - 1]! : first;
  return {
    code,
    data,
    message,
    offset: first.startOffset,
    line: first.startLine!,
    column: first.startColumn!,
    length: last.endOffset! - first.startOffset + 1,
  };
}

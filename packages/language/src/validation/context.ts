import { listOf, said } from '@boothwright/fit';
import { type LangiumDocument, type URI, UriUtils } from 'langium';
import type { DisplayUnit } from '@boothwright/fit';
import type { Document, Odd } from '../generated/ast.js';
import type { CstNode } from 'langium';
import { type Issue, type IssueCode, type IssueData, rangeOf, type Report } from './issue.js';

/** What the checks of one document share. */
export class Context {
  /** What is not understood but spoken for already. */
  readonly settled = new Set<Odd>();
  private gathered: Issue[] | undefined;

  constructor(
    readonly document: LangiumDocument,
    readonly root: Document,
    /** The document and all that it imports. */
    readonly visible: readonly LangiumDocument[],
    readonly show: DisplayUnit,
    /** The ids of the checks, and of those that take a limit of the file's own. */
    readonly checks: { readonly all: readonly string[]; readonly limits: readonly string[] },
    /** Whether an imported file that is not visible is there, but one too many. */
    readonly isBeyond: (uri: URI) => boolean,
    private readonly passOn: Report,
  ) {}

  readonly report: Report = (issue) => {
    if (this.gathered) this.gathered.push(issue);
    else this.passOn(issue);
  };

  /** What a part of the checks reports, instead of reporting it. */
  gather(check: () => void): readonly Issue[] {
    const issues: Issue[] = [];
    this.gathered = issues;
    try {
      check();
    } finally {
      this.gathered = undefined;
    }
    return issues;
  }

  say(code: IssueCode, place: CstNode | undefined, message: string, data?: IssueData): void {
    this.report({ code, message, range: rangeOf(place), data });
  }

  /** A document by its file name, as a message says it. */
  nameOf(document: LangiumDocument): string {
    return UriUtils.basename(document.uri);
  }
}

/** 'a desk', 'an operator'. */
export function aOf(noun: string): string {
  return said(withArticle(noun));
}

/** The same in English, as a translation knows it. */
export function withArticle(noun: string): string {
  return `${/^[aeiou]/.test(noun) ? 'an' : 'a'} ${noun}`;
}

/** 'a, b or c'. */
export function orOf(words: readonly string[]): string {
  return listOf(words, 'or');
}

import type { CstNode } from 'langium';
import type { DisplayUnit } from '@boothwright/fit';
import type { Quantity as QuantityNode } from '../generated/ast.js';
import { partOf } from '../syntax/tree.js';
import { type IssueCode, rangeOf, type Report } from '../validation/issue.js';

/** What interpreting a value needs to know beside the value. */
export interface Reading {
  readonly report: Report;
  /** The unit that the file shows lengths in: a bare number probably means it. */
  readonly show: DisplayUnit;
}

/** Reports a fault of a quantity, or of one end of its range. */
export function report(
  reading: Reading,
  code: Parameters<Report>[0]['code'],
  node: QuantityNode,
  message: string,
  suggestions: readonly string[] = [],
  text: string = node.text,
  part?: 'text' | 'upper',
): void {
  const place = part ? partOf(node, part) : node.$cstNode;
  reading.report({ code, message, range: rangeOf(place), data: { text, suggestions } });
}

/** Reports a fault of anything else. */
export function complain(
  { report }: Reading,
  code: IssueCode,
  place: CstNode | undefined,
  message: string,
  text?: string,
  suggestions?: readonly string[],
): void {
  report({ code, message, range: rangeOf(place), data: suggestions && { text, suggestions } });
}

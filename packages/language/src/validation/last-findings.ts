import { TextDocument } from 'langium';
import type { Assessment } from '@boothwright/fit';
import type { Diagnostic, Range } from 'vscode-languageserver-types';
import { type Difference, differenceBetween } from '../syntax/difference.js';
import { type FindingData, type ShownFinding, topicOf } from './findings.js';

interface Last {
  readonly text: TextDocument;
  readonly findings: readonly ShownFinding[];
}

/**
 * The findings of the last text of each file that could be read. While it cannot, they stay where they still apply, and move along
 * with what is typed before them.
 */
export class LastFindings {
  private readonly last = new Map<string, Last>();

  /** Takes these for the findings of a text that can be read. */
  keep(document: TextDocument, findings: readonly ShownFinding[]): void {
    this.last.set(document.uri, { text: copyOf(document), findings });
  }

  /**
   * Those that still apply to a text that cannot be read: their own words are untouched, and the checks could not look
   * at the same thing anew. Their remedies are gone: they may no longer fit.
   */
  staying(document: TextDocument, now: Assessment | undefined): Diagnostic[] {
    const last = this.last.get(document.uri);
    if (!last) return [];
    const edit = differenceBetween(last.text.getText(), document.getText());
    const moved = last.findings.flatMap((finding) => move(finding, last.text, document, edit));
    this.last.set(document.uri, { text: copyOf(document), findings: moved });
    const judged = new Set(now?.findings.filter(({ verdict }) => verdict !== 'unknown').map(topicOf));
    return moved.filter(({ topic }) => !judged.has(topic)).map(({ diagnostic }) => diagnostic);
  }

  forget(uri: string): void {
    this.last.delete(uri);
  }
}

/** A document that an editor has open changes in place. */
function copyOf(document: TextDocument): TextDocument {
  return TextDocument.create(document.uri, document.languageId, document.version, document.getText());
}

function move(
  { topic, diagnostic }: ShownFinding,
  from: TextDocument,
  to: TextDocument,
  edit: Difference,
): ShownFinding[] {
  const range = moveRange(diagnostic.range, from, to, edit);
  if (!range) return [];
  const data: FindingData = { ...(diagnostic.data as FindingData), remedies: [], missing: undefined };
  const relatedInformation = diagnostic.relatedInformation?.flatMap(({ location, message }) => {
    const place = location.uri === to.uri ? moveRange(location.range, from, to, edit) : location.range;
    return place ? [{ location: { uri: location.uri, range: place }, message }] : [];
  });
  return [{ topic, diagnostic: { ...diagnostic, range, relatedInformation, data } }];
}

/** Nothing if the edit touches a word of the range. */
function moveRange(range: Range, from: TextDocument, to: TextDocument, edit: Difference): Range | undefined {
  const [start, end] = [from.offsetAt(range.start), from.offsetAt(range.end)];
  const isBefore = end < edit.start || (end === edit.start && !/^[\p{L}\p{N}.]/u.test(edit.inserted));
  if (isBefore) return { start: to.positionAt(start), end: to.positionAt(end) };
  const isAfter = start > edit.end || (start === edit.end && !/[\p{L}\p{N}.]$/u.test(edit.inserted));
  return isAfter ? { start: to.positionAt(start + edit.growth), end: to.positionAt(end + edit.growth) } : undefined;
}

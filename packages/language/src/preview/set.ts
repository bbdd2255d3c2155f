import { AstUtils, type AstNode, GrammarUtils, type LangiumDocument, type LangiumDocuments, URI } from 'langium';
import { type Assessment, formatLength, type Millimetres, type Origin, typeLength } from '@boothwright/fit';
import type { TextEdit } from 'vscode-languageserver-types';
import { isBlock, isScreen } from '../generated/ast.js';
import { snapped, spelledLike, stepOf } from '../quantity/spelling.js';
import { type Holder, itemsOf, nodeAt } from '../syntax/tree.js';
import { handlesOf, type Held } from './handles.js';
import type { Handle, Setting } from './protocol.js';

/** An edit of one file. */
export type FileEdit = TextEdit & { readonly uri: string };

/** What a drawing can change, with the step that suits how the text writes each number. */
export function offeredHandles(assessment: Assessment, documents: LangiumDocuments): readonly Handle[] {
  return handlesWith(assessment, ({ written, part }) => {
    const text = written && textOf(written, documents)?.split(separator)[2 * part];
    return text === undefined ? undefined : stepOf(text);
  });
}

/** What a drawing of numbers that are in no text yet can change: by the steps of the text as it is. */
export function triedHandles(tried: Assessment, current: Assessment, documents: LangiumDocuments): readonly Handle[] {
  const steps = new Map(offeredHandles(current, documents).map(({ id, step }) => [id, step]));
  return handlesWith(tried, ({ id }) => steps.get(id));
}

function handlesWith(assessment: Assessment, stepFor: (held: Held) => Millimetres | undefined): readonly Handle[] {
  const { show } = assessment.booth;
  return handlesOf(assessment).map((held) => {
    const { property: _property, written: _written, part: _part, owner: _owner, ...handle } = held;
    const step = stepFor(held) ?? stepOf(typeLength(held.value, show));
    return { ...handle, told: formatLength(held.value, show), step };
  });
}

/**
 * The edits that set numbers: a number that the text writes is written anew, in its own unit and marks; one that it does not write is
 * added to its block. Nothing if the booth has no such number.
 */
export function editsFor(
  settings: readonly Setting[],
  assessment: Assessment,
  documents: LangiumDocuments,
): readonly FileEdit[] | undefined {
  const held = new Map(handlesOf(assessment).map((handle) => [handle.id, handle]));
  const wanted = settings.map(({ handle, value }) => ({ handle: held.get(handle), value }));
  if (wanted.some(({ handle, value }) => !handle || !Number.isFinite(value))) return undefined;
  const changes = wanted as readonly Change[];
  const edits = groups(changes).map(
    (group) => rewritten(group, assessment, documents) ?? added(group, assessment, documents),
  );
  return edits.every((edit) => edit !== undefined) ? edits : undefined;
}

interface Change {
  readonly handle: Held;
  readonly value: Millimetres;
}

/** Changes of one text together: a range or a point is written once. */
function groups(changes: readonly Change[]): readonly (readonly Change[])[] {
  const found = new Map<string, Change[]>();
  for (const change of changes) {
    const { written, owner, property } = change.handle;
    const key = JSON.stringify(written ?? [owner, property]);
    found.set(key, [...(found.get(key) ?? []), change]);
  }
  return [...found.values()];
}

function rewritten(group: readonly Change[], { booth }: Assessment, documents: LangiumDocuments): FileEdit | undefined {
  const { written } = group[0]!.handle;
  const text = written && textOf(written, documents);
  if (text === undefined) return undefined;
  const pieces = text.split(separator);
  for (const { handle, value } of group) {
    const at = 2 * handle.part;
    const old = pieces[at];
    if (old === undefined) return undefined;
    pieces[at] = spelledLike(old, bounded(value, handle, stepOf(old)), booth.show);
  }
  return { uri: written!.uri, range: { start: written!.start, end: written!.end }, newText: pieces.join('') };
}

/** Between the lengths of a range or a point; kept as it is written. */
const separator = /(\s*(?:\.\.|,)\s*)/;

function bounded(value: Millimetres, { min, max }: Held, step: Millimetres): Millimetres {
  return snapped(Math.min(max, Math.max(min, value)), step);
}

function textOf({ uri, start, end }: Origin, documents: LangiumDocuments): string | undefined {
  return documents.getDocument(URI.parse(uri))?.textDocument.getText({ start, end });
}

/** Writes a property into the block that is silent about it: after its last one, as far in as that. */
function added([change]: readonly Change[], { booth }: Assessment, documents: LangiumDocuments): FileEdit | undefined {
  const { handle, value } = change!;
  const { owner } = handle;
  const document = owner && documents.getDocument(URI.parse(owner.uri));
  const holder = document && holderAt(document, owner);
  if (!document || !holder?.$cstNode) return undefined;
  const length = bounded(value, handle, stepOf(typeLength(value, booth.show)));
  const says = `${handle.property} ${typeLength(length, booth.show)}`;
  const { offset, text } = placeIn(holder, document, says);
  const at = document.textDocument.positionAt(offset);
  return { uri: document.uri.toString(), range: { start: at, end: at }, newText: text };
}

function holderAt(document: LangiumDocument, { start }: Origin): Holder | undefined {
  const isWanted = (node: AstNode): node is Holder => isBlock(node) || isScreen(node);
  return AstUtils.getContainerOfType(nodeAt(document, start), isWanted);
}

function placeIn(holder: Holder, { textDocument }: LangiumDocument, says: string): { offset: number; text: string } {
  const node = holder.$cstNode!;
  const brace = GrammarUtils.findNodeForKeyword(node, '{');
  if (!brace) return { offset: node.end, text: ` { ${says} }` };
  const last = itemsOf(holder).at(-1)?.$cstNode;
  if (!last) return { offset: brace.end, text: ` ${says}` };
  if (last.range.end.line === brace.range.start.line) return { offset: last.end, text: `   ${says}` };
  const { line } = last.range.start;
  const indent = /^[ \t]*/.exec(textDocument.getText({ start: { line, character: 0 }, end: last.range.start }))![0];
  return { offset: last.end, text: `\n${indent}${says}` };
}

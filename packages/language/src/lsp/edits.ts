import type { Origin } from '@boothwright/fit';
import type { TextEdit, WorkspaceEdit } from 'vscode-languageserver-types';

/** A computed change as fit gives it: the text at its origin is replaced. */
export interface Change {
  readonly origin: Origin;
  readonly text: string;
}

export function editOfChanges(changes: readonly Change[]): WorkspaceEdit {
  return editOf(
    changes.map(({ origin: { uri, start, end }, text }) => ({ uri, range: { start, end }, newText: text })),
  );
}

export function editOf(edits: readonly (TextEdit & { readonly uri: string })[]): WorkspaceEdit {
  const changes: Record<string, TextEdit[]> = {};
  for (const { uri, range, newText } of edits) (changes[uri] ??= []).push({ range, newText });
  return { changes };
}

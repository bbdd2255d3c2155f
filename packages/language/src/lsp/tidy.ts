import { type LangiumDocument, TextDocument, URI } from 'langium';
import type { TextEdit, WorkspaceEdit } from 'vscode-languageserver-types';
import type { BoothServices } from '../services.js';
import { differenceBetween } from '../syntax/difference.js';
import type { BoothFormatter } from './formatter.js';

/** A longer text, in characters, is left to the command that formats: fixes are offered while somebody moves through it. */
const LONG = 200_000;

/** The edit with each file formatted that it changes, as far as the file can be read after it. */
export function tidied({ changes = {} }: WorkspaceEdit, services: BoothServices): WorkspaceEdit {
  const { LangiumDocuments } = services.shared.workspace;
  const files = Object.entries(changes).map(([uri, edits]): [string, TextEdit[]] => {
    const document = LangiumDocuments.getDocument(URI.parse(uri));
    const isShort = document && document.textDocument.getText().length <= LONG;
    return [uri, isShort ? [formattedEdit(document, edits, services)] : edits];
  });
  return { changes: Object.fromEntries(files) };
}

/** One edit that does what the given ones do, and formats the file. */
export function formattedEdit(
  { textDocument, uri }: LangiumDocument,
  edits: readonly TextEdit[],
  { shared, lsp }: BoothServices,
): TextEdit {
  const changed = TextDocument.applyEdits(textDocument, [...edits]);
  const draft = shared.workspace.LangiumDocumentFactory.fromString(changed, uri);
  const after = (lsp.Formatter as BoothFormatter).formatted(draft, indentationOf(changed));
  const { start, end, inserted } = differenceBetween(textDocument.getText(), after);
  return { range: { start: textDocument.positionAt(start), end: textDocument.positionAt(end) }, newText: inserted };
}

/** How the text is indented already; an editor does not say it with a request for actions. */
function indentationOf(text: string): { tabSize: number; insertSpaces: boolean } {
  const first = /^([ \t]+)(?![ \t]|\/\/)\S/m.exec(text)?.[1] ?? '  ';
  return { tabSize: first.length, insertSpaces: !first.startsWith('\t') };
}

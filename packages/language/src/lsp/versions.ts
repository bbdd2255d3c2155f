import { type LangiumDocument, URI } from 'langium';
import type { LangiumSharedServices } from 'langium/lsp';
import type { Connection, PublishDiagnosticsParams } from 'vscode-languageserver';

/**
 * The connection, with diagnostics that say which version of a text they are of. Those of a text that has changed since are kept back: a
 * check of the new one is on its way. `unasked` leaves out what the editor asks for by itself.
 */
export function withVersions(
  connection: Connection,
  shared: () => LangiumSharedServices,
  unasked: (params: PublishDiagnosticsParams) => PublishDiagnosticsParams,
): Connection {
  const sendDiagnostics = async (params: PublishDiagnosticsParams): Promise<void> => {
    const { LangiumDocuments, TextDocuments } = shared().workspace;
    const open = TextDocuments.get(params.uri);
    const document = LangiumDocuments.getDocument(URI.parse(params.uri));
    if (!open || !document) return connection.sendDiagnostics(params);
    if (isOfOpenText(document, shared()))
      return connection.sendDiagnostics({ ...unasked(params), version: open.version });
  };
  return Object.create(connection, { sendDiagnostics: { value: sendDiagnostics } }) as Connection;
}

/** Whether a document was parsed from what the editor holds now; a file that is not open is as it was read. */
export function isOfOpenText(document: LangiumDocument, { workspace }: LangiumSharedServices): boolean {
  const open = workspace.TextDocuments.get(document.uri);
  return open === undefined || textOf(document) === open.getText();
}

/** The text that a document was parsed from. */
function textOf({ parseResult, textDocument }: LangiumDocument): string {
  return parseResult.value.$cstNode?.root.fullText ?? textDocument.getText();
}

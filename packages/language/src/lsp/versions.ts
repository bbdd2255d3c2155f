import { type LangiumDocument, URI } from 'langium';
import type { LangiumSharedServices } from 'langium/lsp';
import type { Connection, PublishDiagnosticsParams } from 'vscode-languageserver';

/**
 * The connection, with diagnostics that say which version of a text they are of. Those of a text that has changed since are kept back: a
 * check of the new one is on its way.
 */
export function withVersions(connection: Connection, shared: () => LangiumSharedServices): Connection {
  const sendDiagnostics = async (params: PublishDiagnosticsParams): Promise<void> => {
    const { LangiumDocuments, TextDocuments } = shared().workspace;
    const open = TextDocuments.get(params.uri);
    const document = LangiumDocuments.getDocument(URI.parse(params.uri));
    if (!open || !document) return connection.sendDiagnostics(params);
    if (textOf(document) === open.getText()) return connection.sendDiagnostics({ ...params, version: open.version });
  };
  return Object.create(connection, { sendDiagnostics: { value: sendDiagnostics } }) as Connection;
}

/** The text that a document was parsed from. */
function textOf({ parseResult, textDocument }: LangiumDocument): string {
  return parseResult.value.$cstNode?.root.fullText ?? textDocument.getText();
}

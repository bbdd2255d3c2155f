import { DocumentState, URI } from 'langium';
import type { LangiumSharedServices } from 'langium/lsp';
import type { CancellationToken } from 'vscode-languageserver';
import { rethrow } from './cancelled.js';

/** Answers a question about a file once its text as it is now is checked; null for a file that is not open. */
export type WhenChecked = <T>(text: string, token: CancellationToken, answer: (uri: URI) => T) => Promise<T | null>;

export function whenCheckedIn({ workspace }: LangiumSharedServices): WhenChecked {
  return async (text, token, answer) => {
    const uri = URI.parse(text);
    if (!workspace.LangiumDocuments.hasDocument(uri)) return null;
    await workspace.DocumentBuilder.waitUntil(DocumentState.Validated, uri, token).catch(rethrow);
    return workspace.WorkspaceLock.read(() => answer(uri));
  };
}

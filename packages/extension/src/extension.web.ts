/// <reference lib="webworker" />
import { type ExtensionContext, Uri } from 'vscode';
import { LanguageClient } from 'vscode-languageclient/browser';
import { clientId, clientName, start, type Running } from './extension.shared.js';

let running: Running | undefined;

/** Editors that run in a browser: the language server is a worker. */
export async function activate(context: ExtensionContext): Promise<void> {
  const script = Uri.joinPath(context.extensionUri, 'packages/extension/dist/server.web.js').toString(true);
  running = await start(
    context,
    (options) => new LanguageClient(clientId, clientName, () => Promise.resolve(new Worker(script)), options),
  );
}

export async function deactivate(): Promise<void> {
  await running?.stop();
}

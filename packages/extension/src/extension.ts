import { type ExtensionContext, Uri } from 'vscode';
import { LanguageClient, TransportKind } from 'vscode-languageclient/node';
import { clientId, clientName, start, type Running } from './extension.shared.js';

let running: Running | undefined;

/** Desktop and remote hosts: the language server is a Node process of its own. */
export async function activate(context: ExtensionContext): Promise<void> {
  const module = Uri.joinPath(context.extensionUri, 'packages/extension/dist/server.cjs').fsPath;
  const server = { module, transport: TransportKind.ipc };
  const debug = { ...server, options: { execArgv: ['--nolazy', '--inspect=6009'] } };
  running = await start(
    context,
    (options) => new LanguageClient(clientId, clientName, { run: server, debug }, options),
  );
}

export async function deactivate(): Promise<void> {
  await running?.stop();
}

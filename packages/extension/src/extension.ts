import { pathToFileURL } from 'node:url';
import { type ExtensionContext, Uri } from 'vscode';
import { LanguageClient, TransportKind } from 'vscode-languageclient/node';
import { clientId, clientName, start, type Running } from './extension.shared.js';
import type { RenderPdf } from './pdf-messages.js';

let running: Running | undefined;

/** Desktop and remote hosts: the language server is a Node process of its own. */
export async function activate(context: ExtensionContext): Promise<void> {
  const module = Uri.joinPath(context.extensionUri, 'packages/extension/dist/server.cjs').fsPath;
  const server = { module, transport: TransportKind.ipc };
  const debug = { ...server, options: { execArgv: ['--nolazy', '--inspect=6009'] } };
  running = await start(
    context,
    (options) => new LanguageClient(clientId, clientName, { run: server, debug }, options),
    async (...request) => {
      const { fsPath } = Uri.joinPath(context.extensionUri, 'packages/extension/dist/pdf.js');
      const module = (await import(pathToFileURL(fsPath).href)) as { default: { renderPdf: RenderPdf } };
      return module.default.renderPdf(...request);
    },
  );
}

export async function deactivate(): Promise<void> {
  await running?.stop();
}

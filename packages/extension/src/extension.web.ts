/// <reference lib="webworker" />
import { type ExtensionContext, Uri, workspace } from 'vscode';
import { BrowserMessageReader, BrowserMessageWriter, LanguageClient } from 'vscode-languageclient/browser';
import { clientId, clientName, start, type Running } from './extension.shared.js';
import type { PdfAnswer, PdfRequest } from './pdf-messages.js';

let running: Running | undefined;
let worker: Worker | undefined;

/** Editors that run in a browser: the language server is a worker. */
export async function activate(context: ExtensionContext): Promise<void> {
  const script = Uri.joinPath(context.extensionUri, 'packages/extension/dist/server.web.js');
  const connect = async () => {
    worker?.terminate();
    worker = await startWorker(script);
    return { reader: new BrowserMessageReader(worker), writer: new BrowserMessageWriter(worker) };
  };
  running = await start(
    context,
    (options) => new LanguageClient(clientId, clientName, connect, options),
    (...request) => renderInWorker(Uri.joinPath(context.extensionUri, 'packages/extension/dist/pdf.js'), request),
  );
}

export async function deactivate(): Promise<void> {
  await running?.stop();
  worker?.terminate();
}

async function renderInWorker(script: Uri, request: PdfRequest): Promise<Uint8Array> {
  const writer = await startWorker(script);
  try {
    const answer = await new Promise<PdfAnswer>((resolve, reject) => {
      writer.onmessage = ({ data }) => resolve(data as PdfAnswer);
      writer.onerror = ({ message }) => reject(new Error(message));
      writer.postMessage(request);
    });
    if ('failure' in answer) throw new Error(answer.failure);
    return answer.pdf;
  } finally {
    writer.terminate();
  }
}

/** An editor starts no worker from a script that lies on a remote machine; there its text is fetched first. */
async function startWorker(script: Uri): Promise<Worker> {
  if (script.scheme !== 'vscode-remote') return new Worker(script.toString(true));
  const text = await workspace.fs.readFile(script);
  return new Worker(URL.createObjectURL(new Blob([text.slice()], { type: 'text/javascript' })));
}

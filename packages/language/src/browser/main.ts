import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser';
import { EditorFileSystem } from '../lsp/files.js';
import { serve } from '../lsp/server.js';

type Worker = ConstructorParameters<typeof BrowserMessageReader>[0];

/** The language server in a browser's worker. */
const worker = globalThis as unknown as Worker;
const connection = createConnection(new BrowserMessageReader(worker), new BrowserMessageWriter(worker));
serve(connection, () => new EditorFileSystem(connection));

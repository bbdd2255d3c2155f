import { PassThrough } from 'node:stream';
import {
  createConnection,
  createProtocolConnection,
  type Diagnostic,
  type InitializeResult,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import { EditorFileSystem } from '../lsp/files.js';
import { serve } from '../lsp/server.js';
import {
  assessmentRequest,
  type AssessmentResult,
  type ClientOptions,
  type FileEntry,
  readDirectoryRequest,
  readFileRequest,
} from '../protocol.js';
import { memoryFiles, uriOf } from './memory.js';

/** The file that an editor opens. */
export const uri = uriOf('hall.booth').toString();

/** An editor that speaks to the server over streams, and reads files for it. */
export class Editor {
  readonly connection: ProtocolConnection;
  readonly files = memoryFiles({ 'furniture.booth': 'desk Long { width 60in  height 40in }' });
  readonly published: PublishDiagnosticsParams[] = [];
  /** How often the server said that the faults of a text are to be asked for again. */
  outdated = 0;
  /** How often the server said that hints are stale. */
  refreshed = 0;
  settings: unknown = null;
  private version = 0;

  constructor() {
    const [up, down] = [new PassThrough(), new PassThrough()];
    const server = createConnection(new StreamMessageReader(up), new StreamMessageWriter(down));
    serve(server, () => new EditorFileSystem(server));
    this.connection = createProtocolConnection(new StreamMessageReader(down), new StreamMessageWriter(up));
    this.connection.onNotification('textDocument/publishDiagnostics', (params: PublishDiagnosticsParams) => {
      this.published.push(params);
    });
    this.connection.onRequest(readFileRequest, ({ uri: file }: { uri: string }) => {
      const text = this.files.files.get(file);
      if (text === undefined) throw new Error('no such file');
      return text;
    });
    this.connection.onRequest(readDirectoryRequest, (): FileEntry[] =>
      [...this.files.files.keys()].map((file) => ({ uri: file, isFile: true, isDirectory: false })),
    );
    this.connection.onRequest('workspace/configuration', ({ items }: { items: { section: string }[] }) =>
      items.map(({ section }) => (section === 'boothwright' ? this.settings : null)),
    );
    this.connection.onRequest('workspace/inlayHint/refresh', () => {
      this.refreshed++;
      return null;
    });
    this.connection.onRequest('workspace/diagnostic/refresh', () => {
      this.outdated++;
      return null;
    });
    this.connection.onRequest('client/registerCapability', () => null);
    this.connection.listen();
  }

  async start(initializationOptions?: ClientOptions, textDocument?: object): Promise<InitializeResult> {
    const result = await this.connection.sendRequest<InitializeResult>('initialize', {
      processId: null,
      rootUri: null,
      workspaceFolders: null,
      initializationOptions,
      capabilities: { workspace: { configuration: true, diagnostics: { refreshSupport: true } }, textDocument },
    });
    await this.connection.sendNotification('initialized', {});
    return result;
  }

  async open(text: string): Promise<Diagnostic[]> {
    await this.connection.sendNotification('textDocument/didOpen', {
      textDocument: { uri, languageId: 'booth', version: ++this.version, text },
    });
    return this.nextDiagnostics();
  }

  async change(text: string): Promise<Diagnostic[]> {
    await this.type(text);
    return this.nextDiagnostics();
  }

  /** Changes the text and waits for nothing; the version of the text. */
  async type(text: string): Promise<number> {
    const version = ++this.version;
    await this.connection.sendNotification('textDocument/didChange', {
      textDocument: { uri, version },
      contentChanges: [{ text }],
    });
    return version;
  }

  assessment(): Promise<AssessmentResult | null> {
    return this.connection.sendRequest<AssessmentResult | null>(assessmentRequest, { uri });
  }

  /** How many diagnostics each file shows now. */
  shown(): Record<string, number> {
    const name = (file: string) => file.slice(file.lastIndexOf('/') + 1);
    return Object.fromEntries(this.published.map(({ uri: file, diagnostics }) => [name(file), diagnostics.length]));
  }

  async nextDiagnostics(): Promise<Diagnostic[]> {
    const seen = this.published.length;
    for (let tries = 0; tries < 200; tries++) {
      const found = this.published.slice(seen).find((params) => params.uri === uri);
      if (found) return found.diagnostics;
      await new Promise((resolve) => setTimeout(resolve, 10));
    }
    throw new Error('no diagnostics came');
  }
}

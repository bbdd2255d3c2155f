import { type ChildProcess, spawn } from 'node:child_process';
import { cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { build } from 'esbuild';
import { afterAll, beforeAll } from 'vitest';
import {
  createProtocolConnection,
  type Diagnostic,
  type InitializeParams,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node';

const root = path.resolve(import.meta.dirname, '..');
export const uri = 'file:///hall/hall.booth';
/** Of the server's heap, MB. */
const MEMORY = 1000;

/** The real server, bundled once per test file and laid out as it ships; returns where it is once the tests run. */
export function serverBundle(): () => string {
  let folder = '';
  beforeAll(async () => {
    folder = await mkdtemp(path.join(tmpdir(), 'boothwright-server-'));
    await build({
      absWorkingDir: root,
      entryPoints: ['packages/language/src/node/main.ts'],
      outfile: path.join(folder, 'dist/server.cjs'),
      bundle: true,
      platform: 'node',
      format: 'cjs',
      mainFields: ['module', 'main'],
      logLevel: 'error',
    });
    await cp(path.join(root, 'packages/extension/l10n'), path.join(folder, 'l10n'), { recursive: true });
  }, 60_000);
  afterAll(() => rm(folder, { recursive: true }));
  return () => path.join(folder, 'dist/server.cjs');
}

/** A server as a process of its own, spoken to over stdio as an editor does. */
export class ServerProcess {
  private version = 0;
  private readonly waiting = new Set<() => void>();
  /** What the server said last of the file. */
  last: readonly Diagnostic[] | undefined;

  private constructor(
    readonly process: ChildProcess,
    readonly connection: ProtocolConnection,
  ) {}

  /** @param tells the server more of the editor. */
  static async start(bundle: string, tells: Partial<InitializeParams> = {}): Promise<ServerProcess> {
    const child = spawn(process.execPath, [`--max-old-space-size=${MEMORY}`, bundle, '--stdio'], {
      stdio: ['pipe', 'pipe', 'ignore'],
    });
    const connection = createProtocolConnection(
      new StreamMessageReader(child.stdout),
      new StreamMessageWriter(child.stdin),
    );
    // A server that is killed takes its pipe along; whoever waits for an answer hears of it from the connection.
    child.stdin.on('error', () => undefined);
    connection.onError(() => undefined);
    const server = new ServerProcess(child, connection);
    connection.onNotification('textDocument/publishDiagnostics', (params: PublishDiagnosticsParams) => {
      if (params.uri !== uri) return;
      server.last = params.diagnostics;
      for (const look of server.waiting) look();
    });
    connection.onRequest('workspace/configuration', ({ items }: { items: unknown[] }) => items.map(() => null));
    connection.onRequest('client/registerCapability', () => null);
    connection.onRequest('boothwright/readDirectory', () => []);
    connection.listen();
    await connection.sendRequest('initialize', {
      processId: process.pid,
      rootUri: null,
      workspaceFolders: null,
      capabilities: {},
      ...tells,
    });
    await connection.sendNotification('initialized', {});
    return server;
  }

  open(text: string): Promise<void> {
    this.last = undefined;
    return this.connection.sendNotification('textDocument/didOpen', {
      textDocument: { uri, languageId: 'booth', version: ++this.version, text },
    });
  }

  /** Replaces the whole text, or a range of it. */
  change(text: string, range?: unknown): Promise<void> {
    return this.connection.sendNotification('textDocument/didChange', {
      textDocument: { uri, version: ++this.version },
      contentChanges: [range ? { range, text } : { text }],
    });
  }

  ask<T>(method: string, more: object = {}): Promise<T> {
    return this.connection.sendRequest<T>(`textDocument/${method}`, { textDocument: { uri }, ...more });
  }

  /** Waits until what the server says of the file is as wanted. */
  says(isWanted: (diagnostics: readonly Diagnostic[]) => boolean): Promise<readonly Diagnostic[]> {
    return new Promise((resolve) => {
      const look = () => {
        if (!this.last || !isWanted(this.last)) return;
        this.waiting.delete(look);
        resolve(this.last);
      };
      this.waiting.add(look);
      look();
    });
  }

  async stop(): Promise<void> {
    await this.connection.sendRequest('shutdown');
    const gone = new Promise((resolve) => this.process.once('exit', resolve));
    await this.connection.sendNotification('exit');
    await gone;
    this.connection.dispose();
  }
}

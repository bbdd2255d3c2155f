import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import {
  createProtocolConnection,
  type Diagnostic,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node';
import { schema } from './documents.js';

/** A language server that is measured. */
export interface Kind {
  readonly name: string;
  /** The script, run with this Node. */
  readonly file: string;
  readonly languageId: 'booth' | 'yaml' | 'json';
  /** How its diagnostics come: by itself, or when asked; or what is wrong with the text when asked, and all else by itself. */
  readonly answers: 'push' | 'pull' | 'both';
  /** What it waits after a change before it starts, milliseconds. */
  readonly debounce: number;
}

const schemaFile = path.join(mkdtempSync(path.join(tmpdir(), 'boothwright-bench-')), 'bench.schema.json');
writeFileSync(schemaFile, JSON.stringify(schema));
const schemaUri = pathToFileURL(schemaFile).href;

/** A language server as a process of its own, spoken to over stdio as an editor does. */
export class Server {
  private version = 1;
  private done: (() => void) | undefined;
  private last: readonly Diagnostic[] = [];
  /** When it last answered what is wrong with the text. */
  answered = NaN;

  private constructor(
    readonly kind: Kind,
    private readonly process: ChildProcess,
    private readonly connection: ProtocolConnection,
    private readonly uri: string,
  ) {
    connection.onNotification(
      'textDocument/publishDiagnostics',
      ({ uri, version = this.version, diagnostics }: PublishDiagnosticsParams) => {
        if (uri !== this.uri || version !== this.version) return;
        this.last = diagnostics;
        this.done?.();
      },
    );
    connection.onRequest('workspace/configuration', ({ items }: { items: { section?: string }[] }) =>
      items.map(({ section }) => settings[section ?? ''] ?? {}),
    );
    connection.onRequest('client/registerCapability', () => null);
    connection.onRequest('boothwright/readDirectory', () => []);
    connection.onRequest('vscode/content', () => JSON.stringify(schema));
    connection.listen();
  }

  /** `uri`: of the one document that it is asked about. */
  static async start(kind: Kind, uri = `file:///bench/bench.${kind.languageId}`): Promise<Server> {
    const child = spawn(process.execPath, [kind.file, '--stdio'], { stdio: ['pipe', 'pipe', 'ignore'] });
    const connection = createProtocolConnection(
      new StreamMessageReader(child.stdout),
      new StreamMessageWriter(child.stdin),
    );
    const server = new Server(kind, child, connection, uri);
    await connection.sendRequest('initialize', {
      processId: process.pid,
      rootUri: null,
      workspaceFolders: null,
      initializationOptions: { provideFormatter: false, handledSchemaProtocols: [] },
      capabilities: {
        workspace: { configuration: true, didChangeConfiguration: { dynamicRegistration: true } },
        textDocument: {
          publishDiagnostics: { versionSupport: true, relatedInformation: true },
          ...(kind.answers !== 'push' && { diagnostic: { dynamicRegistration: false } }),
        },
      },
    });
    await connection.sendNotification('initialized', {});
    if (kind.languageId === 'json')
      await connection.sendNotification('json/schemaAssociations', [{ uri: schemaUri, fileMatch: ['*.json'], schema }]);
    if (kind.languageId !== 'booth')
      await connection.sendNotification('workspace/didChangeConfiguration', { settings });
    return server;
  }

  async open(text: string): Promise<readonly Diagnostic[]> {
    const answer = this.next();
    await this.connection.sendNotification('textDocument/didOpen', {
      textDocument: { uri: this.uri, languageId: this.kind.languageId, version: this.version, text },
    });
    return answer();
  }

  /** Replaces some characters of a line and waits for fresh diagnostics. */
  async edit(line: number, character: number, insert: string, remove = 0): Promise<readonly Diagnostic[]> {
    const answer = this.next();
    await this.change(line, character, insert, remove);
    return answer();
  }

  async change(line: number, character: number, insert: string, remove = 0): Promise<void> {
    const range = { start: { line, character }, end: { line, character: character + remove } };
    await this.connection.sendNotification('textDocument/didChange', {
      textDocument: { uri: this.uri, version: ++this.version },
      contentChanges: [{ range, text: insert }],
    });
  }

  async request(method: string, line: number, character: number): Promise<unknown> {
    return this.ask(method, { textDocument: { uri: this.uri }, position: { line, character } });
  }

  async ask<Answer>(method: string, params: object): Promise<Answer> {
    return this.connection.sendRequest<Answer>(method, params);
  }

  /**
   * Waits for the diagnostics after whatever is sent between this call and the call of what it returns. Of a server that says of which
   * version they are, those of an older text do not count.
   */
  private next(): () => Promise<readonly Diagnostic[]> {
    const pull = async () => {
      const report = await this.ask<{ items: Diagnostic[] }>('textDocument/diagnostic', {
        textDocument: { uri: this.uri },
      });
      this.answered = performance.now();
      return report.items;
    };
    if (this.kind.answers === 'pull') return pull;
    const pushed = new Promise<void>((resolve) => (this.done = resolve));
    return async () => {
      const asked = this.kind.answers === 'both' ? await pull() : [];
      await pushed;
      return [...asked, ...this.last];
    };
  }

  /** Resident memory, MB; NaN where the system does not say. */
  memory(): number {
    try {
      const status = readFileSync(`/proc/${this.process.pid}/status`, 'utf8');
      return Number(/VmRSS:\s+(\d+)/.exec(status)?.[1]) / 1024;
    } catch {
      return NaN;
    }
  }

  /** Time on a processor so far, all threads, milliseconds; NaN where the system does not say. */
  cpu(): number {
    try {
      const tasks = `/proc/${this.process.pid}/task`;
      const times = readdirSync(tasks).map((task) => readFileSync(`${tasks}/${task}/schedstat`, 'utf8').split(' ')[0]);
      return times.reduce((sum, time) => sum + Number(time), 0) / 1e6;
    } catch {
      return NaN;
    }
  }

  async stop(): Promise<void> {
    await this.connection.sendRequest('shutdown');
    await this.connection.sendNotification('exit');
    this.connection.dispose();
    this.process.kill();
  }
}

/** The general settings of the YAML and the JSON server, but for the schema and no limit that would spare them work. */
const settings: Record<string, unknown> = {
  yaml: {
    validate: true,
    schemas: { [schemaUri]: '*.yaml' },
    schemaStore: { enable: false },
    hover: true,
    completion: true,
  },
  json: { validate: { enable: true }, schemas: [{ fileMatch: ['*.json'], url: schemaUri, schema }] },
  http: { proxy: '', proxyStrictSSL: false },
};

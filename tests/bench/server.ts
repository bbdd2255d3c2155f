import { type ChildProcess, spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import {
  createProtocolConnection,
  type Diagnostic,
  type ProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node';

const uri = 'file:///bench/bench.booth';

/** A language server as a process of its own, spoken to over stdio as an editor does. */
export class Server {
  private version = 1;
  private text = '';
  private waiting: { readonly from: number; readonly done: (diagnostics: Diagnostic[]) => void } | undefined;

  private constructor(
    private readonly process: ChildProcess,
    private readonly connection: ProtocolConnection,
  ) {
    connection.onNotification(
      'textDocument/publishDiagnostics',
      (params: { uri: string; diagnostics: Diagnostic[] }) => {
        if (params.uri === uri) this.waiting?.done(params.diagnostics);
      },
    );
    connection.onRequest('workspace/configuration', ({ items }: { items: unknown[] }) => items.map(() => ({})));
    connection.onRequest('client/registerCapability', () => null);
    connection.onRequest('boothwright/readDirectory', () => []);
    connection.listen();
  }

  static async start(file: string): Promise<Server> {
    const child = spawn(process.execPath, [file, '--stdio'], { stdio: ['pipe', 'pipe', 'ignore'] });
    const connection = createProtocolConnection(
      new StreamMessageReader(child.stdout),
      new StreamMessageWriter(child.stdin),
    );
    const server = new Server(child, connection);
    await connection.sendRequest('initialize', {
      processId: process.pid,
      rootUri: null,
      workspaceFolders: null,
      capabilities: { textDocument: { publishDiagnostics: { versionSupport: true, relatedInformation: true } } },
    });
    await connection.sendNotification('initialized', {});
    return server;
  }

  async open(text: string): Promise<Diagnostic[]> {
    this.text = text;
    const answer = this.next();
    await this.connection.sendNotification('textDocument/didOpen', {
      textDocument: { uri, languageId: 'booth', version: this.version, text },
    });
    return answer;
  }

  /** Replaces one character and waits for fresh diagnostics. */
  async edit(line: number, character: number, insert: string, remove = 0): Promise<Diagnostic[]> {
    const answer = this.next();
    await this.change(line, character, insert, remove);
    return answer;
  }

  async change(line: number, character: number, insert: string, remove = 0): Promise<void> {
    const range = { start: { line, character }, end: { line, character: character + remove } };
    await this.connection.sendNotification('textDocument/didChange', {
      textDocument: { uri, version: ++this.version },
      contentChanges: [{ range, text: insert }],
    });
  }

  async request(method: string, line: number, character: number): Promise<unknown> {
    return this.connection.sendRequest(method, { textDocument: { uri }, position: { line, character } });
  }

  /** The next diagnostics, or the first for which `holds` is true. */
  next(holds: (diagnostics: Diagnostic[]) => boolean = () => true): Promise<Diagnostic[]> {
    return new Promise((resolve) => {
      this.waiting = {
        from: this.version,
        done: (diagnostics) => {
          if (!holds(diagnostics)) return;
          this.waiting = undefined;
          resolve(diagnostics);
        },
      };
    });
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

  get lineCount(): number {
    return this.text.split('\n').length;
  }

  async stop(): Promise<void> {
    await this.connection.sendRequest('shutdown');
    await this.connection.sendNotification('exit');
    this.connection.dispose();
    this.process.kill();
  }
}

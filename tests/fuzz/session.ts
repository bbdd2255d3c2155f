import { PassThrough } from 'node:stream';
import { TextDocument } from 'langium';
import {
  CancellationTokenSource,
  createConnection,
  createProtocolConnection,
  type Diagnostic,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import { URI } from 'langium';
import { serve } from '../../packages/language/src/lsp/server.js';
import { MemoryFiles } from '../../packages/language/src/testing/memory.js';
import type { Case } from './cases.js';
import { Broken } from './examine.js';
import type { Language } from './language.js';
import { mutated } from './mutations.js';

const uri = 'file:///hall/hall.booth';
const asked = [
  'hover',
  'completion',
  'definition',
  'documentSymbol',
  'formatting',
  'foldingRange',
  'semanticTokens/full',
];
/** An answer that a cancelled or an overtaken request may have. */
const excused = new Set([-32800, -32801, -32802]);

/**
 * Types into the server as an editor does: changes come before answers, some requests are cancelled. In the end it must say of
 * the text what a fresh reading of the same text says.
 */
export async function session({ text, random }: Case, language: Language, furniture: string): Promise<void> {
  const editor = new Editor(furniture);
  await editor.start();
  let document = TextDocument.create(uri, 'booth', 1, text);
  await editor.open(text);
  const answers: Promise<unknown>[] = [];
  for (let n = random.whole(3, 12); n > 0; n--) {
    const [start, end] = [random.whole(0, document.getText().length), random.whole(0, 12)];
    const range = { start: document.positionAt(start), end: document.positionAt(start + end) };
    const insert = random.chance(0.3)
      ? ''
      : mutated(random.pick(['', ' ', 'width 60in', '}', '{']), random, 'word').slice(0, 40);
    document = TextDocument.update(document, [{ range, text: insert }], document.version + 1);
    await editor.change(range, insert, document.version);
    if (random.chance(0.5))
      answers.push(editor.ask(random.pick(asked), document.positionAt(start), random.chance(0.4)));
    if (random.chance(0.2)) await new Promise((resolve) => setTimeout(resolve, random.whole(0, 5)));
  }
  const fresh = await language.open(document.getText());
  await editor.shows(fresh.diagnostics ?? []);
  await Promise.all(answers);
  await editor.stop();
}

class Editor {
  private readonly connection: ProtocolConnection;
  private last: readonly Diagnostic[] | undefined;
  private heard = () => {};

  constructor(furniture: string) {
    const [up, down] = [new PassThrough(), new PassThrough()];
    const server = createConnection(new StreamMessageReader(up), new StreamMessageWriter(down));
    const files = new MemoryFiles(new Map([[URI.parse('file:///hall/furniture.booth').toString(), furniture]]));
    serve(server, () => files);
    this.connection = createProtocolConnection(new StreamMessageReader(down), new StreamMessageWriter(up));
    this.connection.onNotification('textDocument/publishDiagnostics', (params: PublishDiagnosticsParams) => {
      if (params.uri !== uri) return;
      this.last = params.diagnostics;
      this.heard();
    });
    this.connection.onRequest('workspace/configuration', ({ items }: { items: unknown[] }) => items.map(() => null));
    this.connection.onRequest('client/registerCapability', () => null);
    this.connection.listen();
  }

  async start(): Promise<void> {
    await this.connection.sendRequest('initialize', {
      processId: null,
      rootUri: null,
      workspaceFolders: null,
      capabilities: {},
    });
    await this.connection.sendNotification('initialized', {});
  }

  open(text: string): Promise<void> {
    return this.connection.sendNotification('textDocument/didOpen', {
      textDocument: { uri, languageId: 'booth', version: 1, text },
    });
  }

  change(range: unknown, text: string, version: number): Promise<void> {
    return this.connection.sendNotification('textDocument/didChange', {
      textDocument: { uri, version },
      contentChanges: [{ range, text }],
    });
  }

  /** Whatever is answered: an error that is not the cancelling's own breaks the case. */
  async ask(what: string, position: unknown, isCancelled: boolean): Promise<void> {
    const source = new CancellationTokenSource();
    const options = { tabSize: 2, insertSpaces: true };
    const answer = this.connection.sendRequest(
      `textDocument/${what}`,
      { textDocument: { uri }, position, options },
      source.token,
    );
    if (isCancelled) source.cancel();
    await answer.catch((error: Error & { code?: number }) => {
      if (!excused.has(error.code ?? 0)) throw new Broken(`${what} was answered with ${error.message}`);
    });
  }

  /** Waits until these are what the server says. */
  shows(expected: readonly Diagnostic[]): Promise<void> {
    const plain = (list: readonly Diagnostic[]) =>
      JSON.stringify(list.map(({ range, code, message }) => ({ range, code, message })));
    const wanted = plain(expected);
    return new Promise((resolve, reject) => {
      const late = setTimeout(
        () => reject(new Broken(`the server says ${this.last && plain(this.last)}, a fresh reading ${wanted}`)),
        20_000,
      );
      this.heard = () => {
        if (!this.last || plain(this.last) !== wanted) return;
        clearTimeout(late);
        resolve();
      };
      this.heard();
    });
  }

  async stop(): Promise<void> {
    await this.connection.sendRequest('shutdown');
    this.connection.dispose();
  }
}

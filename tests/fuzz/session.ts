import { PassThrough } from 'node:stream';
import { TextDocument } from 'langium';
import {
  CancellationTokenSource,
  createConnection,
  createProtocolConnection,
  type Diagnostic,
  type DocumentDiagnosticReport,
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
 * Types into the server as an editor does: changes come before answers, some requests are cancelled; every other editor asks for the
 * faults of the text itself. In the end the server must say of the text what a fresh reading of the same text says; of a text with faults
 * also what it found before they came, and cannot find anew.
 */
export async function session({ text, random }: Case, language: Language, furniture: string): Promise<void> {
  const editor = new Editor(furniture, random.chance(0.5));
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
    if (random.chance(0.7)) answers.push(editor.askForFaults(random.chance(0.2)));
    if (random.chance(0.5))
      answers.push(editor.ask(random.pick(asked), document.positionAt(start), random.chance(0.4)));
    if (random.chance(0.2)) await new Promise((resolve) => setTimeout(resolve, random.whole(0, 5)));
  }
  const fresh = await language.open(document.getText());
  await Promise.all(answers);
  await editor.askForFaults(false);
  await editor.shows(fresh.diagnostics ?? []);
  await editor.stop();
}

class Editor {
  private readonly connection: ProtocolConnection;
  private last: readonly Diagnostic[] | undefined;
  /** What was answered last of the faults of the text. */
  private faults: { readonly id?: string; readonly items: readonly Diagnostic[] } = { items: [] };
  private asked = 0;
  private heard = () => {};

  constructor(
    furniture: string,
    private readonly asksForFaults: boolean,
  ) {
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
      capabilities: { textDocument: this.asksForFaults ? { diagnostic: {} } : {} },
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

  /** Only the answer to the last question counts, as in an editor. */
  async askForFaults(isCancelled: boolean): Promise<void> {
    if (!this.asksForFaults) return;
    const number = ++this.asked;
    const source = new CancellationTokenSource();
    const params = { textDocument: { uri }, previousResultId: this.faults.id };
    const answer = this.connection.sendRequest<DocumentDiagnosticReport>(
      'textDocument/diagnostic',
      params,
      source.token,
    );
    if (isCancelled) source.cancel();
    try {
      const report = await answer;
      if (number !== this.asked) return;
      if (report.kind === 'full') this.faults = { id: report.resultId, items: report.items };
      else if (report.resultId !== this.faults.id) throw new Broken('faults are unchanged that were never told');
      this.heard();
    } catch (error) {
      if (!excused.has((error as { code?: number }).code ?? 0)) throw error;
    }
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
    const plain = (list: readonly Diagnostic[]) => JSON.stringify(list.map(plainly));
    const wanted = plain(expected);
    const known = new Set(expected.map((one) => JSON.stringify(plainly(one))));
    const mayStay = expected.some((one) => one.severity === 1 && !isFinding(one));
    const isNews = (one: Diagnostic) => !mayStay || !isFinding(one) || known.has(JSON.stringify(plainly(one)));
    return new Promise((resolve, reject) => {
      const late = setTimeout(
        () => reject(new Broken(`the server says ${this.last && plain(this.all)}, a fresh reading ${wanted}`)),
        20_000,
      );
      this.heard = () => {
        if (!this.last || plain(this.all.filter(isNews)) !== wanted) return;
        clearTimeout(late);
        resolve();
      };
      this.heard();
    });
  }

  private get all(): readonly Diagnostic[] {
    return [...this.faults.items, ...(this.last ?? [])];
  }

  async stop(): Promise<void> {
    await this.connection.sendRequest('shutdown');
    this.connection.dispose();
  }
}

function plainly({ range, code, message }: Diagnostic) {
  return { range, code, message };
}

/** What a check found, not a fault of the text. */
function isFinding({ data }: Diagnostic): boolean {
  return typeof data === 'object' && data !== null && 'check' in data;
}

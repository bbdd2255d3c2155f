import { afterEach, expect, test } from 'vitest';
import { CancellationTokenSource, type DocumentDiagnosticReport, LSPErrorCodes } from 'vscode-languageserver/node';
import { assessmentRequest } from '../protocol.js';
import { Editor, uri } from '../testing/editor.js';
import { uriOf } from '../testing/memory.js';

let editors: Editor[] = [];
afterEach(() => {
  for (const { connection } of editors) connection.dispose();
  editors = [];
});

async function start(): Promise<Editor> {
  const editor = new Editor();
  editors.push(editor);
  await editor.start(undefined, { diagnostic: {} });
  return editor;
}

function faults(editor: Editor, previousResultId?: string): Promise<DocumentDiagnosticReport> {
  return editor.connection.sendRequest('textDocument/diagnostic', { textDocument: { uri }, previousResultId });
}

function codes(editor: Editor, file = uri): unknown[] | undefined {
  return editor.published
    .filter((each) => each.uri === file)
    .at(-1)
    ?.diagnostics.map(({ code }) => code);
}

/** A narrow desk for two, whose elbows meet; a width without a unit is a fault of the text. */
const booth = `desk Left { width 30in  depth 24in  height 29in }
chair Low { seat 16in..20in }
operator Noor { stature 160cm }
operator Tobias { stature 185cm }
workstation Sound { desk Left  chair Low  operators Noor  posture sit  at 10in }
workstation Light { desk Left  chair Low  operators Tobias  posture sit  at 20in }
`;
const faulty = `${booth}desk Right { width 60 }\n`;

test('faults of a text are offered to an editor that can ask for them', async () => {
  editors = [new Editor(), new Editor()];
  const [asking, other] = editors as [Editor, Editor];
  const { capabilities } = await asking.start(undefined, { diagnostic: {} });
  expect(capabilities.diagnosticProvider).toEqual({ interFileDependencies: true, workspaceDiagnostics: false });
  expect((await other.start()).capabilities.diagnosticProvider).toBeUndefined();
});

test('an editor that asks has the faults by that, all else unasked', async () => {
  const editor = await start();
  void editor.open(faulty);
  expect(await faults(editor)).toMatchObject({ kind: 'full', items: [{ code: 'no-unit', source: 'booth' }] });
  await expect.poll(() => codes(editor)).toContain('elbow-room');
  expect(codes(editor)).not.toContain('no-unit');
});

test('an editor that could ask, but does not, is told all', async () => {
  const editor = await start();
  await editor.open(faulty);
  expect(codes(editor)).toEqual(expect.arrayContaining(['no-unit', 'elbow-room']));
});

test('what was told unasked before the first question is taken back', async () => {
  const editor = await start();
  await editor.open(faulty);
  expect(await faults(editor)).toMatchObject({ items: [{ code: 'no-unit' }] });
  await expect.poll(() => codes(editor)).not.toContain('no-unit');
  expect(codes(editor)).toContain('elbow-room');
});

test('faults are known before what the booth comes to', async () => {
  const editor = await start();
  await editor.open(booth);
  await faults(editor);
  const told = editor.published.length;
  void editor.type(faulty);
  expect(await faults(editor)).toMatchObject({ items: [{ code: 'no-unit' }] });
  expect(editor.published).toHaveLength(told);
  await expect.poll(() => editor.published.length).toBe(told + 1);
});

test('the same faults are not sent again', async () => {
  const editor = await start();
  void editor.open(faulty);
  const { resultId } = await faults(editor);
  void editor.type(`${faulty}// A note\n`);
  expect(await faults(editor, resultId)).toEqual({ kind: 'unchanged', resultId });
  void editor.type(`// A note\n${faulty}`);
  const moved = await faults(editor, resultId);
  expect(moved).toMatchObject({ kind: 'full', items: [{ range: { start: { line: 7 } } }] });
  expect(moved.resultId).not.toBe(resultId);
});

test('each answer is of the text before it, however fast an editor types', async () => {
  const editor = await start();
  await editor.open('');
  const answers: Promise<DocumentDiagnosticReport>[] = [];
  for (let n = 1; n <= 12; n++) {
    void editor.type(Array.from({ length: n }, (_, index) => `desk D${index} { width 60 }`).join('\n'));
    answers.push(faults(editor));
  }
  const counts = (await Promise.all(answers)).map((each) => (each.kind === 'full' ? each.items.length : NaN));
  expect(counts.at(-1)).toBe(12);
  counts.forEach((count, index) => expect(count).toBeGreaterThanOrEqual(index + 1));
});

test('a question that is taken back is answered as the protocol says', async () => {
  const editor = await start();
  await editor.open(booth);
  const source = new CancellationTokenSource();
  // Long enough that the server listens while it reads.
  void editor.type(Array.from({ length: 2000 }, (_, n) => `desk D${n} { width 60in }`).join('\n'));
  const answer = editor.connection.sendRequest('textDocument/diagnostic', { textDocument: { uri } }, source.token);
  const other = editor.connection.sendRequest(assessmentRequest, { uri }, source.token);
  source.cancel();
  await expect(answer).rejects.toMatchObject({ code: LSPErrorCodes.RequestCancelled });
  await expect(other).rejects.toMatchObject({ code: LSPErrorCodes.RequestCancelled });
  void editor.type(faulty);
  expect(await faults(editor)).toMatchObject({ items: [{ code: 'no-unit' }] });
});

test('an editor hears that an imported file changed the faults of a text that did not change', async () => {
  const editor = await start();
  void editor.open('import "furniture.booth"\nskirt Front { on Long  drop 39in }\n');
  expect(await faults(editor)).toMatchObject({ kind: 'full', items: [] });
  await expect.poll(() => codes(editor)).toEqual([]);
  const furniture = uriOf('furniture.booth').toString();
  await editor.connection.sendNotification('textDocument/didOpen', {
    textDocument: { uri: furniture, languageId: 'booth', version: 1, text: 'desk Short { width 60in }' },
  });
  await expect.poll(() => editor.outdated).toBe(1);
  expect(await faults(editor)).toMatchObject({ items: [{ code: 'unknown-name' }] });
  // Of a file that nobody asks about, all is told unasked.
  void editor.connection.sendNotification('textDocument/didChange', {
    textDocument: { uri: furniture, version: 2 },
    contentChanges: [{ text: 'desk Short { width 60 }' }],
  });
  await expect.poll(() => codes(editor, furniture)).toEqual(['no-unit']);
});

test('of a file that was closed and opened again, all is told until it is asked for', async () => {
  const editor = await start();
  void editor.open(faulty);
  await faults(editor);
  await editor.connection.sendNotification('textDocument/didClose', { textDocument: { uri } });
  await expect.poll(() => codes(editor)).toEqual([]);
  await editor.open(faulty);
  await expect.poll(() => codes(editor)).toContain('no-unit');
});

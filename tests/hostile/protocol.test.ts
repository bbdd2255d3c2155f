import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { CancellationTokenSource, type Diagnostic } from 'vscode-languageserver-protocol/node';
import { Random } from '../fuzz/random.js';
import { ServerProcess, serverBundle, uri } from '../server-process.js';

vi.setConfig({ testTimeout: 120_000 });
const bundle = serverBundle();
const head = 'booth "Hall" { }\ndesk Left { width 60in  depth 27in  height 40in }\n';
const skirt = (drop: number) => `skirt Front { on Left  drop ${drop}in  length 6ft }\n`;
const drags = (diagnostics: readonly Diagnostic[]) => diagnostics.some(({ code }) => code === 'skirt-drop');
const hangs = (diagnostics: readonly Diagnostic[]) => !drags(diagnostics);
const position = { line: 1, character: 6 };
let server: ServerProcess;

beforeEach(async () => {
  server = await ServerProcess.start(bundle());
});

describe('while it runs', () => {
  afterEach(() => server.stop());

  test('each of many requests gets its own answer, in whatever order, while the text changes', async () => {
    await server.open(head + skirt(41));
    const answers = Array.from({ length: 60 }, async (_, n) => {
      if (n % 6 === 0) await server.change(`${head}${skirt(41)}${'// more\n'.repeat(n)}`);
      const what = ['hover', 'completion', 'documentSymbol', 'foldingRange', 'semanticTokens/full', 'inlayHint'][
        n % 6
      ]!;
      const range = { start: { line: 0, character: 0 }, end: { line: 2, character: 0 } };
      return server.ask(what, { position, range }).then(
        (answer) => ({ what, answer }),
        (error: { code: number }) => ({ what, code: error.code }),
      );
    });
    for (const { what, ...said } of await Promise.all(answers)) {
      // An answer may say that the content changed meanwhile (−32801, −32802), and nothing else.
      if ('code' in said) expect([-32800, -32801, -32802], what).toContain(said.code);
      else expect(said.answer, what).not.toBeUndefined();
    }
    expect(await server.ask('hover', { position })).toMatchObject({
      contents: { value: expect.stringContaining('Left') as unknown },
    });
    await server.says(drags);
  });

  test('a cancelled request is answered, and the next one too', async () => {
    await server.open(head + skirt(41));
    for (let n = 0; n < 20; n++) {
      const source = new CancellationTokenSource();
      await server.change(`${head}${skirt(41)}// ${n}\n`);
      const answer = server.connection.sendRequest(
        'textDocument/completion',
        { textDocument: { uri }, position },
        source.token,
      );
      source.cancel();
      const code = await answer.then(
        () => 0,
        (error: { code: number }) => error.code,
      );
      expect([0, -32800, -32801, -32802]).toContain(code);
    }
    expect(await server.ask('documentSymbol')).toHaveLength(3);
  });

  test('what it does not know is refused by the code for that', async () => {
    await expect(server.connection.sendRequest('textDocument/unheardOf', {})).rejects.toMatchObject({ code: -32601 });
    await expect(
      server.connection.sendRequest('textDocument/hover', {
        textDocument: { uri: 'file:///hall/none.booth' },
        position,
      }),
    ).rejects.toMatchObject({ code: expect.any(Number) as unknown });
    await server.open(head + skirt(41));
    await server.says(drags);
  });
});

test.each([
  ['without a word', () => Promise.resolve(), 1],
  ['after it said so', () => server.connection.sendRequest('shutdown'), 0],
])('it ends when its editor goes %s', async (_, before, status) => {
  await before();
  const gone = new Promise((resolve) => server.process.once('exit', resolve));
  server.process.stdin!.end();
  expect(await gone).toBe(status);
  server.connection.dispose();
});

test('killed at any moment of an edit, the next server has the right findings of the whole text', async () => {
  const random = new Random(5);
  for (let n = 0; n < 6; n++) {
    let text = head + skirt(41);
    await server.open(text);
    for (let key = random.whole(1, 6); key > 0; key--) {
      text += `// ${key}\n`;
      void server.change(text).catch(() => undefined);
      await new Promise((resolve) => setTimeout(resolve, random.whole(0, 60)));
    }
    const gone = new Promise((resolve) => server.process.once('exit', resolve));
    server.process.kill('SIGKILL');
    await gone;
    server.connection.dispose();
    server = await ServerProcess.start(bundle());
    // An editor that finds its server gone starts another and opens the text as it has it.
    await server.open(text.replace(skirt(41), skirt(39)));
    await server.says(hangs);
    await server.change(text);
    await server.says(drags);
    expect(server.last!.every(({ range }) => range.end.line <= text.split('\n').length)).toBe(true);
    await server.stop();
    server = await ServerProcess.start(bundle());
  }
  await server.stop();
});

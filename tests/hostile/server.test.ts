import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Diagnostic } from 'vscode-languageserver-protocol';
import { hostile } from './texts.js';
import { ServerProcess, serverBundle } from '../server-process.js';

vi.setConfig({ testTimeout: 180_000 });
const bundle = serverBundle();
const good =
  'booth "Hall" { }\ndesk Left { width 60in  depth 27in  height 40in }\nskirt Front { on Left  drop 41in  length 6ft }\n';
let server: ServerProcess;

beforeEach(async () => {
  server = await ServerProcess.start(bundle());
});
afterEach(() => server.stop());

test.each(hostile)('with $name open the server answers, and the next text is checked', async ({ text, says }) => {
  await server.open(text);
  const said = await server.says(() => true);
  if (says) expect(said.map(textOf).join('\n')).toMatch(says);
  else expect(said.filter(({ severity }) => severity === 1)).toEqual([]);

  const position = { line: 0, character: 3 };
  const range = { start: position, end: position };
  const options = { tabSize: 2, insertSpaces: true };
  await server.ask('hover', { position });
  await server.ask('completion', { position });
  await server.ask('foldingRange');
  await server.ask('documentSymbol');
  await server.ask('semanticTokens/full');
  await server.ask('codeAction', { range, context: { diagnostics: said.slice(0, 1) } });
  const edits = await server.ask<unknown[] | null>('formatting', { options });
  if (said.some((diagnostic) => textOf(diagnostic).includes('Nothing of'))) expect(edits ?? []).toEqual([]);

  await server.change(good);
  await server.says((diagnostics) => diagnostics.some(({ code }) => code === 'skirt-drop'));
});

function textOf({ message }: Diagnostic): string {
  return typeof message === 'string' ? message : message.value;
}

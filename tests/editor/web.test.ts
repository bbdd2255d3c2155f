import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Editor, openEditor } from './harness/editor.js';

const soon = { timeout: 20_000 };
let editor: Editor;

/** The same extension in the browser's own extension host, its language server in a worker. */
beforeAll(async () => {
  const inTheBrowser = { 'remote.extensionKind': { 'boothwright.boothwright': ['web'] } };
  editor = await openEditor('web', { 'hall.booth': 'desk Left { width 60 depth 27in }\n' }, inTheBrowser);
  await editor.open('hall.booth');
});

afterAll(() => editor.close());

test('the language server answers from a worker', async () => {
  await expect.poll(() => editor.squiggles(), soon).toContainEqual({ severity: 'error', text: '60' });
  await editor.screenshot('a-number-without-a-unit');
});

test('the extension does not run on the server', () => {
  expect(editor.hostLog()).toContain('Extension host with pid');
  expect(editor.hostLog()).not.toContain('boothwright.boothwright');
});

test('the browser reports no error of the extension', () => {
  expect(editor.logErrors()).toEqual([]);
});

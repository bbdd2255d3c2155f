import { afterAll, beforeAll, expect, test } from 'vitest';
import { activated, type Editor, openEditor } from './harness/editor.js';

const soon = { timeout: 30_000 };
let editor: Editor;

beforeAll(async () => {
  editor = await openEditor('diagnostics', { 'hall.booth': 'desk Left { width 60 depth 27in }\n' });
  await editor.open('hall.booth');
});

afterAll(() => editor.close());

test('a length without a unit gets a squiggle under the number alone', async () => {
  await expect.poll(() => editor.squiggles(), soon).toContainEqual({ severity: 'error', text: '60' });
  await editor.screenshot('a-number-without-a-unit');
});

test('the fault is listed once among the problems', async () => {
  await editor.run('View: Toggle Problems');
  const rows = editor.page.locator('.markers-panel [role="treeitem"]');
  await expect
    .poll(() => rows.allInnerTexts(), soon)
    .toEqual([expect.stringContaining('hall.booth'), expect.anything()]);
  expect((await rows.allInnerTexts())[1]).toContain('no-unit');
  await editor.screenshot('a-fault-among-the-problems');
  await editor.run('View: Toggle Problems');
});

test('typing the unit takes the squiggle away', async () => {
  await editor.goTo(1, 'desk Left { width 60'.length + 1);
  await editor.type('in');
  await expect.poll(errors, soon).toEqual([]);
  expect((await editor.lines())[0]?.text).toBe('desk Left { width 60in depth 27in }');
  await editor.screenshot('the-unit-typed');
});

test('deleting the unit brings it back', async () => {
  await editor.press('Backspace');
  await editor.press('Backspace');
  await expect.poll(errors, soon).toEqual(['60']);
});

test('the logs of the extension host tell of the extension, and of no error', () => {
  expect(editor.hostLog()).toContain(activated);
  expect(editor.logErrors()).toEqual([]);
});

/** The words under error squiggles. */
async function errors(): Promise<string[]> {
  return (await editor.squiggles()).filter(({ severity }) => severity === 'error').map(({ text }) => text);
}

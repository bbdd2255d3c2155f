import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Editor, openEditor } from './harness/editor.js';

const soon = { timeout: 30_000 };
let editor: Editor;

beforeAll(async () => {
  editor = await openEditor('moves', {
    'hall.booth': 'import "furniture.booth"\nworkstation Sound { desk Left }\n',
    'furniture.booth': 'desk Left { width 60in  depth 27in  height 40in }\n',
    'shared/notes.txt': 'What several halls have in common.\n',
  });
  await editor.open('hall.booth');
});

afterAll(() => editor.close());

const firstLine = async () => (await editor.lines())[0]?.text;
const errors = async () => (await editor.squiggles()).filter(({ severity }) => severity === 'error');

/** Says yes to the question whether the imports are to follow. */
async function agree(): Promise<void> {
  await editor.page.locator('.monaco-dialog-box', { hasText: 'Boothwright' }).waitFor();
  await editor.screenshot('asked');
  await editor.answer('OK');
}

test('a file that is renamed in the explorer takes its imports along, if the person agrees', async () => {
  // The editor asks nobody who is not there yet.
  await expect.poll(() => editor.squiggles(), soon).toContainEqual({ severity: 'info', text: 'Sound' });
  await editor.inExplorer('furniture.booth').click();
  await editor.press('F2');
  await editor.page.locator('.explorer-item-edited input').fill('tables.booth');
  await editor.press('Enter');
  await agree();
  await editor.inExplorer('tables.booth').waitFor();
  await editor.open('hall.booth');
  await expect.poll(firstLine, soon).toBe('import "tables.booth"');
  await expect.poll(errors, soon).toEqual([]);
  expect(editor.read('tables.booth')).toContain('desk Left');
  expect(editor.read('furniture.booth')).toBeUndefined();
});

test('and so does one that is moved into a folder', async () => {
  await editor.inExplorer('tables.booth').dragTo(editor.inExplorer('shared'));
  await editor.answer('Move');
  await agree();
  await expect.poll(() => editor.read('shared/tables.booth'), soon).toContain('desk Left');
  await editor.open('hall.booth');
  await expect.poll(firstLine, soon).toBe('import "shared/tables.booth"');
  await expect.poll(errors, soon).toEqual([]);
  await editor.goTo(2, 'workstation Sound { desk L'.length);
  await editor.press('F12');
  await editor.page.locator('.tab.active', { hasText: 'tables.booth' }).waitFor();
  await editor.screenshot('moved');
});

test('the logs of the extension host tell of no error', () => {
  expect(editor.logErrors()).toEqual([]);
});

import { afterAll, beforeAll, expect, test } from 'vitest';
import { corner } from './harness/booths.js';
import { activated, type Editor, openEditor } from './harness/editor.js';
import { previewOf } from './harness/preview.js';

const soon = { timeout: 30_000 };
let editor: Editor;

/** The same extension in the browser's own extension host, its language server in a worker. */
beforeAll(async () => {
  const inTheBrowser = { 'remote.extensionKind': { 'boothwright.boothwright': ['web'] } };
  const files = {
    'hall.booth': 'import "furniture.booth"\nworkstation Sound { desk Left }\ndesk Right { width 60 depth 27in }\n',
    'corner.booth': corner,
    'furniture.booth': '\n\ndesk Left { width 60in depth 27in height 40in }\n',
  };
  editor = await openEditor('web', files, inTheBrowser);
  await editor.open('hall.booth');
});

afterAll(() => editor.close());

test('the language server answers from a worker', async () => {
  await expect.poll(() => editor.squiggles(), soon).toContainEqual({ severity: 'error', text: '60' });
  await editor.screenshot('a-number-without-a-unit');
});

test('a name leads to the file that it is imported from', async () => {
  expect((await editor.squiggles()).filter(({ severity }) => severity === 'error')).toHaveLength(1);
  await editor.goTo(2, 'workstation Sound { desk L'.length);
  await editor.press('F12');
  await editor.page.locator('.tab.active', { hasText: 'furniture.booth' }).waitFor();
  await expect.poll(() => editor.cursor(), soon).toContain('Ln 3, Col 6');
});

test('a worker writes the report as PDF', async () => {
  await editor.open('corner.booth');
  await editor.run('Boothwright: Write fit report…');
  await editor.choose('With names');
  await editor.choose('PDF on Letter');
  await expect
    .poll(() => editor.page.locator('.quick-input-widget input').inputValue(), soon)
    .toContain('fit-report.pdf');
  await editor.press('Enter');
  await expect.poll(() => editor.read('corner-fit-report.pdf'), soon).toMatch(/^%PDF-[^]*MadeBy[^]*%%EOF\s*$/);
});

test('the preview says what there is to draw, from a worker too', async () => {
  await editor.open('hall.booth');
  await editor.run('Boothwright: Show preview beside the text');
  const frame = await previewOf(editor);
  await frame.getByText('This file cannot be read yet').waitFor();
  await editor.focusText();
  await editor.goTo(3, 'desk Right { width 60'.length + 1);
  await editor.type('in');
  await frame.getByRole('heading', { name: 'Sound from the side' }).waitFor();
  await editor.screenshot('preview');
});

test('the extension does not run on the server', () => {
  expect(editor.hostLog()).toContain('Extension host with pid');
  expect(editor.hostLog()).not.toContain(activated);
});

test('the browser reports no error of the extension', () => {
  expect(editor.logErrors()).toEqual([]);
});

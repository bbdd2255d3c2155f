import { afterAll, beforeAll, expect, test } from 'vitest';
import { corner } from './harness/booths.js';
import { type Editor, openEditor } from './harness/editor.js';
import { previewOf } from './harness/preview.js';

const soon = { timeout: 30_000 };
let editor: Editor;

beforeAll(async () => {
  editor = await openEditor('restricted', { 'corner.booth': corner }, {}, { isRestricted: true });
  await editor.open('corner.booth');
});

afterAll(() => editor.close());

test('a folder that is not trusted is opened in Restricted Mode', async () => {
  await editor.page.locator('.statusbar-item', { hasText: 'Restricted Mode' }).waitFor();
});

test('there its findings are shown', async () => {
  await expect.poll(() => editor.squiggles(), soon).toContainEqual({ severity: 'info', text: 'Noor' });
});

test('there a hover tells the figures', async () => {
  await expect.poll(() => editor.hover('Behind'), soon).toMatch(/Clear width 43 in/);
  await editor.screenshot('hover');
});

test('there the file is formatted', async () => {
  await editor.goTo(2, 'room {'.length + 1);
  await editor.type('    ');
  await editor.press('Escape');
  await editor.run('Format Document');
  await expect
    .poll(async () => (await editor.lines()).map(({ text }) => text), soon)
    .toContain('room { width 30ft  depth 44ft }');
});

test('there the preview draws the booth', async () => {
  await editor.run('Boothwright: Show preview beside the text');
  const frame = await previewOf(editor);
  await frame.locator('svg.booth-plan').waitFor();
  expect(await frame.locator('h1').innerText()).toBe('Back corner');
  await editor.screenshot('preview');
});

test('the logs of the extension host tell of no error', () => {
  expect(editor.logErrors()).toEqual([]);
});

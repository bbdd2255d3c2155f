import { afterAll, beforeAll, expect, test } from 'vitest';
import { corner } from './harness/booths.js';
import { type Editor, openEditor } from './harness/editor.js';

const soon = { timeout: 30_000 };
let editor: Editor;

/** In the browser, on a folder that is on no disk of any machine. */
beforeAll(async () => {
  const inTheBrowser = { 'remote.extensionKind': { 'boothwright.boothwright': ['web'] } };
  const files = {
    'hall.booth': 'import "furniture.booth"\nworkstation Sound { desk Left }\ndesk Right { width 60 depth 27in }\n',
    'corner.booth': corner,
    'furniture.booth': '\n\ndesk Left { width 60in depth 27in height 40in }\n',
  };
  editor = await openEditor('virtual', files, inTheBrowser, { isVirtual: true });
  await editor.openInExplorer('hall.booth');
});

afterAll(() => editor.close());

test('a file of a virtual folder is checked, with what it imports', async () => {
  await expect.poll(() => editor.squiggles(), soon).toContainEqual({ severity: 'error', text: '60' });
  expect((await editor.squiggles()).filter(({ severity }) => severity === 'error')).toHaveLength(1);
  await editor.screenshot('checked');
});

test('a name leads to the virtual file that it is imported from', async () => {
  await editor.goTo(2, 'workstation Sound { desk L'.length);
  await editor.press('F12');
  await editor.page.locator('.tab.active', { hasText: 'furniture.booth' }).waitFor();
  await expect.poll(() => editor.cursor(), soon).toContain('Ln 3, Col 6');
});

test('what is typed into the imported file counts in the one that imports it', async () => {
  await editor.goTo(3, 'desk Left'.length + 1);
  await editor.type('ward');
  await editor.openInExplorer('hall.booth');
  await expect.poll(() => editor.squiggles(), soon).toContainEqual({ severity: 'error', text: 'Left' });
  await editor.openInExplorer('furniture.booth');
  await editor.press('ControlOrMeta+Z');
  await editor.openInExplorer('hall.booth');
  await expect.poll(() => editor.squiggles(), soon).not.toContainEqual({ severity: 'error', text: 'Left' });
});

test('the report is written into the virtual folder, and shown', async () => {
  await editor.openInExplorer('corner.booth');
  await editor.run('Boothwright: Write fit report…');
  await editor.choose('With names');
  await editor.choose('Markdown');
  await expect
    .poll(() => editor.page.locator('.quick-input-widget input').inputValue(), soon)
    .toContain('corner-fit-report.md');
  await editor.press('Enter');
  await editor.page.locator('.tab', { hasText: 'corner-fit-report.md' }).click();
  await expect
    .poll(async () => (await editor.lines()).map(({ text }) => text).join('\n'), soon)
    .toMatch(/Back corner: fit report/);
  await editor.screenshot('report');
});

test('the browser reports no error of the extension', () => {
  expect(editor.logErrors()).toEqual([]);
});

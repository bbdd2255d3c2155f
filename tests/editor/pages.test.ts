import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { type Editor, openEditor } from './harness/editor.js';

const soon = { timeout: 30_000 };
const dragging = `booth "Loose" { show in }
desk Left { width 60in  depth 30in  height 40in }
skirt Front { on Left  drop 45in }
`;
const files = { 'loose.booth': dragging, 'bare.booth': 'desk Left { width 60 }\n' };

describe.each([
  ['desktop', {}],
  ['browser', { 'remote.extensionKind': { 'boothwright.boothwright': ['web'] } }],
])('in the extension host of the %s', (host, settings) => {
  let editor: Editor;

  beforeAll(async () => {
    editor = await openEditor(`pages-${host}`, files, settings);
    await editor.open('loose.booth');
  });

  afterAll(() => editor.close());
  afterEach(() => editor.run('View: Close All Editors'));

  test('the code of a squiggle leads to the page of its check', async () => {
    await expect.poll(warned, soon).toContain('45in');
    await followCode(editor, '45in');
    await expect
      .poll(() => editor.webviewText(), soon)
      .toMatch(/How it is computed[^]*Limits[^]*Sources[^]*It fires on/);
    await painted(editor);
    await editor.screenshot('page-of-a-check');
  });

  test('the page is there again after the window is loaded anew', async () => {
    await editor.open('loose.booth');
    await expect.poll(warned, soon).toContain('45in');
    await followCode(editor, '45in');
    await expect.poll(() => editor.webviewText(), soon).toContain('How it is computed');
    await editor.run('Developer: Reload Window');
    await editor.page.waitForEvent('load');
    await editor.page.locator('.tab.active', { hasText: 'skirt-drop' }).waitFor();
    await expect.poll(() => editor.webviewText(), soon).toContain('How it is computed');
  });

  test('the light bulb explains a fault of the text', async () => {
    await editor.open('bare.booth');
    await expect.poll(squiggled, soon).toContain('60');
    await editor.goTo(1, 'desk Left { width 60'.length);
    await editor.fix('Explain no-unit');
    await expect.poll(() => editor.webviewText(), soon).toMatch(/A number without its unit[^]*What to do/);
    await painted(editor);
    await editor.screenshot('page-of-a-fault');
  });

  test('the palette explains any check', async () => {
    await editor.run('Boothwright: Explain a check…');
    await editor.page.locator('.quick-input-list .monaco-list-row').first().waitFor();
    await editor.type('walkway-turn');
    await editor.choose('walkway-turn');
    await expect.poll(() => editor.webviewText(), soon).toContain('Can a wheelchair turn back round the booth’s end?');
  });

  test('no error is reported', () => {
    expect(editor.logErrors()).toEqual([]);
  });

  const squiggled = async () => (await editor.squiggles()).map(({ text }) => text);
  const warned = async () =>
    (await editor.squiggles()).filter(({ severity }) => severity === 'warning').map(({ text }) => text);
});

/** A page is painted a little after its text is there; a picture is for people, and no test waits for more. */
async function painted(editor: Editor): Promise<void> {
  await editor.page.waitForTimeout(500);
}

/** Clicks on the code in what appears over a squiggle. */
async function followCode(editor: Editor, text: string): Promise<void> {
  await editor.hover(text);
  await editor.page.locator('.monaco-hover:not(.hidden) a.code-link').first().click();
}

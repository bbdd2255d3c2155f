import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Editor, openEditor } from './harness/editor.js';
import { root } from './harness/paths.js';
import { previewOf } from './harness/preview.js';

const example = (name: string) => readFileSync(path.join(root, 'examples', name), 'utf8');
let editor: Editor;

beforeAll(async () => {
  editor = await openEditor(
    'preview-restart',
    { 'hall.booth': example('larkfield-hall.booth'), 'furniture.booth': example('furniture.booth') },
    { 'workbench.sideBar.location': 'right' },
  );
  await editor.open('hall.booth');
});

afterAll(() => editor.close());

test('the last good drawing outlives the window, marked stale, while the text is broken', async () => {
  await editor.run('Boothwright: Show preview beside the text');
  const before = await previewOf(editor);
  await before.locator('svg.booth-plan').waitFor();
  const heading = await before.locator('h1').innerText();
  // The page hands what it keeps to the editor once it has rested.
  await before.waitForTimeout(2500);
  await editor.press('ControlOrMeta+1');
  await editor.press('ControlOrMeta+End');
  await editor.type('place nowhere at');
  await before.locator('.stale', { hasText: 'Stale' }).waitFor();
  await editor.press('ControlOrMeta+S');
  await expect.poll(() => editor.read('hall.booth'), { timeout: 30_000 }).toContain('nowhere');
  await editor.reload();
  const after = await previewOf(editor);
  await after.locator('.stale', { hasText: 'Stale' }).waitFor();
  expect(await after.locator('h1').innerText()).toBe(heading);
  expect(await after.locator('svg.booth-plan').count()).toBe(1);
  expect(await after.locator('svg.side').count()).toBe(3);
  expect(await after.getByRole('slider').count()).toBe(0);
  await editor.screenshot('stale-after-restart');
});

test('it is drawn anew once the text is mended', async () => {
  const frame = await previewOf(editor);
  await editor.press('ControlOrMeta+1');
  await editor.press('ControlOrMeta+End');
  for (let presses = 0; presses < 'place nowhere at'.length; presses++) await editor.press('Backspace');
  await frame.locator('.stale').waitFor({ state: 'detached' });
  expect(await frame.getByRole('slider').count()).toBeGreaterThan(0);
});

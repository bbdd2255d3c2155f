import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Editor, openEditor } from './harness/editor.js';
import { root } from './harness/paths.js';

const soon = { timeout: 30_000 };
const folder = path.join(root, 'examples');
let editor: Editor;

beforeAll(async () => {
  const files = readdirSync(folder).map((file) => [file, readFileSync(path.join(folder, file), 'utf8')]);
  editor = await openEditor('examples', Object.fromEntries(files) as Record<string, string>);
});

afterAll(() => editor.close());

test('the first plan of Larkfield Hall is read, and shows what does not fit', async () => {
  await editor.open('larkfield-hall-first-plan.booth');
  await expect.poll(severities, soon).toContain('warning');
  expect(await severities()).not.toContain('error');
  await editor.screenshot('first-plan');
});

test('the mended plan has nothing that fails', async () => {
  await editor.open('larkfield-hall.booth');
  await expect.poll(() => editor.hover('Sound'), soon).toContain('Everything fits');
  expect(await severities()).not.toContain('error');
  expect(await severities()).not.toContain('warning');
  await editor.screenshot('mended-plan');
});

test('the logs of the extension host tell of no error', () => {
  expect(editor.logErrors()).toEqual([]);
});

async function severities(): Promise<string[]> {
  return (await editor.squiggles()).map(({ severity }) => severity);
}

import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Editor, openEditor } from './harness/editor.js';
import { root } from './harness/paths.js';

const soon = { timeout: 15_000 };
const booth = readFileSync(path.join(root, 'examples/larkfield-hall-first-plan.booth'), 'utf8');
const others = '<p>Notes of somebody else.</p>\n';
let editor: Editor;

beforeAll(async () => {
  editor = await openEditor('report', { 'hall.booth': booth, 'notes.html': others });
  await editor.open('hall.booth');
});

afterAll(() => editor.close());

test('the report command writes a page beside the booth file and shows it', async () => {
  await write('With names');
  await editor.press('Enter');
  await expect
    .poll(() => editor.read('hall-fit-report.html'), soon)
    .toContain('<meta name="generator" content="Boothwright');
  await expect.poll(() => editor.webviewText(), soon).toContain('Larkfield Hall');
  expect(editor.read('hall-fit-report.html')).toContain('Noor');
  await editor.screenshot('shown');
});

test('an earlier report is replaced, with letters in place of names', async () => {
  await write('With letters');
  await editor.press('Enter');
  await overwrite();
  await expect.poll(() => editor.read('hall-fit-report.html'), soon).toContain('Person A');
  expect(editor.read('hall-fit-report.html')).not.toContain('Noor');
});

test('a page that Boothwright did not write stays, unless the person says so', async () => {
  await write('With names');
  await editor.page.locator('.quick-input-widget input').fill(path.join(editor.folder, 'notes.html'));
  await editor.press('Enter');
  await overwrite();
  await editor.page.locator('.monaco-dialog-box', { hasText: 'Boothwright did not write this file' }).waitFor();
  await editor.screenshot('not-ours');
  await editor.answer('Cancel');
  expect(editor.read('notes.html')).toBe(others);
});

test('the logs of the extension host tell of no error', () => {
  expect(editor.logErrors()).toEqual([]);
});

/** Asks for the report, up to the question where to write it. */
async function write(names: string): Promise<void> {
  await editor.open('hall.booth');
  await editor.run('Boothwright: Write fit report…');
  await editor.choose(names);
  await expect.poll(() => editor.page.locator('.quick-input-widget input').inputValue(), soon).toContain('fit-report');
}

/** Says yes to the dialog, which asks before any file is replaced. */
async function overwrite(): Promise<void> {
  await editor.page.locator('.quick-input-title', { hasText: 'already exists' }).waitFor();
  await editor.press('Enter');
}

import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { findPoppler, infoOf, textOf } from '../report/poppler.js';
import { corner } from './harness/booths.js';
import { type Editor, openEditor } from './harness/editor.js';

const soon = { timeout: 30_000 };
const others = '<p>Notes of somebody else.</p>\n';
let editor: Editor;

beforeAll(async () => {
  editor = await openEditor('report', {
    'hall.booth': corner,
    'notes.html': others,
    'broken.booth': 'desk Left { width 60 }\n',
  });
  await editor.open('hall.booth');
});

afterAll(() => editor.close());

test('the report command writes a page beside the booth file and shows it', async () => {
  await write('With names', 'Web page');
  await editor.press('Enter');
  await expect
    .poll(() => editor.read('hall-fit-report.html'), soon)
    .toContain('<meta name="generator" content="Boothwright');
  await expect.poll(() => editor.webviewText(), soon).toContain('Back corner');
  expect(editor.read('hall-fit-report.html')).toContain('Noor');
  await editor.screenshot('shown');
});

test('an earlier report is replaced, with letters in place of names', async () => {
  await write('With letters', 'Web page');
  await editor.press('Enter');
  await overwrite();
  await expect.poll(() => editor.read('hall-fit-report.html'), soon).toContain('Person A');
  expect(editor.read('hall-fit-report.html')).not.toContain('Noor');
});

test('the report as PDF holds what the page says, on the paper that is chosen', async () => {
  await write('With names', 'PDF on A4');
  await editor.press('Enter');
  await expect.poll(() => editor.read('hall-fit-report.pdf'), soon).toContain('%%EOF');
  findPoppler();
  const file = path.join(editor.folder, 'hall-fit-report.pdf');
  expect(textOf(file)).toContain('Back corner: fit report');
  expect(textOf(file)).toContain('Noor');
  expect(infoOf(file)['Page size']).toMatch(/A4/);
});

test('as Markdown it opens beside the booth', async () => {
  await write('With names', 'Markdown');
  await editor.press('Enter');
  await expect
    .poll(() => editor.read('hall-fit-report.md'), soon)
    .toMatch(/^<!-- Boothwright [^]*# Back corner: fit report/);
  await editor.page.locator('.tab', { hasText: 'hall-fit-report.md' }).waitFor();
  await editor.screenshot('markdown');
});

test('a page that Boothwright did not write stays, unless the person says so', async () => {
  await write('With names', 'Web page');
  await editor.page.locator('.quick-input-widget input').fill(path.join(editor.folder, 'notes.html'));
  await editor.press('Enter');
  await overwrite();
  await editor.page.locator('.monaco-dialog-box', { hasText: 'Boothwright did not write this file' }).waitFor();
  await editor.screenshot('not-ours');
  await editor.answer('Cancel');
  expect(editor.read('notes.html')).toBe(others);
});

test('a file with errors is reported as it was before them, if the person says so', async () => {
  await editor.goTo(4, 'desk Table { width 60in'.length + 1);
  await editor.press('Backspace');
  await editor.press('Backspace');
  await expect.poll(() => editor.squiggles(), soon).toContainEqual({ severity: 'error', text: '60' });
  await editor.run('Boothwright: Write fit report…');
  await editor.page.locator('.monaco-dialog-box', { hasText: 'This file has errors' }).waitFor();
  await editor.screenshot('stale');
  await editor.answer('Cancel');
});

test('a file that was never readable is not reported', async () => {
  await editor.open('broken.booth');
  await expect.poll(() => editor.squiggles(), soon).toContainEqual({ severity: 'error', text: '60' });
  await editor.run('Boothwright: Write fit report…');
  await expect.poll(() => editor.notifications(), soon).toContainEqual(expect.stringContaining('cannot be read yet'));
});

test('the logs of the extension host tell of no error', () => {
  expect(editor.logErrors()).toEqual([]);
});

/** Asks for the report, up to the question where to write it. */
async function write(names: string, form: string): Promise<void> {
  await editor.open('hall.booth');
  await editor.run('Boothwright: Write fit report…');
  await editor.choose(names);
  await editor.choose(form);
  await expect.poll(() => editor.page.locator('.quick-input-widget input').inputValue(), soon).toContain('fit-report');
}

/** Says yes to the dialog, which asks before any file is replaced. */
async function overwrite(): Promise<void> {
  await editor.page.locator('.quick-input-title', { hasText: 'already exists' }).waitFor();
  await editor.press('Enter');
}

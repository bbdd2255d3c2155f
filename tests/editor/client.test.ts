import { afterAll, beforeAll, expect, test } from 'vitest';
import { corner } from './harness/booths.js';
import { type Editor, openEditor } from './harness/editor.js';
import { viewport } from './harness/host.js';

const soon = { timeout: 30_000 };
const anywhere = ['Explain a check…', 'New booth file'];
const whileRunning = [...anywhere, 'Restart language server', 'Show log'];
const inBooths = [...whileRunning, 'Show preview beside the text', 'Show what would fit…', 'Write fit report…'];
/** With 31in between the wall and the seat. */
const narrow = corner.replace('62in', '50in');
let editor: Editor;

beforeAll(async () => {
  editor = await openEditor('client', {
    'hall.booth': narrow,
    'pieces.booth': 'desk Spare { width 60in }\n',
    'notes.txt': 'Notes on the hall.\n',
  });
});

afterAll(() => editor.close());

test('before a booth file is open the palette offers what works then', async () => {
  await editor.open('notes.txt');
  expect(await commands()).toEqual(anywhere);
});

test('in a booth file it offers every command', async () => {
  await editor.open('hall.booth');
  await expect.poll(commands, soon).toEqual(inBooths);
  await editor.screenshot('commands');
});

test('the language status tells the verdict in words and how long it took', async () => {
  await expect
    .poll(() => editor.status(), soon)
    .toMatch(/1 fail, \d+ marginal[^]*\d+ pass\s+Checked in [\d.]+ m?s\.[^]*Show problems/);
  await editor.screenshot('status');
});

test('and follows what is typed, also while the text has errors', async () => {
  await editor.goTo(7, 'place Table at 10ft, 50in'.length + 1);
  await editor.press('Backspace');
  await editor.press('Backspace');
  await expect.poll(() => editor.status(), soon).toMatch(/1 error in the text\s+Before: 1 fail/);
  await editor.screenshot('status-with-an-error');
  await editor.press('Backspace');
  await editor.press('Backspace');
  await editor.type('62in');
  await expect.poll(() => editor.status(), soon).toMatch(/^\s*\d+ marginal[^]*Checked in/);
});

test('its link leads to the problems', async () => {
  await editor.status();
  await editor.page.locator('.hover-language-status a', { hasText: 'Show problems' }).click();
  await editor.page.locator('.markers-panel').waitFor();
  await editor.screenshot('problems');
  await editor.run('View: Toggle Problems');
});

test('the palette shows what would fit at the only workstation', async () => {
  await editor.click('Table');
  await editor.run('Boothwright: Show what would fit…');
  await editor.page.locator('.quick-input-title', { hasText: 'What would fit at Sound' }).waitFor();
  await editor.screenshot('what-would-fit');
  await editor.press('Escape');
});

test('a file of pieces is no booth, and has no workstation to advise on', async () => {
  await editor.open('pieces.booth');
  await expect.poll(() => editor.status(), soon).toContain('No booth in this file');
});

test('the walkthrough leads from step to step, and its last one writes the report of a booth that is open', async () => {
  await editor.open('hall.booth');
  await editor.run('Welcome: Open Walkthrough...');
  await editor.choose('Plan a booth on paper');
  const page = editor.page.locator('.gettingStartedContainer');
  await page.locator('.getting-started-step.expanded', { hasText: 'Start a booth file' }).waitFor();
  const steps = page.locator('.getting-started-step');
  expect(await steps.count()).toBe(5);
  await editor.page.setViewportSize({ ...viewport, width: 1800 });
  await expect.poll(drawings, soon).toBeGreaterThan(0);
  await editor.screenshot('walkthrough');
  await steps.last().locator('.step-title').click();
  await editor.screenshot('walkthrough-last-step');
  await page.locator('.getting-started-step.expanded .monaco-button', { hasText: 'Write fit report' }).click();
  await editor.choose('hall.booth');
  await editor.choose('With names');
  await editor.choose('Web page');
  const name = editor.page.locator('.quick-input-widget input');
  await expect.poll(() => name.inputValue(), soon).toMatch(/hall-fit-report\.html$/);
  await editor.press('Enter');
  await expect.poll(() => editor.read('hall-fit-report.html'), soon).toContain('Back corner');
  await page.locator('.getting-started-step .codicon-getting-started-step-checked').first().waitFor();
  await editor.page.setViewportSize(viewport);
});

test('in another file the commands for booths are gone', async () => {
  await editor.open('notes.txt');
  await expect.poll(commands, soon).toEqual(whileRunning);
});

test('a new booth file holds a whole booth in the units of choice, to fill in from place to place', async () => {
  await editor.run('Boothwright: New booth file');
  await editor.choose('Metric');
  await expect.poll(lines, soon).toContain('booth "Our hall" {');
  await editor.type('Chapel');
  await editor.press('Tab');
  await editor.type('8m');
  await expect.poll(lines, soon).toContain('booth "Chapel" {');
  expect(await lines()).toContainEqual(expect.stringMatching(/^room \{ width 8m /));
  await expect.poll(() => editor.status(), soon).toMatch(/^\s*\d+ marginal, [^]*\d+ pass/);
  expect((await editor.squiggles()).filter(({ severity }) => severity === 'error')).toEqual([]);
  await editor.screenshot('new-booth');
});

test('a setting turns the lens over workstations off, and on again', async () => {
  await editor.open('hall.booth');
  const lens = editor.page.locator('.codelens-decoration', { hasText: 'What would fit?' });
  await lens.waitFor();
  editor.change({ 'boothwright.codeLens': false });
  await lens.waitFor({ state: 'detached' });
  editor.change({ 'boothwright.codeLens': true });
  await lens.waitFor();
});

test('a setting writes the messages between editor and server to the log', async () => {
  expect(editor.hostLog()).not.toContain('textDocument/didChange');
  editor.change({ 'boothwright.trace.server': 'messages' });
  await editor.goTo(1, 1);
  await expect
    .poll(async () => {
      await editor.type(' ');
      return editor.hostLog();
    }, soon)
    .toContain("Sending notification 'textDocument/didChange'");
  editor.change({ 'boothwright.trace.server': 'off' });
});

test('the log opens, and the server starts again on demand', async () => {
  await editor.run('Boothwright: Show log');
  const panel = editor.page.locator('.part.panel');
  await panel.locator('.composite-bar .action-item.checked', { hasText: 'Output' }).waitFor();
  await editor.screenshot('log');
  await editor.press('ControlOrMeta+J');
  await panel.waitFor({ state: 'hidden' });
  await editor.run('Boothwright: Restart language server');
  await expect.poll(() => editor.status(), soon).toMatch(/marginal[^]*Checked in/);
});

test('the logs of the extension host tell of no error', () => {
  expect(editor.logErrors()).toEqual([]);
});

/** How many drawings the pages inside the window show. */
async function drawings(): Promise<number> {
  const counts = editor.page.frames().map((frame) =>
    frame
      .locator('svg[viewBox="0 0 560 340"]')
      .count()
      .catch(() => 0),
  );
  return (await Promise.all(counts)).reduce((sum, count) => sum + count, 0);
}

/** The titles of our commands in the palette. */
async function commands(): Promise<string[]> {
  const ours = (await editor.offered('Boothwright: ')).filter((title) => title.startsWith('Boothwright: '));
  return ours.map((title) => title.slice('Boothwright: '.length)).sort();
}

async function lines(): Promise<string[]> {
  return (await editor.lines()).map(({ text }) => text);
}

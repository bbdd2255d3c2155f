import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Editor, openEditor } from './harness/editor.js';
import { root } from './harness/paths.js';
import { litIn, pieceIn, previewOf } from './harness/preview.js';

const soon = { timeout: 30_000 };
const example = (name: string) => readFileSync(path.join(root, 'examples', name), 'utf8');
const hall = example('larkfield-hall.booth');
const lineOf = (text: string) => hall.split('\n').findIndex((line) => line.includes(text)) + 1;
let editor: Editor;

beforeAll(async () => {
  editor = await openEditor(
    'preview',
    { 'hall.booth': hall, 'furniture.booth': example('furniture.booth') },
    { 'workbench.sideBar.location': 'right' },
  );
  await editor.open('hall.booth');
});

afterAll(() => editor.close());

test('the preview opens beside the text and shows the drawings', async () => {
  await editor.run('Boothwright: Show preview beside the text');
  const frame = await previewOf(editor);
  await frame.locator('svg.booth-plan').waitFor();
  expect(await frame.locator('h1').innerText()).toBe('Larkfield Hall');
  expect(await frame.locator('.tally').innerText()).toMatch(/\d+\s+pass/);
  expect(await frame.locator('svg.side').count()).toBe(3);
  await editor.screenshot('opened');
});

test('it lights what the cursor is on', async () => {
  const frame = await previewOf(editor);
  await editor.click('desk Left');
  await expect.poll(() => litIn(frame), soon).toEqual(['desk Left']);
  await editor.screenshot('lit');
  await editor.click('place');
  await expect.poll(() => litIn(frame), soon).toEqual(['desk Left', 'desk Right']);
});

test('it moves when what the cursor is on is out of view, and only then', async () => {
  const frame = await previewOf(editor);
  const scroll = () => frame.evaluate(() => window.scrollY);
  expect(await scroll()).toBe(0);
  await toText(lineOf('walkway Behind'), 1);
  await expect.poll(() => litIn(frame), soon).toEqual(['walkway Behind']);
  expect(await scroll()).toBe(0);
  await toText(lineOf('operator Tobias'), 1);
  await expect.poll(() => litIn(frame), soon).toEqual(['operator Tobias']);
  await expect.poll(scroll, soon).toBeGreaterThan(0);
  await editor.screenshot('followed');
});

test('the lens over a workstation shows it from the side', async () => {
  const frame = await previewOf(editor);
  await toText(lineOf('workstation Sound'), 1);
  await editor.page
    .locator('.codelens-decoration a', { hasText: /^Show$/ })
    .first()
    .click();
  await expect
    .poll(() => frame.locator('[data-station=Sound]').evaluate((element) => element.getBoundingClientRect().top), soon)
    .toBeLessThan(200);
});

test('a click on a piece leads to its source, also in a file that is imported', async () => {
  const frame = await previewOf(editor);
  await pieceIn(frame, 'booth', /^desk Right/).click({ position: { x: 8, y: 12 } });
  await expect.poll(() => editor.cursor(), soon).toContain(`Ln ${lineOf('desk Right')},`);
  await pieceIn(frame, 'station-1', /^seat Tall/).click({ position: { x: 8, y: 12 } });
  await editor.page.locator('.tab.active', { hasText: 'furniture.booth' }).waitFor();
  await expect.poll(() => litIn(frame), soon).toEqual(['seat Tall']);
  await editor.screenshot('imported');
  await editor.open('hall.booth');
});

test('keys lead from piece to piece, to the figures, and to the source', async () => {
  const frame = await previewOf(editor);
  await pieceIn(frame, 'booth', /^desk Left/).focus();
  await editor.press('ArrowRight');
  const focused = () => frame.evaluate(() => document.activeElement?.getAttribute('aria-label'));
  const first = await focused();
  expect(first).not.toMatch(/^desk Left/);
  const seen = new Set<string>();
  for (let presses = 0; presses < 30; presses++) {
    await editor.press('PageDown');
    seen.add((await focused())!);
  }
  const buttons = frame.locator('[data-sheet=booth] [role=button]');
  expect(seen.size).toBe(await buttons.count());
  while (!(await focused())!.startsWith('walkway')) await editor.press('PageDown');
  await frame.locator('.tip', { hasText: 'Clear width' }).waitFor();
  await editor.screenshot('keys');
  await editor.press('Enter');
  await expect.poll(() => editor.cursor(), soon).toContain(`Ln ${lineOf('walkway Behind')},`);
});

test('a pointer that rests on a piece sees the figures that the text shows', async () => {
  const frame = await previewOf(editor);
  await toText(lineOf('walkway Behind'), 1);
  const inText = await editor.hover('Behind');
  await pieceIn(frame, 'booth', /^walkway Behind/).hover();
  await frame.locator('.tip', { hasText: 'Behind, walkway' }).waitFor();
  const clear = /Clear width[^.]*\./.exec(inText)![0];
  expect(await frame.locator('.tip').innerText()).toContain(clear);
  await editor.screenshot('figures');
  await editor.page.mouse.move(300, 500);
  await frame.locator('.tip').waitFor({ state: 'detached' });
});

test('it keeps view and zoom while a person types, and follows the text', async () => {
  const frame = await previewOf(editor);
  await frame.getByRole('button', { name: 'Larger: The booth from above' }).click();
  await frame.getByRole('button', { name: 'Larger: The booth from above' }).click();
  await frame.evaluate(() => document.querySelector('[data-sheet=booth]')!.scrollTo(40, 20));
  await toText(lineOf('walkway Behind'), 1);
  await expect.poll(() => litIn(frame), soon).toEqual(['walkway Behind']);
  const view = () =>
    frame.evaluate(() => {
      const sheet = document.querySelector('[data-sheet=booth]')!;
      const svg = sheet.querySelector('svg')!;
      return [window.scrollY, sheet.scrollLeft, sheet.scrollTop, svg.getBoundingClientRect().width];
    });
  const before = await view();
  await frame.evaluate(() => document.querySelector('[data-sheet=booth] svg')!.setAttribute('data-same', 'yes'));
  await toText(lineOf('place Left'), 'place Left, Right in a row at 14ft, 6ft'.length + 1);
  await editor.press('Backspace');
  await editor.press('Backspace');
  await editor.press('Backspace');
  await editor.type('7ft');
  await expect.poll(booth, soon).toContain('65');
  expect(await view()).toEqual(before);
  expect(await frame.locator('[data-sheet=booth] svg').getAttribute('data-same')).toBe('yes');
  await editor.screenshot('typed');
});

test('a piece that is dragged on the plan is written as one change, which one undo takes back', async () => {
  const frame = await previewOf(editor);
  await frame.getByRole('button', { name: 'Whole: The booth from above' }).click();
  await frame.evaluate(() => window.scrollTo(0, 0));
  const desk = (await pieceIn(frame, 'booth', /^desk Right/).boundingBox())!;
  const at = { x: desk.x + desk.width - 8, y: desk.y + desk.height - 8 };
  await editor.page.mouse.move(at.x, at.y);
  await editor.page.mouse.down();
  await editor.page.mouse.move(at.x + 10, at.y - 20, { steps: 5 });
  await frame.getByText(/^Moving: .* from the left wall, .* from the back wall\.$/).waitFor();
  await editor.screenshot('dragged');
  const before = await placeLine();
  await editor.page.mouse.up();
  await expect.poll(placeLine, soon).toMatch(/at \d+( \d\/\d)?in, \d+( \d\/\d)?in$/);
  expect(await placeLine()).not.toBe(before);
  await expect.poll(booth, soon).not.toContain('65');
  await undo();
  await expect.poll(placeLine, soon).toBe(before);
  await expect.poll(booth, soon).toContain('65');
});

test('keys move a piece, and are written as one change', async () => {
  const frame = await previewOf(editor);
  const before = await placeLine();
  await pieceIn(frame, 'booth', /^desk Left/).focus();
  for (let presses = 0; presses < 4; presses++) await editor.press('Alt+ArrowUp');
  await expect.poll(placeLine, soon).toMatch(/, 85in$/);
  await expect.poll(booth, soon).toContain('66');
  await undo();
  await expect.poll(placeLine, soon).toBe(before);
  await expect.poll(booth, soon).toContain('65');
});

test('keys go on from what was written, also before that is drawn', async () => {
  const frame = await previewOf(editor);
  const before = await placeLine();
  await pieceIn(frame, 'booth', /^desk Left/).focus();
  const line = editor.page.locator('.editor-instance .view-line', { hasText: 'place Left' });
  await editor.press('Alt+ArrowRight');
  await line.filter({ hasText: /at\s168\s1\/4in/ }).waitFor();
  await editor.press('Alt+ArrowRight');
  await line.filter({ hasText: /at\s168\s1\/2in/ }).waitFor();
  await undo();
  await line.filter({ hasText: /at\s168\s1\/4in/ }).waitFor();
  await undo();
  await expect.poll(placeLine, soon).toBe(before);
});

test('a slider shows who would fit, and writes the height when it is let go', async () => {
  const frame = await previewOf(editor);
  const slider = frame.getByRole('slider', { name: 'desk Left' });
  const deskLine = () => lineWith('desk Left  {');
  await slider.scrollIntoViewIfNeeded();
  const track = (await slider.boundingBox())!;
  const middle = { x: track.x + track.width * 0.57, y: track.y + track.height / 2 };
  await editor.page.mouse.move(middle.x, middle.y);
  await editor.page.mouse.down();
  await editor.page.mouse.move(middle.x + 25, middle.y, { steps: 5 });
  await frame.getByText(/^Trying a height/).waitFor();
  expect(await deskLine()).toContain('height 40in');
  await editor.screenshot('slid');
  await editor.page.mouse.up();
  await expect.poll(deskLine, soon).toMatch(/height 4[3-9]( \d\/\d)?in/);
  await undo();
  await expect.poll(deskLine, soon).toContain('height 40in');
});

/** Puts the cursor into the text, also from the preview. */
async function toText(line: number, column: number): Promise<void> {
  await editor.focusText();
  await editor.goTo(line, column);
}

async function undo(): Promise<void> {
  await editor.focusText();
  await editor.press('ControlOrMeta+Z');
}

/** The first line of the text that holds a word, wherever the keyboard is. */
async function lineWith(word: string): Promise<string> {
  const lines = await editor.page.locator('.editor-instance .monaco-editor .view-line').allInnerTexts();
  return lines.map((text) => text.replaceAll('\u00a0', ' ')).find((text) => text.includes(word)) ?? '';
}

const placeLine = () => lineWith('place Left');

/** What the plan of the booth says; among others how wide the walkway is. */
const booth = async () => (await previewOf(editor)).locator('[data-sheet=booth]').innerText();

test('while the text is broken the last good drawing stays, marked stale', async () => {
  const frame = await previewOf(editor);
  await toText(lineOf('place Left'), 1);
  await editor.press('End');
  await editor.press('Backspace');
  await editor.press('Backspace');
  await frame.locator('.stale', { hasText: 'Stale' }).waitFor();
  expect(await frame.locator('svg.booth-plan').count()).toBe(1);
  await editor.screenshot('stale');
  await editor.type('ft');
  await frame.locator('.stale').waitFor({ state: 'detached' });
});

test('the page asks for nothing that its policy forbids', () => {
  expect(editor.refusals()).toEqual([]);
});

test('the logs of the extension host tell of no error', () => {
  expect(editor.logErrors()).toEqual([]);
});

test('it comes back after the window is loaded anew, where it was', { timeout: 120_000 }, async () => {
  await (await previewOf(editor)).getByRole('button', { name: 'Larger: The room from above' }).click();
  await editor.focusText();
  await editor.press('ControlOrMeta+S');
  const before = await (await previewOf(editor)).evaluate(() => window.scrollY);
  await editor.reload();
  const frame = await previewOf(editor);
  await frame.locator('svg.booth-plan').waitFor();
  await expect.poll(() => frame.evaluate(() => window.scrollY), soon).toBe(before);
  await frame.getByRole('button', { name: 'Whole: The room from above' }).waitFor();
  await editor.screenshot('reloaded');
});

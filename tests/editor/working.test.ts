import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Editor, openEditor } from './harness/editor.js';

const soon = { timeout: 30_000 };
const lineOf = (start: string) => hall.split('\n').findIndex((line) => line.startsWith(start)) + 1;
/** With 31in between the wall and the seat, which is too little. */
const hall = `booth "Back corner" { show in  limits us }
room { width 30ft  depth 44ft }
operator Noor { stature 5'3" }
desk Table { width 60in  depth 27in  height 40in }
stool Tall { seat 26in..32in  foot-ring 15in below seat }
workstation Sound {
  desk Table  stool Tall
  operators Noor
  posture sit, stand
}
place Table at 10ft, 50in
walkway Behind { between booth and back-wall  serves 40 }
`;
let editor: Editor;

beforeAll(async () => {
  editor = await openEditor(
    'working',
    { 'hall.booth': hall, 'new.booth': '' },
    { 'editor.formatOnSave': true, 'files.autoSave': 'off' },
  );
  await editor.open('hall.booth');
});

afterAll(() => editor.close());

test('a walkway that is too narrow gets a squiggle', async () => {
  await expect.poll(warnings, soon).toContain('Behind');
});

test('the outline lists what the file declares', async () => {
  await editor.page.locator('.pane-header', { hasText: 'Outline' }).click();
  const rows = editor.page.locator('.outline-tree .monaco-list-row .label-name');
  await expect.poll(async () => (await rows.allInnerTexts()).join(' '), soon).toMatch(/Noor.*Table.*Tall.*Sound/);
  await editor.screenshot('outline');
});

test('a block folds and unfolds', async () => {
  await editor.goTo(lineOf('workstation'), 1);
  await editor.press('Control+Shift+BracketLeft');
  await expect.poll(lines, soon).not.toContain('  posture sit, stand');
  await editor.screenshot('folded');
  await editor.press('Control+Shift+BracketRight');
  await expect.poll(lines, soon).toContain('  posture sit, stand');
});

test('the selection grows from the value to its property, and on to the block', async () => {
  await editor.goTo(lineOf('desk'), 'desk Table { width 6'.length);
  const selected = async () => Number(/\((\d+) selected\)/.exec(await editor.cursor())?.[1] ?? 0);
  const sizes: number[] = [];
  for (const _ of [1, 2, 3, 4]) {
    await editor.press('Shift+Alt+ArrowRight');
    await expect.poll(selected, soon).toBeGreaterThan(sizes.at(-1) ?? 0);
    sizes.push(await selected());
  }
  expect(sizes).toContain('60in'.length);
  expect(sizes).toContain('width 60in'.length);
});

test('a name is renamed wherever it stands', async () => {
  await editor.goTo(lineOf('desk'), 'desk Ta'.length);
  await editor.press('F2');
  const box = editor.page.locator('.rename-input');
  await box.waitFor();
  await box.fill('Bench');
  await editor.press('Enter');
  await expect.poll(lines, soon).toContain('place Bench at 10ft, 50in');
  expect(await lines()).toContain('  desk Bench  stool Tall');
  expect(await errors()).toEqual([]);
});

test('a word becomes a whole declaration, which is offered once', async () => {
  await editor.press('ControlOrMeta+End');
  await editor.type('chair');
  await expect.poll(() => editor.suggestions(), soon).toEqual(['chair']);
  await editor.screenshot('declaration');
  await editor.press('Enter');
  await expect.poll(lines, soon).toContainEqual(expect.stringMatching(/^chair Office \{ seat 16in\.\.21in /));
  await editor.press('Escape');
  await editor.press('ControlOrMeta+Z');
  await editor.press('ControlOrMeta+Shift+K');
  await expect.poll(errors, soon).toEqual([]);
});

test('saving formats the file', async () => {
  await editor.goTo(lineOf('room'), 'room {'.length + 1);
  await editor.type('    ');
  await expect.poll(lines, soon).toContainEqual(expect.stringMatching(/^room \{ {5}width/));
  await editor.press('Escape');
  await editor.press('ControlOrMeta+S');
  await expect.poll(() => editor.read('hall.booth'), soon).toContain('place Bench at 10ft, 50in');
  expect(editor.read('hall.booth')).toContain('room { width 30ft  depth 44ft }\n');
});

test('while the text is broken the last findings stay, and go on when it is repaired', async () => {
  await editor.goTo(lineOf('room'), 'room { width 30ft  depth 44ft }'.length + 1);
  await editor.press('Backspace');
  await expect.poll(errors, soon).not.toEqual([]);
  expect(await warnings()).toContain('Behind');
  await editor.screenshot('broken');
  await editor.type('}');
  await expect.poll(errors, soon).toEqual([]);
  expect(await warnings()).toContain('Behind');
});

test('a brace closes itself, Enter indents between the two, and a line becomes a comment', async () => {
  await editor.open('new.booth');
  await editor.type('rack Power {');
  await editor.press('Escape');
  await editor.press('Enter');
  await editor.type('units 8');
  await expect.poll(lines, soon).toEqual(['rack Power {', '  units 8', '}']);
  await editor.press('Escape');
  await editor.press('ControlOrMeta+/');
  await expect.poll(lines, soon).toEqual(['rack Power {', '  // units 8', '}']);
  await editor.press('ControlOrMeta+S');
  await editor.open('hall.booth');
});

test('the logs of the extension host tell of no error', () => {
  expect(editor.logErrors()).toEqual([]);
});

test('after a reload of the window the file, its findings and the verdict are back', { timeout: 120_000 }, async () => {
  await editor.page.reload();
  // Which of the two files is in front depends on when the window last noted it.
  await editor.page.locator('.tab', { hasText: 'hall.booth' }).waitFor({ timeout: 60_000 });
  await editor.open('hall.booth');
  await expect.poll(warnings, { timeout: 60_000 }).toContain('Behind');
  await expect.poll(() => editor.status(), soon).toMatch(/1 fail, [^]*Checked in/);
  await editor.screenshot('reloaded');
  // The old host closes its channels while the window still asks; the new one has nothing to complain of.
  const closing = /provider FAILED|Channel has been closed/;
  expect(editor.logErrors().filter((line) => !closing.test(line))).toEqual([]);
});

async function lines(): Promise<string[]> {
  return (await editor.lines()).map(({ text }) => text);
}

async function warnings(): Promise<string[]> {
  return (await editor.squiggles()).filter(({ severity }) => severity === 'warning').map(({ text }) => text);
}

async function errors(): Promise<string[]> {
  return (await editor.squiggles()).filter(({ severity }) => severity === 'error').map(({ text }) => text);
}

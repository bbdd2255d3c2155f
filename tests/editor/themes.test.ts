import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { corner } from './harness/booths.js';
import { background, type Colour, contrast, parseColour, squiggleColours } from './harness/colours.js';
import { type Editor, openEditor } from './harness/editor.js';

const soon = { timeout: 30_000 };
/** How many of the five colours are apart at least: one high-contrast theme itself draws blocks and texts alike. */
const apartIn = (look: string) => (look === 'hc-light' ? 4 : 5);
/** Contrast of text, and of marks, with what stands behind them (WCAG 2.2, 1.4.3 and 1.4.11). */
const ofText = 4.5;
const ofMarks = 3;
const hall = `// the booth at the back\n${corner.replace('10ft, 62in', '10ft, 50in')}desk Spare { width 60 }\n`;
const themes = [
  { theme: 'Default Light Modern', look: 'vs' },
  { theme: 'Default Dark Modern', look: 'vs-dark' },
  { theme: 'Default High Contrast Light', look: 'hc-light' },
  { theme: 'Default High Contrast', look: 'hc-black' },
];
/** Words of each kind: a comment, a block, a name, a property, a length and a text. */
const words = ['// the booth at the back', 'desk', 'Table', 'width', '30ft', '"Back corner"'];
let editor: Editor;

beforeAll(async () => {
  editor = await openEditor('themes', { 'hall.booth': hall });
  await editor.open('hall.booth');
});

afterAll(() => editor.close());

test('there is a squiggle of each severity', async () => {
  await expect.poll(severities, soon).toEqual(['error', 'info', 'warning']);
});

describe.each(themes)('in $theme', ({ theme, look }) => {
  test('words of each kind have colours apart, and can be read', async () => {
    editor.change({ 'workbench.colorTheme': theme });
    await editor.page.locator(`.monaco-workbench.${look}`).waitFor();
    await expect.poll(async () => (await colours()).length, soon).toBe(words.length);
    await editor.screenshot(look);
    const [comment, block, name, property, length, text] = await colours();
    const apart = [comment, block, name, length, text];
    expect(new Set(apart).size, apart.join(' ')).toBeGreaterThanOrEqual(apartIn(look));
    expect(property).not.toBe(length);
    const behind = await background(editor.page);
    for (const colour of await colours()) expect(contrast(parseColour(colour), behind), colour).toBeGreaterThan(ofText);
  });

  test('squiggles of each severity have colours apart, and can be seen', async () => {
    const colours = await squiggleColours(editor.page);
    expect(Object.keys(colours).sort()).toEqual(['error', 'info', 'warning']);
    expect(new Set(Object.values(colours).map(String)).size).toBe(3);
    const behind = await background(editor.page);
    const best = (each: readonly Colour[]) => Math.max(...each.map((colour) => contrast(colour, behind)));
    for (const [severity, each] of Object.entries(colours))
      expect(best(each), `${severity}: ${String(each)}`).toBeGreaterThan(ofMarks);
  });
});

test('the logs of the extension host tell of no error', () => {
  expect(editor.logErrors()).toEqual([]);
});

/** The colours in which the words are drawn, those that stand there. */
async function colours(): Promise<string[]> {
  const pieces = (await editor.lines()).flatMap((line) => line.pieces);
  return words.flatMap((word) => pieces.find(({ text }) => text.trim() === word)?.colour ?? []);
}

async function severities(): Promise<string[]> {
  return [...new Set((await editor.squiggles()).map(({ severity }) => severity as string))]
    .filter((severity) => severity !== 'hint')
    .sort();
}

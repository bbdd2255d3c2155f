import { afterAll, beforeAll, expect, test } from 'vitest';
import { corner } from './harness/booths.js';
import { type Editor, openEditor } from './harness/editor.js';

const soon = { timeout: 30_000 };
let editor: Editor;

beforeAll(async () => {
  editor = await openEditor('help', {
    'corner.booth': corner,
    'bare.booth': 'desk Left { width 60  depth 27in }\n',
    'prose.booth': '',
  });
  await editor.open('corner.booth');
});

afterAll(() => editor.close());

test('the hover over a walkway tells its clear width and where it comes from', async () => {
  await expect.poll(() => editor.hover('Behind'), soon).toMatch(/Behind, walkway\s+Clear width 43 in/);
  await editor.screenshot('hover-over-a-walkway');
});

test('the hover over an operator tells predicted and measured dimensions', async () => {
  const figures = /stature\s+63 in\s+measured[^]*popliteal height\s+\d+( \d+\/\d+)? in/i;
  await expect.poll(() => editor.hover('Noor'), soon).toMatch(figures);
  await editor.screenshot('hover-over-an-operator');
});

test('the hover over a property tells what it means', async () => {
  await expect.poll(() => editor.hover('foot-ring'), soon).toContain('foot-ring:');
});

test('a quick fix from the light bulb puts a length right', async () => {
  await editor.open('bare.booth');
  await expect.poll(errors, soon).toEqual(['60']);
  await editor.goTo(1, 'desk Left { width 60'.length);
  await editor.fix('60in');
  await expect.poll(async () => (await editor.lines())[0]?.text, soon).toBe('desk Left { width 60in  depth 27in }');
  await expect.poll(errors, soon).toEqual([]);
});

test('completion offers the properties that a desk lacks', async () => {
  await editor.open('corner.booth');
  const line = corner.split('\n').findIndex((text) => text.startsWith('desk Table')) + 1;
  await editor.goTo(line, 1);
  await editor.press('End');
  await editor.press('ArrowLeft');
  await editor.type('to');
  await editor.press('Control+Space');
  await expect.poll(() => editor.suggestions(), soon).toContain('top');
  await editor.screenshot('completion');
  expect(await editor.suggestions()).not.toContain('width');
  await editor.press('Enter');
  await expect.poll(async () => (await editor.lines())[line - 1]?.text, soon).toContain('height 40in top ');
  await editor.press('Escape');
});

test('a space opens the list only where one of known values is due', async () => {
  await editor.open('prose.booth');
  for (const word of ['desk', 'Side', '{', 'width', '60in', 'depth', '27in']) {
    await editor.type(word);
    await editor.press('Escape');
    await editor.type(' ');
    await editor.page.waitForTimeout(300);
    expect(await editor.suggestions(), `after '${word}'`).toEqual([]);
  }
  await editor.press('End');
  await editor.press('Enter');
  await editor.type('workstation Words { posture');
  await editor.press('Escape');
  await editor.type(' ');
  await expect.poll(() => editor.suggestions(), soon).toEqual(['sit', 'stand']);
  await editor.screenshot('values');
  await editor.press('Escape');
  await editor.press('ControlOrMeta+S');
  await editor.open('corner.booth');
});

test('going to the definition of a name ends at its declaration', async () => {
  const line = corner.split('\n').findIndex((text) => text.startsWith('workstation')) + 1;
  await editor.goTo(line, 'workstation Sound { desk T'.length);
  await editor.press('F12');
  await expect.poll(() => editor.cursor(), soon).toContain('Ln 4, Col 6');
});

test('the logs of the extension host tell of no error', () => {
  expect(editor.logErrors()).toEqual([]);
});

/** The words under error squiggles. */
async function errors(): Promise<string[]> {
  return (await editor.squiggles()).filter(({ severity }) => severity === 'error').map(({ text }) => text);
}

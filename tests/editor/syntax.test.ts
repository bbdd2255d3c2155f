import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Editor, openEditor } from './harness/editor.js';

let editor: Editor;

beforeAll(async () => {
  editor = await openEditor('syntax', { 'hall.booth': '// the left desk\ndesk Left { width 60in }\n' });
  await editor.open('hall.booth');
});

afterAll(() => editor.close());

test('colours comments, words and lengths apart', async () => {
  await expect.poll(() => coloursOf('// the left desk', 'desk', '60in'), { timeout: 30_000 }).toHaveLength(3);
  await editor.screenshot('colours');
});

/** The different colours in which these texts are drawn. */
async function coloursOf(...wanted: string[]): Promise<string[]> {
  const pieces = (await editor.lines()).flatMap((line) => line.pieces);
  return [...new Set(wanted.flatMap((text) => pieces.find((piece) => piece.text.trim() === text)?.colour ?? []))];
}

import { EmptyFileSystem } from 'langium';
import { parseHelper } from 'langium/test';
import { expect, test } from 'vitest';
import { createBoothServices } from '../services.js';

const { booth: services } = createBoothServices(EmptyFileSystem);
const parse = parseHelper(services);

const text = 'desk Left { }\nplace Left at 1ft, 2ft\nworkstation Left { desk Left }\ndesk Right { }';

/** Line and column of each place that is shown with the cursor there. */
async function shown(line: number, character: number): Promise<number[][]> {
  const document = await parse(text);
  const params = { textDocument: { uri: document.uri.toString() }, position: { line, character } };
  const highlights = await services.lsp.DocumentHighlightProvider!.getDocumentHighlight(document, params);
  return (highlights ?? []).map(({ range: { start } }) => [start.line, start.character]).sort();
}

const places = [
  [0, 5],
  [1, 6],
  [2, 24],
];

test.each(places)(
  'every place of a name is shown, and no other of the same letters: %i, %i',
  async (line, character) => {
    expect(await shown(line, character + 2)).toEqual(places);
  },
);

test('a thing that is used nowhere is shown alone', async () => {
  expect(await shown(3, 6)).toEqual([[3, 5]]);
});

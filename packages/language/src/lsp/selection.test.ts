import { EmptyFileSystem } from 'langium';
import { parseHelper } from 'langium/test';
import type { SelectionRange } from 'vscode-languageserver-types';
import { expect, test } from 'vitest';
import { createBoothServices } from '../module.js';
import { selectionRangesOf } from './selection.js';

const { booth: services } = createBoothServices(EmptyFileSystem);
const parse = parseHelper(services);

/** What is selected at `|`, step by step. */
async function steps(marked: string): Promise<string[]> {
  const document = await parse(marked.replace('|', ''));
  const { textDocument } = document;
  const [selection] = selectionRangesOf(document, [textDocument.positionAt(marked.indexOf('|'))]);
  const texts: string[] = [];
  for (let step: SelectionRange | undefined = selection; step; step = step.parent)
    texts.push(textDocument.getText(step.range));
  return texts;
}

const bottom = 'monitor C { bottom 5in above desk }';

test.each([
  ['desk A { width 60|in }\n', ['60in', 'width 60in', 'desk A { width 60in }', 'desk A { width 60in }\n']],
  ['desk A { wid|th 60in }\n', ['width', 'width 60in', 'desk A { width 60in }', 'desk A { width 60in }\n']],
  [
    'workstation S { monitor C { bottom 5|in above desk } }\n',
    [
      '5in',
      '5in above desk',
      'bottom 5in above desk',
      bottom,
      `workstation S { ${bottom} }`,
      `workstation S { ${bottom} }\n`,
    ],
  ],
  ['desk A|', ['A', 'desk A']],
  ['|', ['']],
  ['\n|\n', ['\n\n']],
])('%j', async (text, expected) => {
  expect(await steps(text)).toEqual(expected);
});

test('each step holds the one before', async () => {
  const text = 'room { width 40ft }\n// so\nplace A at 1ft, 2ft\naccept x because "y"\n';
  for (let at = 0; at <= text.length; at++) {
    const sizes = (await steps(`${text.slice(0, at)}|${text.slice(at)}`)).map(({ length }) => length);
    expect(sizes.slice(1).every((size, index) => size > sizes[index]!)).toBe(true);
  }
});

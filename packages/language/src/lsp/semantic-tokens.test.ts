import { EmptyFileSystem } from 'langium';
import { SemanticTokensDecoder } from 'langium/lsp';
import { parseHelper } from 'langium/test';
import { expect, test } from 'vitest';
import { createBoothServices } from '../services.js';

const { booth: services } = createBoothServices(EmptyFileSystem);
const parse = parseHelper(services);

/** Each coloured word of a text with what it is. */
async function words(text: string): Promise<string[]> {
  const document = await parse(text);
  const provider = services.lsp.SemanticTokenProvider!;
  const tokens = await provider.semanticHighlight(document, { textDocument: { uri: document.uri.toString() } });
  const declaration = provider.tokenModifiers.declaration!;
  return SemanticTokensDecoder.decode(tokens, provider.tokenTypes, document).map(
    ({ text: word, tokenType, tokenModifiers }) => `${word} ${tokenType}${tokenModifiers & declaration ? '!' : ''}`,
  );
}

test.each([
  ['desk Left { width 60in }', ['desk keyword', 'Left class!', 'width property', '60in number']],
  ['booth "H" { show in }', ['booth keyword', '"H" string', 'show property', 'in enumMember']],
  [
    'desk A { }\nworkstation S { desk A }',
    ['desk keyword', 'A class!', 'workstation keyword', 'S class!', 'desk property', 'A class'],
  ],
  ['place A, B in a row at 1ft, 2ft', ['A class', 'B class', 'at property', '1ft number', '2ft number']],
  ['stool T { seat 28in..32in }', ['stool keyword', 'T class!', 'seat property', '28in number', '32in number']],
  [
    'workstation S { monitor C { bottom 5in above desk  main } }',
    [
      'workstation keyword',
      'S class!',
      'monitor keyword',
      'C class',
      'bottom property',
      '5in number',
      'above enumMember',
      'desk enumMember',
      'main enumMember',
    ],
  ],
  [
    'walkway W { between booth and A }',
    ['walkway keyword', 'W class!', 'between property', 'booth enumMember', 'A class'],
  ],
  ['accept skirt-drop on F because "so"', ['skirt-drop function', 'F class', '"so" string']],
  ['import "a.booth"', ['"a.booth" string']],
  [
    'room { door D { on back-wall } }',
    ['room keyword', 'door keyword', 'D class!', 'on property', 'back-wall enumMember'],
  ],
])('%s', async (text, expected) => {
  expect(await words(text)).toEqual(expected);
});

test('a text that is half written keeps its colours', async () => {
  expect(await words('desk Left { width }\ndesk Right { depth 2in')).toEqual(
    expect.arrayContaining(['Left class!', 'width property', 'Right class!', '2in number']),
  );
});

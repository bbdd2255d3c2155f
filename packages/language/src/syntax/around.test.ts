import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { EmptyFileSystem, type LangiumDocument, URI } from 'langium';
import { describe, expect, test } from 'vitest';
import { createBoothServices } from '../module.js';
import { silent } from '../testing/analysis.js';
import { wordsAround } from './around.js';
import type { Token } from './faults.js';

const { shared, booth } = createBoothServices({ ...EmptyFileSystem, computation: silent });
const { Lexer: lexer } = booth.parser;
const provider = booth.lsp.CompletionProvider!;

const folder = new URL('../../../../examples/', import.meta.url);
const texts = readdirSync(folder)
  .filter((name) => name.endsWith('.booth'))
  .map((name) => readFileSync(new URL(name, folder), 'utf8'));

const documentOf = (text: string) =>
  shared.workspace.LangiumDocumentFactory.fromString(text, URI.parse('file:///hall/hall.booth'));

/** The same document with a fault before everything, so that nothing is left out. */
function withFault(document: LangiumDocument): LangiumDocument {
  const fault = { message: '', offset: -1, line: 1, column: 1, length: 1 };
  const parseResult = { ...document.parseResult, lexerErrors: [fault] };
  return Object.create(document, { parseResult: { value: parseResult } }) as LangiumDocument;
}

const shown = (tokens: readonly Token[]) =>
  tokens.map(({ image, startOffset, endOffset, tokenType: { name } }) => [name, image, startOffset, endOffset]);

const desks = Array.from({ length: 9 }, (_, n) => `desk Desk${n} { width 60in  // side\n}\n`);

describe('the words around a place', () => {
  test('are of the block there and of those beside it', () => {
    const text = desks.join('');
    const { tokens, hidden } = wordsAround(documentOf(text), text.indexOf('width 60in', text.indexOf('Desk4')), lexer);
    expect(tokens.filter(({ image }) => image.startsWith('Desk')).map(({ image }) => image)).toEqual([
      'Desk3',
      'Desk4',
      'Desk5',
    ]);
    for (const { image, startOffset, endOffset } of [...tokens, ...hidden])
      expect(text.slice(startOffset, endOffset! + 1)).toBe(image);
    expect(hidden).toHaveLength(3);
  });

  test('are all there are after a fault, and of a tree that is older than the text', () => {
    const text = desks.join('');
    const older = Object.create(documentOf(text.slice(1)), {
      textDocument: { value: documentOf(text).textDocument },
    }) as LangiumDocument;
    for (const document of [documentOf(text.replace('Desk1 {', 'Desk1 { }')), older]) {
      const { tokens } = wordsAround(document, text.indexOf('Desk7'), lexer);
      expect(tokens.filter(({ image }) => image.startsWith('Desk'))).toHaveLength(9);
    }
  });

  test('a fault behind them is no matter', () => {
    const document = documentOf(`${desks.join('')}desk Last { width 60in`);
    expect(wordsAround(document, desks.join('').length + 14, lexer).tokens[1]!.image).toBe('Desk8');
  });

  const typed = fc.constantFrom('', '{', '}', ' ', '/*', '"', 'desk ', 'height ', '60in', 'place Left at ', 'x');
  const places = fc.tuple(fc.constantFrom(...texts), fc.nat(), typed, fc.nat());

  test('stand there so in the whole text, without a gap', () => {
    fc.assert(
      fc.property(places, ([whole, at, piece, place]) => {
        const start = at % whole.length;
        const text = whole.slice(0, start) + piece + whole.slice(start);
        const offset = place % (text.length + 1);
        const some = shown(wordsAround(documentOf(text), offset, lexer).tokens);
        const all = shown(lexer.tokenize(text, { mode: 'partial' }).tokens);
        const first = all.findIndex(([, , from]) => from === some[0]?.[2]);
        expect(some).toEqual(all.slice(first, first + some.length));
      }),
    );
  });

  test('say the same of what may be written there as all of them', async () => {
    await fc.assert(
      fc.asyncProperty(places, async ([whole, at, piece, place]) => {
        const start = at % whole.length;
        const text = whole.slice(0, start) + piece + whole.slice(start);
        const document = documentOf(text);
        await shared.workspace.DocumentBuilder.build([document]);
        const near = start + piece.length + (place % 5) - 2;
        const position = document.textDocument.positionAt(Math.max(0, near));
        const params = { textDocument: { uri: document.uri.toString() }, position };
        const expected = await provider.getCompletion(withFault(document), params);
        expect(await provider.getCompletion(document, params)).toEqual(expected);
      }),
      { numRuns: 400 },
    );
  });
});

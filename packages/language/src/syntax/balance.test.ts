import { EmptyFileSystem } from 'langium';
import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { isDocument } from '../generated/ast.js';
import { createBoothServices } from '../module.js';
import { analyseText, silent } from '../testing/analysis.js';

const { booth } = createBoothServices(EmptyFileSystem);
const tour = readFileSync(new URL('../../../../tests/fixtures/language/tour.booth', import.meta.url), 'utf8');

const parse = (text: string) => booth.parser.LangiumParser.parse(text);
const blocksOf = (text: string) => {
  const { value } = parse(text);
  return isDocument(value) ? value.blocks.map(({ kind, name = '' }) => `${kind} ${name}`.trim()) : [];
};

describe('a brace that is missing costs no other block', { timeout: 30_000 }, () => {
  test('whichever it is', () => {
    const all = blocksOf(tour);
    const braces = [...tour.matchAll(/\}/g)].map(({ index }) => index);
    for (const index of braces) {
      const text = tour.slice(0, index) + tour.slice(index + 1);
      const { parserErrors, lexerErrors } = parse(text);
      expect([blocksOf(text), parserErrors.length], text.slice(index - 40, index)).toEqual([all, 0]);
      expect(lexerErrors.length).toBe(1);
    }
  });

  test('or one too many', () => {
    const all = blocksOf(tour);
    const ends = [...tour.matchAll(/^\}/gm)].map(({ index }) => index);
    for (const index of ends) {
      const text = `${tour.slice(0, index)}}${tour.slice(index)}`;
      expect(blocksOf(text)).toEqual(all);
      expect(parse(text).lexerErrors.length).toBe(1);
    }
  });
});

test('a text whose braces are right is read whatever its indentation', () => {
  const flat = tour.replace(/^[ ]+/gm, '');
  expect(flat).not.toBe(tour);
  expect(parse(flat).lexerErrors).toEqual([]);
  expect(blocksOf(flat)).toEqual(blocksOf(tour));
});

test('a half-typed property leaves one message, and everything else as it was', { timeout: 30_000 }, async () => {
  const lines = tour.split('\n');
  const inside = lines.flatMap((line, index) => (line.startsWith('  ') ? [index] : []));
  for (const index of inside) {
    const text = [...lines.slice(0, index), '  zz', ...lines.slice(index)].join('\n');
    const { diagnostics } = await analyseText(text.replace(/^import.*$/m, ''), silent);
    expect(diagnostics.map(({ start, message }) => [start.line, message.split(' is ')[0]])).toEqual([[index, '`zz`']]);
  }
});

test('a comment that is never closed is said where it begins', async () => {
  const { diagnostics } = await analyseText('desk Left { width 60in }\n/* and so on\ndesk Right { }', silent);
  expect(diagnostics).toMatchObject([
    { code: 'open-comment', start: { line: 1, character: 0 }, end: { line: 1, character: 2 } },
  ]);
});

describe('no text breaks the language', { timeout: 60_000 }, () => {
  const pieces = fc.constantFrom(
    ...'desk workstation room monitor tray control Left Right width at on between and place in a row import accept because'.split(
      ' ',
    ),
    ...[
      '{',
      '}',
      '{',
      '}',
      ',',
      '..',
      '60in',
      '60',
      `5'3"`,
      '1,5m',
      '“x',
      '"x"',
      '\n',
      '/*',
      ':',
      'é',
      '½',
      '\u0000',
      '💡',
    ],
  );
  const texts = fc.array(pieces, { maxLength: 40 }).map((list) => list.join(' '));

  test('be it words of the language in any order', async () => {
    await fc.assert(
      fc.asyncProperty(texts, async (text) => {
        const { diagnostics } = await analyseText(text, silent);
        const length = text.split('\n').length;
        for (const { start, end, message } of diagnostics) {
          expect(message).not.toMatch(/undefined|NaN|\[object|checks stopped/);
          expect(start.line).toBeLessThan(length);
          expect(end.line).toBeGreaterThanOrEqual(start.line);
        }
      }),
      { numRuns: 300 },
    );
  });

  test('or any characters', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: 'binary', maxLength: 60 }), async (text) => {
        const { diagnostics } = await analyseText(text, silent);
        expect(diagnostics.map(({ message }) => message).join()).not.toMatch(/undefined|NaN|checks stopped/);
      }),
      { numRuns: 200 },
    );
  });

  test('or a part of a good file, with the checks of the product', async () => {
    await fc.assert(
      fc.asyncProperty(fc.nat(tour.length), fc.nat(200), async (from, size) => {
        const text = tour.slice(0, from) + tour.slice(from + size);
        const { diagnostics } = await analyseText(text);
        expect(diagnostics.map(({ message }) => message).join()).not.toMatch(/undefined|NaN|checks stopped/);
      }),
      { numRuns: 20 },
    );
  });
});

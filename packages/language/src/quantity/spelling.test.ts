import { INCH } from '@boothwright/fit';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseQuantity } from './quantity.js';
import { snapped, spelledLike, stepOf } from './spelling.js';

describe('a new length is spelled like the old one', () => {
  test.each([
    ['40in', 41.25 * INCH, '41 1/4in'],
    ['40 in', 41.25 * INCH, '41 1/4 in'],
    ['40 inches', 41 * INCH, '41 inches'],
    ['40"', 40.5 * INCH, '40 1/2"'],
    ['40½in', 40.75 * INCH, '40 3/4in'],
    ['40.5in', 40.25 * INCH, '40 1/4in'],
    ['1/2in', 0.25 * INCH, '1/4in'],
    [`5'3"`, 64.5 * INCH, `5'4 1/2"`],
    [`5'3"`, 60 * INCH, `5'`],
    ['5ft 3in', 64.5 * INCH, '5ft 4 1/2in'],
    ['14ft', 15 * 12 * INCH, '15ft'],
    ['14ft', 170.5 * INCH, '170 1/2in'],
    ["14'", 170.5 * INCH, `14'2 1/2"`],
    ['1016mm', 1020, '1020mm'],
    ['101.6 cm', 1025, '102.5 cm'],
    ['1.02m', 1025, '1.025m'],
    ['0', 1020, '1020mm'],
  ])('%s', (text, length, spelled) => {
    expect(spelledLike(text, length, 'mm')).toBe(spelled);
  });

  test('and says the length that it should', () => {
    const written = fc.constantFrom(
      '40in',
      '40 "',
      `5'3"`,
      '5ft 3in',
      '14ft',
      '14 ft',
      "6'",
      '7mm',
      '7 cm',
      '1.5m',
      '0',
    );
    fc.assert(
      fc.property(written, fc.integer({ min: 0, max: 4000 }), (text, steps) => {
        const length = snapped(steps * stepOf(text), stepOf(text));
        const quantity = parseQuantity(spelledLike(text, length, 'mm'));
        expect(quantity.is).toBe('length');
        expect(Math.abs((quantity as { value: number }).value - length)).toBeLessThan(0.01);
      }),
    );
  });
});

test.each([
  ['40in', 1000, 996.95],
  ["5'", 1000, 996.95],
  ['100cm', 1002.4, 1000],
  ['1m', 1002.6, 1005],
])('%s snaps %d to %d', (text, length, near) => {
  expect(snapped(length, stepOf(text))).toBeCloseTo(near, 6);
});

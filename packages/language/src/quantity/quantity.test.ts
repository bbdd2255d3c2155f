import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type DisplayUnit, typeLength } from '@boothwright/fit';
import { BoothTerminals } from '../generated/ast.js';
import { parseQuantity } from './quantity.js';

/** The token that the lexer cuts from the start of a text. */
function token(text: string): string {
  const found = new RegExp(BoothTerminals.QUANTITY, 'y').exec(text);
  if (!found) throw new Error(`no quantity at the start of ${text}`);
  return found[0];
}
const inch = 25.4;
const foot = 304.8;

describe('lengths', () => {
  test.each([
    ['104cm', 1040],
    ['104 cm', 1040],
    ['1.04m', 1040],
    ['1040mm', 1040],
    ['41 1/2in', 41.5 * inch],
    ['41-1/2in', 41.5 * inch],
    ['41½"', 41.5 * inch],
    ['1/2 in', 0.5 * inch],
    ['½in', 0.5 * inch],
    ['.5in', 0.5 * inch],
    ['60"', 60 * inch],
    ['60″', 60 * inch],
    [`5'10.5"`, 70.5 * inch],
    [`5' 4"`, 64 * inch],
    [`5'-6"`, 66 * inch],
    [`5'6''`, 66 * inch],
    ['5ft 10 1/2in', 70.5 * inch],
    ['5ft10in', 70 * inch],
    ['5′4″', 64 * inch],
    ["5'", 5 * foot],
    ['40 feet', 40 * foot],
    ['1 metre', 1000],
    ['-3in', -3 * inch],
    ['−3in', -3 * inch],
  ])('%s', (text, millimetres) => {
    expect(token(text)).toBe(text);
    const quantity = parseQuantity(text);
    expect(quantity).toMatchObject({ is: 'length' });
    expect(quantity).toHaveProperty('value', expect.closeTo(millimetres, 6));
  });

  test.each([
    ['5’3”', 63 * inch, `5'3"`],
    ['5’ 3 1/2”', 63.5 * inch, `5' 3 1/2"`],
    ['60”', 60 * inch, '60"'],
  ])('%s keeps its value and knows its straight spelling', (text, millimetres, straight) => {
    expect(token(text)).toBe(text);
    expect(parseQuantity(text)).toMatchObject({ is: 'length', curly: straight });
    expect(parseQuantity(text)).toHaveProperty('value', expect.closeTo(millimetres, 6));
  });

  test('what is written is read back, in every unit that is written', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40_000 }),
        fc.constantFrom<DisplayUnit>('in', 'ft', 'mm', 'cm', 'm'),
        (eighths, unit) => {
          const length = unit === 'in' || unit === 'ft' ? (eighths * inch) / 8 : eighths;
          const text = typeLength(length, unit);
          expect(token(`${text} width`)).toBe(text);
          const read = parseQuantity(text);
          expect(read.is === 'length' && Math.abs(read.value - length)).toBeLessThan(0.51);
        },
      ),
    );
  });
});

describe('other quantities', () => {
  test.each([
    ['25deg', { is: 'angle', value: 25 }],
    ['25°', { is: 'angle', value: 25 }],
    ['90%', { is: 'share', value: 0.9 }],
    ['12.5 kg', { is: 'weight', value: 12.5 }],
    ['30lb', { is: 'weight', value: 13.607771 }],
    ['14px', { is: 'pixels', value: 14 }],
    ['16:9', { is: 'ratio', across: 16, down: 9 }],
    ['2.35:1', { is: 'ratio', across: 2.35, down: 1 }],
    ['1920 x 1080', { is: 'size', across: 1920, down: 1080 }],
    ['1920×1080', { is: 'size', across: 1920, down: 1080 }],
    ['60', { is: 'number', value: 60 }],
    ['3 1/2', { is: 'number', value: 3.5 }],
  ])('%s', (text, expected) => {
    expect(token(text)).toBe(text);
    expect(parseQuantity(text)).toEqual(expected);
  });
});

describe('near misses are one token with one fault', () => {
  test.each([
    ['60inx', 'unit', 'inx', []],
    ['60cms', 'unit', 'cms', []],
    ["5'4", 'inch mark', '4', [`5'4"`]],
    ["5' 4", 'inch mark', '4', [`5' 4"`]],
    ['5ft 10', 'inch mark', '10', ['5ft 10in']],
    ['1,5m', 'decimal comma', '1,5m', ['1.5m']],
    ['1,5 m', 'decimal comma', '1,5 m', ['1.5m']],
    ['3 1/', 'fraction', '3 1/', []],
    ['3 1/2x', 'fraction', '3 1/2x', []],
    ['1/0in', 'fraction', '1/0in', []],
    ['60.', 'number', '60.', []],
  ])('%s', (text, fault, part, suggestions) => {
    expect(token(`${text} width 3in`)).toBe(text);
    expect(parseQuantity(text)).toEqual({ is: 'malformed', fault, part, suggestions });
  });
});

describe('a token ends where the quantity ends', () => {
  test.each([
    ['28in..32in', '28in'],
    ['24..33in', '24'],
    ['14ft, 6ft', '14ft'],
    ['14ft,6ft', '14ft'],
    ['14ft 6ft', '14ft'],
    ['60 height 40in', '60'],
    ['60 inside', '60'],
    ['12 Left', '12'],
    ['60in}', '60in'],
    ['60}', '60'],
    ['60// wide', '60'],
    ['60in// wide', '60in'],
    ['60\nin', '60'],
    ['36in at 3ft', '36in'],
  ])('%s', (text, expected) => {
    expect(token(text)).toBe(expected);
  });
});

test('any token that the lexer cuts can be read, without an exception', () => {
  const characters = fc.constantFrom(...`0123456789 ./'",:x-½’”inftcm°%kg`);
  fc.assert(
    fc.property(fc.array(characters, { maxLength: 12 }), (rest) => {
      const text = `4${rest.join('')}`;
      const quantity = parseQuantity(token(text));
      if ('value' in quantity) expect(quantity.value).not.toBeNaN();
    }),
  );
});

import { describe, expect, it } from 'vitest';
import { formatLength, formatRange } from './format.js';

describe('feet and inches', () => {
  it.each([
    [609.6, '2 ft'],
    [914.4, '3 ft'],
    [698.5, '2 ft 3 1/2 in'],
    [12.7, '1/2 in'],
    [-1828.8, '−6 ft'],
  ])('of %d mm', (length, words) => {
    expect(formatLength(length, 'ft')).toBe(words);
  });
});

describe('a range in words', () => {
  it.each([
    ['in', 698.5, 781.05, '27 1/2 to 30 3/4 in'],
    ['mm', 698.5, 781, '699 to 781 mm'],
    ['cm', 700, 781, '70 to 78.1 cm'],
    ['m', 700, 1781, '0.70 to 1.78 m'],
    ['ft', 698.5, 914.4, '2 ft 3 1/2 in to 3 ft'],
    ['in', 700, 700, '27 1/2 in'],
    ['in', 698.5, 698.9, '27 1/2 in'],
  ] as const)('in %s', (unit, min, max, words) => {
    expect(formatRange({ min, max }, unit)).toBe(words);
  });
});

import { describe, expect, it } from 'vitest';
import { formatRange } from './format.js';

describe('a range in words', () => {
  it.each([
    ['in', 698.5, 781.05, '27 1/2 to 30 3/4 in'],
    ['mm', 698.5, 781, '699 to 781 mm'],
    ['cm', 700, 781, '70 to 78.1 cm'],
    ['m', 700, 1781, '0.70 to 1.78 m'],
    ['ft', 698.5, 914.4, '2 ft 3 1/2 in to 3 ft'],
    ['in', 700, 700, '27 1/2 in'],
    ['in', 700, 700.4, '27 1/2 in'],
  ] as const)('in %s', (unit, min, max, words) => {
    expect(formatRange({ min, max }, unit)).toBe(words);
  });
});

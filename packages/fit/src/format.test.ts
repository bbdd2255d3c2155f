import { describe, expect, it } from 'vitest';
import { formatAges, formatLength, formatRange, listOf, named, typeLength } from './format.js';

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

describe('lengths in other units', () => {
  it.each([
    ['m', -1250, '−1.25 m'],
    ['cm', -125, '−12.5 cm'],
    ['mm', Infinity, '?'],
    ['in', NaN, '?'],
  ] as const)('in %s, of %d', (unit, length, words) => {
    expect(formatLength(length, unit)).toBe(words);
  });

  it.each([
    ['mm', 1047.6, '1048mm'],
    ['cm', 1047.6, '104.8cm'],
    ['m', 1047.6, '104.8cm'],
    ['in', 1047.75, '41 1/4in'],
    ['ft', 1047.75, '41 1/4in'],
  ] as const)('typed in %s', (unit, length, text) => {
    expect(typeLength(length, unit)).toBe(text);
  });
});

it('ages are one or a span', () => {
  expect(formatAges({ min: 14, max: 14 })).toBe('14 years old');
  expect(formatAges({ min: 14, max: 17 })).toBe('14 to 17 years old');
});

it('many people are a number', () => {
  expect(named(['Noor', 'Tobias', 'Priya', 'Sam'])).toBe('Noor, Tobias, Priya and Sam');
  expect(named(['Noor', 'Tobias', 'Priya', 'Sam', 'Kofi'])).toBe('5 people');
});

it('lists end with their conjunction', () => {
  expect([listOf([]), listOf(['Noor']), listOf(['Noor', 'Tobias']), listOf(['a', 'b', 'c'], 'or')]).toEqual([
    '',
    'Noor',
    'Noor and Tobias',
    'a, b or c',
  ]);
});

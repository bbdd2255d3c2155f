import { describe, expect, it } from 'vitest';
import { crossing, cValue } from './sight.js';

const INCH = 25.4;

describe('the sight-line value C', () => {
  // P. Shepherd, University of Bath: focal point 25 ft (or 10 ft) from the front, 24 in rows, 11 5/8 in risers, eye
  // 150 mm forward of the row's rear edge; published result columns for rows 2 to 6.
  it.each([
    ['W19', 25, 1200, [190, 178, 167, 157, 149]],
    ['W20', 25, 1600, [162, 152, 142, 134, 127]],
    ['W21', 10, 1200, [74, 64, 57, 51, 46]],
    ['W22', 10, 1600, [15, 13, 11, 10, 9]],
  ])('%s: %i ft to the focal point, eye %i', (_, feet, eye, expected) => {
    const row = 24 * INCH;
    const riser = 11.625 * INCH;
    const values = expected.map((_value, index) => {
      const D = feet * 12 * INCH + (index + 1) * row - 150;
      const R = eye + index * riser;
      return Math.round(cValue({ D, T: row, R, N: riser }));
    });
    expect(values).toEqual(expected);
  });

  it('W23: D 30 m, R 10 m, T 1 m, C 0.15 m asks for a riser of 0.4883 m', () => {
    const N = ((10_000 + 150) * 31_000) / 30_000 - 10_000;
    expect(N).toBeCloseTo(488.3, 1);
    expect(cValue({ D: 30_000, T: 1000, R: 10_000, N })).toBeCloseTo(150, 9);
  });

  it('W24: a flat floor with a focal point above the eye', () => {
    expect(Math.round(cValue({ D: 6000, T: 900, R: -300, N: 0 }))).toBe(39);
  });
});

describe('where a line of sight crosses an obstacle', () => {
  const eye = { x: 0, y: 0 };
  const stage = { x: 0, y: 10_000 };

  it('crosses what stands across it', () => {
    expect(
      crossing(eye, stage, [
        { x: -100, y: 2500 },
        { x: 100, y: 2500 },
      ]),
    ).toBeCloseTo(0.25, 12);
  });

  it.each([
    [
      'beside it',
      [
        { x: 10, y: 2500 },
        { x: 100, y: 2500 },
      ],
    ],
    [
      'behind the eye',
      [
        { x: -100, y: -500 },
        { x: 100, y: -500 },
      ],
    ],
    [
      'beyond the stage',
      [
        { x: -100, y: 10_500 },
        { x: 100, y: 10_500 },
      ],
    ],
    [
      'along it',
      [
        { x: 0, y: 2500 },
        { x: 0, y: 3000 },
      ],
    ],
  ] as const)('passes what stands %s', (_, line) => expect(crossing(eye, stage, line)).toBeUndefined());
});

import type { Polygon } from '../booth.js';
import { describe, expect, it } from 'vitest';
import { wayAcross } from './across.js';

function box(left: number, bottom: number, right: number, top: number): Polygon {
  return [
    { x: left, y: bottom },
    { x: right, y: bottom },
    { x: right, y: top },
    { x: left, y: top },
  ];
}

const wall = box(-1e6, -1000, 1e6, 0);

describe('the way across', () => {
  it.each([
    ['from a desk to a wall, in the middle of the desk', box(1000, 800, 3000, 1500), wall, 800, [2000, 800, 2000, 0]],
    ['from the wall to the desk', wall, box(1000, 800, 3000, 1500), 800, [2000, 0, 2000, 800]],
    ['where two desks overlap', box(0, 0, 2000, 100), box(1500, 600, 4000, 700), 500, [1750, 100, 1750, 600]],
    [
      'from corner to corner: a 3-4-5 triangle',
      box(0, 0, 100, 100),
      box(400, 500, 600, 600),
      500,
      [100, 100, 400, 500],
    ],
    ['shorter where something takes the rest', box(1000, 800, 3000, 1500), wall, 300, [2000, 800, 2000, 500]],
  ] as const)('%s', (_, a, b, clear, [x1, y1, x2, y2]) => {
    const [from, to] = wayAcross(a, b, clear)!;
    expect(from.x).toBeCloseTo(x1, 6);
    expect(from.y).toBeCloseTo(y1, 6);
    expect(to.x).toBeCloseTo(x2, 6);
    expect(to.y).toBeCloseTo(y2, 6);
  });

  it('is none where outlines touch or overlap', () => {
    expect(wayAcross(box(0, 0, 100, 100), box(100, 0, 200, 100), 0)).toBeUndefined();
    expect(wayAcross(box(0, 0, 100, 100), box(50, 50, 200, 100), 0)).toBeUndefined();
  });
});

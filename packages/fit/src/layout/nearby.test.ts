import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PlacedPiece } from '../assessment.js';
import { nowhere } from '../testing/booths.js';
import { piecesNear } from './nearby.js';
import { box, boxOf } from './polygon.js';

const piece = (name: string, left: number, near: number, width: number, depth: number): PlacedPiece => ({
  name,
  kind: 'desk',
  outline: box(left, left + width, near, near + depth),
  origin: nowhere,
});

/** From a shelf to a piece as long as a street, on a floor of 200 m. */
const boxes = fc.record({
  left: fc.integer({ min: -1e5, max: 1e5 }),
  near: fc.integer({ min: -1e5, max: 1e5 }),
  width: fc.oneof(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 1, max: 2e5 })),
  depth: fc.oneof(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 1, max: 2e5 })),
});

describe('the pieces near a box', () => {
  it('hold every piece that touches it, in the order of the list', () => {
    fc.assert(
      fc.property(fc.array(boxes, { maxLength: 60 }), fc.array(boxes, { minLength: 1, maxLength: 4 }), (all, asked) => {
        const pieces = all.map(({ left, near, width, depth }, index) => piece(`${index}`, left, near, width, depth));
        for (const { left, near, width, depth } of asked) {
          const found = piecesNear(pieces, { left, right: left + width, near, far: near + depth });
          const touching = pieces.filter(({ outline }) => {
            const own = boxOf(outline);
            return own.left <= left + width && own.right >= left && own.near <= near + depth && own.far >= near;
          });
          expect(found.filter((one) => touching.includes(one))).toEqual(touching);
          expect(found).toEqual(pieces.filter((one) => found.includes(one)));
        }
      }),
    );
  });

  it('are few of many: a desk at the other end of a long row is not looked at', () => {
    const row = Array.from({ length: 40 }, (_, index) => piece(`${index}`, index * 3000, 0, 1500, 700));
    const near = piecesNear(row, { left: 0, right: 1500, near: 0, far: 700 }).map(({ name }) => name);
    expect(near).toContain('0');
    expect(near.length).toBeLessThan(4);
    const long = [...row, piece('street', 0, 5000, 200_000, 100)];
    expect(piecesNear(long, { left: 0, right: 1500, near: 0, far: 700 }).map(({ name }) => name)).toContain('street');
  });
});

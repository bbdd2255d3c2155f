import type { Polygon } from '../booth.js';
import fc from 'fast-check';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import SnapIfNeededOverlayOp from 'jsts/org/locationtech/jts/operation/overlay/snap/SnapIfNeededOverlayOp.js';
import { describe, expect, it } from 'vitest';
import { clip, distanceBetween, dot, frameAt, gapBetween, penetration, pointIn, rectangleIn } from './polygon.js';

// A general geometry library is the oracle: it knows nothing of frames, and handles outlines that need not be convex.

const size = fc.integer({ min: 100, max: 3000 });
const place = fc.record({ x: fc.integer({ min: 0, max: 6000 }), y: fc.integer({ min: 0, max: 6000 }) });
const right = fc.constantFrom(0, 90, 180, 270);
const heading = fc.oneof(right, fc.double({ min: -180, max: 180, noNaN: true }));
const piece = fc
  .record({ place, heading, width: size, depth: size })
  .map(({ place, heading, width, depth }) => rectangleIn(frameAt(place, heading), [0, width], [0, depth]));
/** A door's sweep: convex, with many corners. */
const sweep = fc.record({ place, heading, radius: size }).map(({ place, heading, radius }) => {
  const frame = frameAt(place, heading);
  const arc = Array.from({ length: 9 }, (_, index) => {
    const angle = (index / 8) * (Math.PI / 2);
    return pointIn(frame, radius * Math.cos(angle), radius * Math.sin(angle));
  });
  return [pointIn(frame, 0, 0), ...arc];
});
const outline = fc.oneof(piece, sweep);

interface Shape {
  getArea(): number;
}

const factory = new GeometryFactory();

function oracle(outline: Polygon): Shape {
  const ring = [...outline, outline[0]!].map(({ x, y }) => new Coordinate(x, y));
  return factory.createPolygon(factory.createLinearRing(ring)) as Shape;
}

function areaOf(outline: Polygon): number {
  return outline.length < 3 ? 0 : oracle(outline).getArea();
}

function sharedArea(a: Polygon, b: Polygon): number {
  return (SnapIfNeededOverlayOp.intersection(oracle(a), oracle(b)) as Shape).getArea();
}

function libraryDistance(a: Polygon, b: Polygon): number {
  return DistanceOp.distance(oracle(a), oracle(b)) as number;
}

/** Outlines that touch, or nearly so, are for the tables below: there the last bit of a sine decides. */
const GRAZING = 1e-3;

describe('polygon, against a general geometry library', () => {
  it('two outlines reach into one another exactly where they share area', () => {
    fc.assert(
      fc.property(outline, outline, (a, b) => {
        const depth = penetration(a, b);
        fc.pre(depth === 0 || depth > GRAZING);
        const shared = sharedArea(a, b);
        if (depth > 0) expect(shared).toBeGreaterThan(0);
        else expect(shared).toBeLessThan(GRAZING);
      }),
      { numRuns: 1000 },
    );
  });

  it('outlines that are apart are as far apart as the library says', () => {
    fc.assert(
      fc.property(outline, outline, (a, b) => {
        fc.pre(penetration(a, b) === 0);
        expect(distanceBetween(a, b)).toBeCloseTo(libraryDistance(a, b), 6);
      }),
      { numRuns: 1000 },
    );
  });

  it('moving one outline away by the penetration, the right way, parts the two', () => {
    fc.assert(
      fc.property(piece, piece, (a, b) => {
        const depth = penetration(a, b);
        fc.pre(depth > GRAZING);
        const ways = [...a, ...b].flatMap((_, index) => {
          const outline = index < a.length ? a : b;
          const p = outline[index % a.length]!;
          const q = outline[(index + 1) % a.length]!;
          const length = Math.hypot(q.x - p.x, q.y - p.y);
          const normal = { x: (q.y - p.y) / length, y: (p.x - q.x) / length };
          return [normal, { x: -normal.x, y: -normal.y }];
        });
        const moved = ways.map((way) => a.map(({ x, y }) => ({ x: x + way.x * depth, y: y + way.y * depth })));
        expect(Math.min(...moved.map((one) => sharedArea(one, b)))).toBeLessThan(1);
        const less = depth * 0.99;
        const stuck = ways.map((way) => a.map(({ x, y }) => ({ x: x + way.x * less, y: y + way.y * less })));
        expect(Math.min(...stuck.map((one) => penetration(one, b)))).toBeGreaterThan(0);
      }),
      { numRuns: 300 },
    );
  });

  it('the two parts that a line cuts an outline into are the outline, and each lies on its side', () => {
    fc.assert(
      fc.property(outline, place, fc.double({ min: 0, max: 360, noNaN: true }), (whole, through, angle) => {
        const normal = frameAt({ x: 0, y: 0 }, angle).forward;
        const offset = dot(through, normal);
        const kept = clip(whole, normal, offset);
        const rest = clip(whole, { x: -normal.x, y: -normal.y }, -offset);
        for (const point of kept) expect(dot(point, normal)).toBeGreaterThan(offset - 1e-6);
        for (const point of rest) expect(dot(point, normal)).toBeLessThan(offset + 1e-6);
        expect(areaOf(kept) + areaOf(rest)).toBeCloseTo(areaOf(whole), 2);
      }),
      { numRuns: 1000 },
    );
  });

  it('a clipped outline is what the library leaves of it inside a half plane', () => {
    fc.assert(
      fc.property(outline, place, fc.double({ min: 0, max: 360, noNaN: true }), (whole, through, angle) => {
        const frame = frameAt(through, angle);
        const half = rectangleIn(frame, [-30_000, 30_000], [0, 30_000]);
        const kept = clip(whole, frame.forward, dot(through, frame.forward));
        fc.pre(areaOf(kept) > 1);
        expect(areaOf(kept)).toBeCloseTo(sharedArea(whole, half), 0);
      }),
      { numRuns: 500 },
    );
  });
});

describe('polygon, by hand', () => {
  const square = rectangleIn(frameAt({ x: 0, y: 0 }, 0), [0, 100], [0, 100]);
  const at = (x: number, y: number, turn = 0) => rectangleIn(frameAt({ x, y }, turn), [0, 100], [0, 100]);

  it.each([
    ['side by side', at(150, 0), 50],
    ['corner to corner', at(130, 140), 50],
    ['touching', at(100, 0), 0],
    ['overlapping', at(50, 50), 0],
    ['one in the other', rectangleIn(frameAt({ x: 20, y: 20 }, 0), [0, 10], [0, 10]), 0],
    // Turned by 45° its left corner is the near left corner.
    ['a corner against a side', at(150, 50, -45), 150 - 100 * Math.SQRT1_2 - 100],
  ])('the distance of %s', (_, other, expected) => {
    expect(distanceBetween(square, other)).toBeCloseTo(Math.max(0, expected), 9);
  });

  it.each([
    ['touching', at(100, 0), 0],
    ['by 1 mm', at(99, 0), 1],
    ['by the lesser of two ways', at(60, 90), 10],
    ['one in the other: to the nearest side', rectangleIn(frameAt({ x: 20, y: 30 }, 0), [0, 10], [0, 10]), 30],
  ])('the penetration of outlines %s', (_, other, expected) => {
    expect(penetration(square, other)).toBeCloseTo(expected, 9);
  });

  it('a line that crosses an outline reaches into it; beside it, it has a distance', () => {
    const line = (x: number) => [
      { x, y: -50 },
      { x, y: 150 },
    ];
    expect(penetration(square, line(50))).toBeGreaterThan(0);
    expect(distanceBetween(square, line(50))).toBe(0);
    expect(distanceBetween(square, line(130))).toBe(30);
  });

  it('the shortest way goes from the first outline to the second', () => {
    expect(gapBetween(square, at(20, 130))).toMatchObject({ distance: 30, from: { y: 100 }, to: { y: 130 } });
    expect(gapBetween(square, at(50, 50))).toBeUndefined();
  });

  it('headings turn to the right, and right angles are exact', () => {
    const { right, forward } = frameAt({ x: 0, y: 0 }, 90);
    expect(forward).toEqual({ x: 1, y: 0 });
    expect(right.x).toBe(0);
    expect(right.y).toBe(-1);
    expect(pointIn(frameAt({ x: 10, y: 20 }, 180), 5, 7)).toEqual({ x: 5, y: 13 });
  });

  it('nothing is left of an outline that lies beyond the line', () => {
    expect(clip(square, { x: 1, y: 0 }, 101)).toEqual([]);
    expect(clip(square, { x: 1, y: 0 }, -1)).toEqual([...square]);
  });
});

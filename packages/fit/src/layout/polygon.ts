import type { PlanPoint, Polygon } from '../booth.js';
import { radians, type Degrees, type Millimetres } from '../units.js';

/**
 * A place and a heading on the plan: `right` runs along a desk's near edge from its left end, `forward` away from its
 * operator. Heading 0 faces the stage; positive turns to the right.
 */
export interface Frame {
  readonly origin: PlanPoint;
  readonly right: PlanPoint;
  readonly forward: PlanPoint;
}

export function frameAt(origin: PlanPoint, heading: Degrees): Frame {
  const angle = radians(heading);
  const sin = clean(Math.sin(angle));
  const cos = clean(Math.cos(angle));
  return { origin, right: { x: cos, y: -sin }, forward: { x: sin, y: cos } };
}

/** Right angles stay exact: sin 180° is 0, not 1e-16. */
function clean(value: number): number {
  return Math.abs(value - Math.round(value)) < 1e-12 ? Math.round(value) : value;
}

/** A point of the frame, `along` its near edge and `away` from it. */
export function pointIn(frame: Frame, along: Millimetres, away: Millimetres): PlanPoint {
  return {
    x: frame.origin.x + along * frame.right.x + away * frame.forward.x,
    y: frame.origin.y + along * frame.right.y + away * frame.forward.y,
  };
}

/** A rectangle of the frame, anticlockwise. */
export function rectangleIn(frame: Frame, along: readonly [number, number], away: readonly [number, number]): Polygon {
  return [
    pointIn(frame, along[0], away[0]),
    pointIn(frame, along[1], away[0]),
    pointIn(frame, along[1], away[1]),
    pointIn(frame, along[0], away[1]),
  ];
}

/** A rectangle that stands square to the room. */
export function box(left: Millimetres, right: Millimetres, near: Millimetres, far: Millimetres): Polygon {
  return [
    { x: left, y: near },
    { x: right, y: near },
    { x: right, y: far },
    { x: left, y: far },
  ];
}

/** Farther than any room reaches: for walls and rows that go on past what the plan says. */
export const FAR: Millimetres = 1e6;

/** Smallest distance between two convex outlines; 0 if they touch or overlap. */
export function distanceBetween(a: Polygon, b: Polygon): Millimetres {
  return gapBetween(a, b)?.distance ?? 0;
}

/** The shortest way from one outline to another. */
export interface Gap {
  readonly distance: Millimetres;
  readonly from: PlanPoint;
  readonly to: PlanPoint;
}

/** The shortest way from one convex outline to another; undefined if they overlap. */
export function gapBetween(a: Polygon, b: Polygon): Gap | undefined {
  if (penetration(a, b) > 0) return undefined;
  const gaps = [
    ...edgesOf(a).flatMap(([p, q]) => b.map((point) => ({ from: nearestOn(point, p, q), to: point }))),
    ...edgesOf(b).flatMap(([p, q]) => a.map((point) => ({ from: point, to: nearestOn(point, p, q) }))),
  ].map(({ from, to }) => ({ from, to, distance: Math.hypot(to.x - from.x, to.y - from.y) }));
  return gaps.reduce((least, gap) => (gap.distance < least.distance ? gap : least));
}

/** The least box square to the room that holds something. */
export interface Box {
  readonly left: Millimetres;
  readonly right: Millimetres;
  readonly near: Millimetres;
  readonly far: Millimetres;
}

const boxes = new WeakMap<Polygon, Box>();

export function boxOf(polygon: Polygon): Box {
  const known = boxes.get(polygon);
  if (known) return known;
  const [left, right] = spanAlong(polygon, { x: 1, y: 0 });
  const [near, far] = spanAlong(polygon, { x: 0, y: 1 });
  const made = { left, right, near, far };
  boxes.set(polygon, made);
  return made;
}

/**
 * How far two convex outlines reach into one another, along the direction in which they part most easily
 * (separating axis theorem); 0 if they are apart.
 */
export function penetration(a: Polygon, b: Polygon): Millimetres {
  let least = Infinity;
  for (const axis of [...normalsOf(a), ...normalsOf(b)]) {
    const [aMin, aMax] = spanAlong(a, axis);
    const [bMin, bMax] = spanAlong(b, axis);
    least = Math.min(least, aMax - bMin, bMax - aMin);
    if (least <= 0) return 0;
  }
  return least;
}

/** The part of a convex outline with `normal · point ≥ offset`; empty if none. */
export function clip(polygon: Polygon, normal: PlanPoint, offset: Millimetres): Polygon {
  const kept: PlanPoint[] = [];
  for (const [p, q] of edgesOf(polygon)) {
    const from = dot(p, normal) - offset;
    const to = dot(q, normal) - offset;
    if (from >= 0) kept.push(p);
    if ((from > 0 && to < 0) || (from < 0 && to > 0)) {
      const share = from / (from - to);
      kept.push({ x: p.x + share * (q.x - p.x), y: p.y + share * (q.y - p.y) });
    }
  }
  return kept;
}

export function spanAlong(polygon: Polygon, axis: PlanPoint): [number, number] {
  let min = Infinity;
  let max = -Infinity;
  for (const point of polygon) {
    const along = dot(point, axis);
    min = Math.min(min, along);
    max = Math.max(max, along);
  }
  return [min, max];
}

export function dot(a: PlanPoint, b: PlanPoint): number {
  return a.x * b.x + a.y * b.y;
}

function edgesOf(polygon: Polygon): [PlanPoint, PlanPoint][] {
  return polygon.map((point, index) => [point, polygon[(index + 1) % polygon.length]!]);
}

function normalsOf(polygon: Polygon): PlanPoint[] {
  return edgesOf(polygon)
    .map(([p, q]) => ({ x: q.y - p.y, y: p.x - q.x, length: Math.hypot(q.x - p.x, q.y - p.y) }))
    .filter(({ length }) => length > 0)
    .map(({ x, y, length }) => ({ x: x / length, y: y / length }));
}

function nearestOn(point: PlanPoint, p: PlanPoint, q: PlanPoint): PlanPoint {
  const along = { x: q.x - p.x, y: q.y - p.y };
  const square = dot(along, along);
  const share =
    square === 0 ? 0 : Math.min(1, Math.max(0, dot({ x: point.x - p.x, y: point.y - p.y }, along) / square));
  return { x: p.x + share * along.x, y: p.y + share * along.y };
}

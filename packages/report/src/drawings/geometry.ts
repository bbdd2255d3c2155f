import { degrees, radians } from '@boothwright/fit';
import type { Point } from './drawing.js';

/** A rectangle of the paper, in units, y down. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export function boxesMeet(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

export function isInside(inner: Box, outer: Box): boolean {
  return (
    inner.x >= outer.x &&
    inner.y >= outer.y &&
    inner.x + inner.width <= outer.x + outer.width &&
    inner.y + inner.height <= outer.y + outer.height
  );
}

/** How much of a straight line runs through a box. Labels ask it of every line for every place that they try. */
export function lengthInside(p: Point, q: Point, { x, y, width, height }: Box): number {
  if ((p.x < x && q.x < x) || (p.y < y && q.y < y)) return 0;
  const [right, bottom] = [x + width, y + height];
  if ((p.x > right && q.x > right) || (p.y > bottom && q.y > bottom)) return 0;
  const [across, down] = [q.x - p.x, q.y - p.y];
  let from = 0;
  let to = 1;
  if (across !== 0) {
    const [left, other] = [(x - p.x) / across, (right - p.x) / across];
    from = Math.max(from, Math.min(left, other));
    to = Math.min(to, Math.max(left, other));
  }
  if (down !== 0) {
    const [top, other] = [(y - p.y) / down, (bottom - p.y) / down];
    from = Math.max(from, Math.min(top, other));
    to = Math.min(to, Math.max(top, other));
  }
  return from < to ? (to - from) * distance(p, q) : 0;
}

export function distance(p: Point, q: Point): number {
  return Math.hypot(q.x - p.x, q.y - p.y);
}

export function between(p: Point, q: Point, share: number): Point {
  return { x: p.x + share * (q.x - p.x), y: p.y + share * (q.y - p.y) };
}

/** A drawn arc is off by no more than this from a true one, millimetres in the room. */
const TRUE = 1;

/** Points of an arc; degrees, anticlockwise from the right. Those of a large one stand so near each other that it looks round. */
export function arc(centre: Point, radius: number, from: number, to: number, squash = 1): Point[] {
  const fine = 2 * degrees(Math.acos(Math.max(0, 1 - TRUE / radius)));
  const steps = Math.max(2, Math.ceil(Math.abs(to - from) / Math.min(12, fine)));
  return Array.from({ length: steps + 1 }, (_, step) => {
    const angle = radians(from + ((to - from) * step) / steps);
    return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * squash * Math.sin(angle) };
  });
}

/** The outline of a limb: round at both ends, tapering from one to the other. */
export function limb(a: Point, b: Point, atA: number, atB: number): Point[] {
  const length = distance(a, b);
  const heading = degrees(Math.atan2(b.y - a.y, b.x - a.x));
  const lean = length > 0 ? degrees(Math.asin(Math.max(-1, Math.min(1, (atA - atB) / length)))) : 0;
  const open = 90 - lean;
  return [...arc(b, atB, heading - open, heading + open), ...arc(a, atA, heading + open, heading + 360 - open)];
}

/** An ellipse, its first axis turned from the right, anticlockwise. */
export function ellipse(centre: Point, along: number, across: number, turn = 0): Point[] {
  const cos = Math.cos(radians(turn));
  const sin = Math.sin(radians(turn));
  return arc({ x: 0, y: 0 }, 1, 0, 348).map(({ x, y }) => ({
    x: centre.x + x * along * cos - y * across * sin,
    y: centre.y + x * along * sin + y * across * cos,
  }));
}

export function rectangle(left: number, bottom: number, right: number, top: number): Point[] {
  return [
    { x: left, y: bottom },
    { x: right, y: bottom },
    { x: right, y: top },
    { x: left, y: top },
  ];
}

export interface Extent {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

export function extentOf(points: readonly Point[]): Extent | undefined {
  if (points.length === 0) return undefined;
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

export function grown({ left, right, bottom, top }: Extent, by: number): Extent {
  return { left: left - by, right: right + by, bottom: bottom - by, top: top + by };
}

/** The two ends of a straight line. */
export function stroke(x1: number, y1: number, x2: number, y2: number): Point[] {
  return [
    { x: x1, y: y1 },
    { x: x2, y: y2 },
  ];
}

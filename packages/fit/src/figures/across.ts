import type { Polygon } from '../booth.js';
import { dot, gapBetween, spanAlong } from '../layout/polygon.js';
import type { Millimetres } from '../units.js';
import type { Segment } from './figures.js';

/**
 * The shortest way from one convex outline to another, in the middle of where they are so near; `clear` long, if something takes the rest.
 * Undefined if they touch.
 */
export function wayAcross(a: Polygon, b: Polygon, clear: Millimetres): Segment | undefined {
  const gap = gapBetween(a, b);
  if (!gap || gap.distance < 1e-9) return undefined;
  const along = { x: -(gap.to.y - gap.from.y) / gap.distance, y: (gap.to.x - gap.from.x) / gap.distance };
  const toward = { x: along.y, y: -along.x };
  const [aLow, aHigh] = spanAlong(edgeAt(a, toward, dot(gap.from, toward)), along);
  const [bLow, bHigh] = spanAlong(edgeAt(b, toward, dot(gap.to, toward)), along);
  const [low, high] = [Math.max(aLow, bLow), Math.min(aHigh, bHigh)];
  const shift = low < high ? (low + high) / 2 - dot(gap.from, along) : 0;
  const from = { x: gap.from.x + shift * along.x, y: gap.from.y + shift * along.y };
  return [from, { x: from.x + clear * toward.x, y: from.y + clear * toward.y }];
}

/** The corners of an outline that lie as far along an axis as the gap does. */
function edgeAt(outline: Polygon, axis: { x: number; y: number }, at: number): Polygon {
  return outline.filter((point) => Math.abs(dot(point, axis) - at) < 1e-6);
}

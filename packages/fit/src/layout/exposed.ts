import type { PlanPoint, Polygon } from '../booth.js';
import type { Millimetres } from '../units.js';
import { clip, dot, spanAlong } from './polygon.js';

/** Pieces this near to one another hide the edge between them. */
const CLOSE: Millimetres = 25;

/**
 * How much of an edge can be seen, that is, is not hidden by pieces that stand against it. The edge runs from `p` to `q`
 * anticlockwise round its piece, so that the outside is on its right.
 */
export function exposedLength([p, q]: readonly [PlanPoint, PlanPoint], neighbours: readonly Polygon[]): Millimetres {
  const length = Math.hypot(q.x - p.x, q.y - p.y);
  if (length === 0) return 0;
  const along = { x: (q.x - p.x) / length, y: (q.y - p.y) / length };
  const outward = { x: along.y, y: -along.x };
  const hidden = neighbours
    .map((outline) => clip(clip(outline, outward, dot(p, outward) - 1), opposite(outward), -dot(p, outward) - CLOSE))
    .filter((part) => part.length >= 3 && reachesOut(part, outward, dot(p, outward)))
    .map(
      (part) =>
        spanAlong(part, along).map((at) => Math.min(length, Math.max(0, at - dot(p, along)))) as [number, number],
    );
  return length - covered(hidden);
}

/** A piece that only touches the edge from within hides nothing. */
function reachesOut(part: Polygon, outward: PlanPoint, edge: Millimetres): boolean {
  return spanAlong(part, outward)[1] > edge + 1e-6;
}

function covered(stretches: readonly (readonly [number, number])[]): Millimetres {
  let total = 0;
  let end = -Infinity;
  for (const [from, to] of [...stretches].sort((a, b) => a[0] - b[0])) {
    total += Math.max(0, to - Math.max(from, end));
    end = Math.max(end, to);
  }
  return total;
}

function opposite({ x, y }: PlanPoint): PlanPoint {
  return { x: -x, y: -y };
}

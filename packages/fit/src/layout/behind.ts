import type { PlacedPiece, Related } from '../assessment.js';
import type { Booth, Desk } from '../booth.js';
import type { Millimetres } from '../units.js';
import { placedDesk, type Layout } from './layout.js';
import { piecesNear } from './nearby.js';
import { clip, dot, pointIn, spanAlong, type Box, type Frame } from './polygon.js';
import { say } from '../words/say.js';

/** The first thing behind a desk's near edge. */
export interface Behind {
  readonly distance: Millimetres;
  /** 'the back wall', or a piece's name. */
  readonly what: string;
  readonly piece?: PlacedPiece;
}

/** A piece this near to an edge butts against it, as the arm of an L does. */
const BUTTING: Millimetres = 25;
/** It leaves room behind the rest of the edge if a person has a place there: 24 in (Panero & Zelnik 1979, 3.4). */
const PLACE: Millimetres = 24 * 25.4;

/** What stands behind a desk, anywhere along its near edge; undefined if the plan does not say. */
export function behindDesk(layout: Layout, desk: Desk): Behind | undefined {
  const placed = placedDesk(layout, desk);
  return placed && behindEdge(layout, placed.frame, placed.width, new Set([desk.name]));
}

/** The other end of what is said of the room behind a desk: the piece that stands there, or the room of that wall. */
export function behindIt({ booth }: { readonly booth: Booth }, { piece, what }: Behind): readonly Related[] {
  if (piece) return [{ origin: piece.origin, message: say`${what} stands behind it` }];
  return booth.room ? [{ origin: booth.room.origin, message: what }] : [];
}

/**
 * The first wall or piece behind an edge that starts at the frame's origin and runs to its right; undefined if nothing is known
 * there. `skip` names the pieces that do not count.
 */
export function behindEdge(
  layout: Layout,
  frame: Frame,
  width: Millimetres,
  skip: ReadonlySet<string>,
): Behind | undefined {
  const candidates = [...wallsBehind(layout, frame, width), ...piecesBehind(layout, frame, width, skip)];
  return candidates.reduce<Behind | undefined>(
    (nearest, one) => (nearest && nearest.distance <= one.distance ? nearest : one),
    undefined,
  );
}

function wallsBehind(layout: Layout, frame: Frame, width: Millimetres): Behind[] {
  const back = { x: -frame.forward.x, y: -frame.forward.y };
  const { right, stage } = layout.walls;
  const walls = [
    { what: say`the back wall`, toward: -back.y, gap: (y: number) => y, axis: 'y' },
    { what: say`the left wall`, toward: -back.x, gap: (x: number) => x, axis: 'x' },
    ...(right === undefined
      ? []
      : [{ what: say`the right wall`, toward: back.x, gap: (x: number) => right - x, axis: 'x' }]),
    ...(stage === undefined
      ? []
      : [{ what: say`the stage wall`, toward: back.y, gap: (y: number) => stage - y, axis: 'y' }]),
  ];
  return walls.flatMap(({ what, toward, gap, axis }) => {
    if (toward < 1e-9) return [];
    const ends = [pointIn(frame, 0, 0), pointIn(frame, width, 0)];
    const distances = ends.map((point) => gap(axis === 'x' ? point.x : point.y) / toward);
    return [{ what, distance: Math.min(...distances) }];
  });
}

function piecesBehind(layout: Layout, frame: Frame, width: Millimetres, skip: ReadonlySet<string>): Behind[] {
  const back = { x: -frame.forward.x, y: -frame.forward.y };
  const left = dot(frame.origin, frame.right);
  return piecesNear(layout.pieces, stripBehind(frame, width))
    .filter((piece) => !skip.has(piece.name) && piece.kind !== 'platform')
    .flatMap((piece) => {
      const beside = clip(clip(piece.outline, frame.right, left + 1), negative(frame.right), -(left + width - 1));
      const behind = clip(beside, back, dot(frame.origin, back) + 1);
      if (behind.length < 3) return [];
      const gap = spanAlong(behind, back)[0] - dot(frame.origin, back);
      const [from, to] = spanAlong(behind, frame.right);
      if (gap < BUTTING && width - (to - from) >= PLACE) return [];
      return [{ what: piece.name, distance: gap < 1 + 1e-6 ? 0 : gap, piece }];
    });
}

/** Holds all the floor behind an edge. */
function stripBehind(frame: Frame, width: Millimetres): Box {
  const [start, end] = [pointIn(frame, 0, 0), pointIn(frame, width, 0)];
  const { x, y } = frame.forward;
  return {
    left: x > 0 ? -Infinity : Math.min(start.x, end.x),
    right: x < 0 ? Infinity : Math.max(start.x, end.x),
    near: y > 0 ? -Infinity : Math.min(start.y, end.y),
    far: y < 0 ? Infinity : Math.max(start.y, end.y),
  };
}

function negative(point: { x: number; y: number }) {
  return { x: -point.x, y: -point.y };
}

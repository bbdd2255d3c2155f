import { degrees, radians, type Assessment, type PlacedPiece, type PlaceSketch, type Segment } from '@boothwright/fit';
import type { Board } from './board.js';
import type { Point, Shape } from './drawing.js';
import { arc, between, distance, ellipse } from './geometry.js';
import { area, disc, line } from './shapes.js';
import { troubleWith } from './verdicts.js';

/** Walls as one thick outline. */
export function drawWalls(board: Board, { layout, sketch }: Assessment): void {
  const { room } = layout;
  if (!room) return;
  const corners = [
    { x: 0, y: 0 },
    { x: room.width, y: 0 },
    { x: room.width, y: room.depth },
    { x: 0, y: room.depth },
  ];
  board.add('wall', undefined, [area(corners, 'thick')]);
  board.labels.avoid(
    corners.map((corner) => board.onPaper(corner)),
    true,
  );
  for (const { name, opening, hinge, leaf } of sketch!.plan.doors) {
    const closed = distance(opening[0], hinge) < 1 ? opening[1] : opening[0];
    board.add('door', name, [
      line(opening, 'gap'),
      line([hinge, leaf], 'medium'),
      line(quarter(hinge, closed, leaf), 'hair'),
    ]);
    board.labels.avoid([board.onPaper(hinge), board.onPaper(leaf)]);
  }
}

/** From the closed leaf's end to the open one's. */
function quarter(hinge: Point, closed: Point, open: Point): Point[] {
  const angle = ({ x, y }: Point) => degrees(Math.atan2(y - hinge.y, x - hinge.x));
  const from = angle(closed);
  const turn = ((angle(open) - from + 540) % 360) - 180;
  return arc(hinge, distance(hinge, closed), from, from + turn);
}

/** Desks, racks, columns and platforms; what stands under a desk is dashed. */
export function drawPieces(board: Board, assessment: Assessment): void {
  const under = new Set(assessment.booth.racks.filter((rack) => rack.under).map(({ name }) => name));
  const order: readonly PlacedPiece['kind'][] = ['platform', 'desk', 'rack', 'column'];
  for (const kind of order) {
    for (const piece of assessment.layout.pieces.filter((one) => one.kind === kind)) {
      const trouble = troubleWith(assessment, { kind, subject: piece.name });
      board.add(kind, piece.name, pieceShapes(piece, under.has(piece.name)), trouble);
      board.labels.avoid(
        piece.outline.map((corner) => board.onPaper(corner)),
        true,
      );
    }
  }
}

function pieceShapes({ kind, outline }: PlacedPiece, isUnder: boolean): Shape[] {
  switch (kind) {
    case 'platform':
      return [area(outline, 'thin', 'soft', 'chain')];
    case 'column':
      return [area(outline, 'thin', 'fill-solid')];
    case 'rack':
      return [area(outline, 'thin', ...(isUnder ? (['dashed'] as const) : (['fill-wash'] as const)))];
    default:
      return [area(outline, 'medium', 'fill-wash')];
  }
}

const HEAD = 82;
const NOSE = 26;

/** A person from above at their place: seat, trunk, head, and which way they look. */
export function personFromAbove({ at, trunk, seat, facing }: PlaceSketch): Shape[] {
  if (!trunk) return [];
  const way = headingOf(facing);
  const turn = -facing;
  const head = between(trunk.at, at, 0.62);
  const tip = (by: number, aside: number) => ({
    x: head.x + by * way.x + aside * way.y,
    y: head.y + by * way.y - aside * way.x,
  });
  return [
    ...(seat?.base ? [disc(seat.at, seat.base / 2, 'thin', 'dashed', 'soft')] : []),
    area(ellipse(trunk.at, trunk.breadth / 2, trunk.depth / 2, turn), 'thin', 'fill-body'),
    area([tip(HEAD - 8, -24), tip(HEAD + NOSE, 0), tip(HEAD - 8, 24)], 'thin', 'fill-paper'),
    disc(head, HEAD, 'medium', 'fill-paper'),
  ];
}

/** The unit vector of a heading that is turned from the stage to the right. */
export function headingOf(facing: number): Point {
  const angle = radians(facing);
  return { x: Math.sin(angle), y: Math.cos(angle) };
}

/** A cloth beside the edge that it hangs on, away from the desks. */
export function clothBeside([p, q]: Segment, inside: Point, by: number): Point[] {
  const length = distance(p, q) || 1;
  const aside = { x: -(q.y - p.y) / length, y: (q.x - p.x) / length };
  const sign = (inside.x - p.x) * aside.x + (inside.y - p.y) * aside.y > 0 ? -1 : 1;
  return [p, q].map(({ x, y }) => ({ x: x + sign * by * aside.x, y: y + sign * by * aside.y }));
}

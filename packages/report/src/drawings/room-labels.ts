import type { Assessment } from '@boothwright/fit';
import type { Board } from './board.js';
import { spotsAlong } from './dimension.js';
import type { Point } from './drawing.js';
import { between, extentOf } from './geometry.js';
import { spotsAround, type Spot } from './labels.js';
import { nameLabel } from './plan-words.js';

/** The names of what a room holds. */
export function labelRoom(board: Board, assessment: Assessment): void {
  labelBooth(board, assessment);
  labelHall(board, assessment);
  labelNamed(board, assessment);
}

function labelBooth(board: Board, { layout }: Assessment): void {
  const desks = extentOf(layout.pieces.filter(({ kind }) => kind === 'desk').flatMap(({ outline }) => outline));
  if (!desks) return;
  const upper = board.onPaper({ x: (desks.left + desks.right) / 2, y: desks.top });
  const spots: Spot[] = [
    { x: upper.x, y: upper.y - 4, anchor: 'middle', hang: 'above', cost: 0 },
    ...spotsAround(upper, 8),
  ];
  board.label({ kind: 'booth', label: { lines: ['booth'], strong: true }, spots, priority: 2 });
}

function labelHall(board: Board, assessment: Assessment): void {
  const { layout, sketch } = assessment;
  const { stage, rows, balcony } = sketch!.plan;
  if (stage)
    board.label({ kind: 'stage', label: { lines: ['stage'] }, spots: inside(board, stage.outline), priority: 1 });
  if (layout.room) {
    const wall = board.onPaper({ x: layout.room.width / 2, y: 0 });
    const spots = [0, -60, 60, -110, 110].flatMap((shift): Spot[] => [
      { x: wall.x + shift, y: wall.y + 5, anchor: 'middle', hang: 'below', cost: Math.abs(shift) / 10 },
    ]);
    board.label({ kind: 'wall', label: { lines: ['back wall'], soft: true }, spots });
  }
  if (rows.length > 0) {
    const words = rowWords(assessment);
    board.label({ kind: 'row', label: { lines: [words], soft: true }, spots: betweenRows(board, rows) });
  }
  if (balcony) {
    const spots = spotsAlong(board.onPaper(balcony[0]), board.onPaper(balcony[1]));
    board.label({ kind: 'balcony', label: { lines: ['balcony above'], soft: true }, spots });
  }
}

function rowWords({ booth, sketch }: Assessment): string {
  const { rows, pitch, standing } = booth.room!.seating!;
  const stands = standing ? ', stand at times' : '';
  return rows && pitch ? `${sketch!.plan.rows.length} rows${stands}` : `nearest row${stands}`;
}

/** In the free strip between two rows in the middle, or beside the only one. */
function betweenRows(board: Board, rows: readonly (readonly [Point, Point])[]): Spot[] {
  const [p, q] = rows[Math.floor((rows.length - 1) / 2)]!;
  const [r, s] = rows[Math.floor((rows.length - 1) / 2) + 1] ?? [p, q];
  const strip = [0.5, 0.3, 0.7, 0.18, 0.82].map((along): Spot => {
    const place = board.onPaper(between(between(p, q, along), between(r, s, along), 0.5));
    return { ...place, anchor: 'middle', hang: 'middle', cost: rows.length > 1 ? 0 : 60 };
  });
  const [last] = rows.slice(-1);
  const beyond = board.onPaper(between(...last!, 0.5));
  return [
    ...strip,
    { x: beyond.x, y: beyond.y - 4, anchor: 'middle', hang: 'above', cost: 6 },
    ...spotsAlong(board.onPaper(p), board.onPaper(q)),
  ];
}

function labelNamed(board: Board, assessment: Assessment): void {
  const { layout, sketch } = assessment;
  const { doors, wheelchairSpaces, watchers, walkways } = sketch!.plan;
  for (const { name, opening } of doors) {
    const at = board.onPaper(between(opening[0], opening[1], 0.5));
    const label = nameLabel(assessment, `door ${name}`, { subject: name }, { soft: true });
    board.label({ kind: 'door', name, label, spots: spotsAround(at, 8) });
  }
  for (const { name, outline } of wheelchairSpaces) {
    const label = nameLabel(assessment, name, { kind: 'wheelchair-space', subject: name });
    board.label({ kind: 'wheelchair-space', name, label, spots: inside(board, outline), priority: 1 });
  }
  for (const { name, at } of watchers) {
    const label = nameLabel(assessment, name, { subject: name });
    board.label({ kind: 'watchers', name, label, spots: spotsAround(board.onPaper(at), 7) });
  }
  for (const { name, kind, outline } of layout.pieces) {
    if (kind !== 'column' && kind !== 'platform') continue;
    const label = nameLabel(assessment, name, { kind, subject: name }, { soft: true });
    board.label({ kind, name, label, spots: spotsAround(board.onPaper(between(outline[0]!, outline[2]!, 0.5)), 8) });
  }
  for (const { name, across } of walkways) {
    const [p, q] = across.map((end) => board.onPaper(end)) as [Point, Point];
    const label = nameLabel(assessment, name, { kind: 'walkway', subject: name });
    const spots = [...spotsAlong(p, q), ...spotsAround(between(p, q, 0.5), 14, 9)];
    board.label({ kind: 'walkway', name, label, spots, priority: 1, from: between(p, q, 0.5) });
  }
}

function inside(board: Board, outline: readonly Point[]): Spot[] {
  const middle = board.onPaper(between(outline[0]!, outline[2]!, 0.5));
  return [{ ...middle, anchor: 'middle', hang: 'middle', cost: 0 }, ...spotsAround(middle, 14)];
}

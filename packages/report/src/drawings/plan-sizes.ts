import type { Assessment } from '@boothwright/fit';
import type { Units } from '../words.js';
import type { Board } from './board.js';
import { drawDimension } from './dimension.js';
import type { Fact, Point } from './drawing.js';
import { between, distance } from './geometry.js';

/** From a desk's far edge to the line that measures it, units of the paper. */
const BEYOND = 15;
/** How far along a desk, and along the floor behind it, the lines across them stand. */
const ALONG = { desk: 0.08, floor: 0.95 } as const;

/** Names come first. */
const PRIORITY = -1;
/** Of a smaller thing, units of the paper, the sizes stand in the list of figures alone. */
const SMALLEST = { across: 110, deep: 32 } as const;

/** How wide and deep each desk is, and how deep the floor that people on seats take. */
export function drawSizes(board: Board, { layout }: Assessment, { length }: Units): void {
  for (const { name, outline } of desksOf(layout)) {
    const [a, b, c, d] = outline as [Point, Point, Point, Point];
    if (!isLarge(board, a, b, d)) continue;
    const away = (BEYOND * board.sheet.scale) / (distance(a, d) || 1);
    const beyond = (near: Point, far: Point) => between(near, far, 1 + away);
    drawDimension(board, {
      kind: 'desk-width',
      name,
      from: beyond(a, d),
      to: beyond(b, c),
      priority: PRIORITY,
      label: { lines: [length(distance(c, d))] },
    });
    drawDimension(board, {
      kind: 'desk-depth',
      name,
      from: between(a, b, ALONG.desk),
      to: between(d, c, ALONG.desk),
      priority: PRIORITY,
      label: { lines: [length(distance(a, d))] },
    });
  }
  for (const { workstation, outline } of layout.occupied) {
    const [a, b, c, d] = outline as unknown as [Point, Point, Point, Point];
    if (!isLarge(board, a, b, d)) continue;
    drawDimension(board, {
      kind: 'occupied-depth',
      name: workstation,
      from: between(a, b, ALONG.floor),
      to: between(d, c, ALONG.floor),
      priority: PRIORITY,
      label: { lines: [length(distance(a, d))], soft: true },
    });
  }
}

export function sizeFacts({ layout }: Assessment, { length }: Units): readonly Fact[] {
  return [
    ...desksOf(layout).map(({ name, outline: [a, b, , d] }) => ({
      what: `Desk ${name}`,
      value: `${length(distance(a!, b!))} wide, ${length(distance(a!, d!))} deep`,
    })),
    ...layout.occupied.map(({ workstation, outline: [a, , , d] }) => ({
      what: `Occupied seats at ${workstation}`,
      value: `${length(distance(a!, d!))} deep`,
    })),
  ];
}

function isLarge({ sheet }: Board, corner: Point, across: Point, deep: Point): boolean {
  return (
    distance(corner, across) / sheet.scale >= SMALLEST.across && distance(corner, deep) / sheet.scale >= SMALLEST.deep
  );
}

function desksOf({ pieces }: Assessment['layout']) {
  return pieces.filter(({ kind, outline }) => kind === 'desk' && outline.length === 4);
}

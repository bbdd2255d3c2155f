import { radians, type Assessment, type SideSketch, type Spread } from '@boothwright/fit';
import { postureWord, type Units } from '../words.js';
import { Board } from './board.js';
import { drawScaleBar } from './dimension.js';
import { LINE_HEIGHT, type Drawing, type Fact } from './drawing.js';
import { arc, rectangle, stroke, type Extent } from './geometry.js';
import { labelSize, spread, type Label } from './labels.js';
import { personShapes, point } from './person.js';
import { area, disc, line } from './shapes.js';
import { controlShape, deskDepth, deskShapes, ringShapes, screenShapes, seatShapes } from './side-furniture.js';
import { kneeRoomHeight, notesOf, sightOf, type Note } from './side-words.js';
import { shortened, wrapped } from './text-width.js';
import { drawingUnits } from './units.js';

const WIDTH = 400;
const MARGIN = 4;
/** From a column of texts to the line or figure beside it. */
const GUTTER = 12;
const FOOT = 26;
const BETWEEN_NOTES = 6;
/** Of the column of notes. */
const NOTES_WIDTH = 112;
/** Narrower than this, millimetres, a spread is no news. */
const NARROW = 5;
/** Lengths from the eye at which the level and the angle from it are drawn, and of an arrow's barb, millimetres. */
const LEVEL = 270;
const ANGLE = 200;
const BARB = 45;

/** One person at one workstation in one posture. */
export function sideView(assessment: Assessment, side: SideSketch): Drawing {
  const units = drawingUnits(assessment.booth.show);
  const extent = extentOf(side);
  const rise = sightOf(assessment, side)?.rise;
  const notes = notesOf(assessment, side, units, extent.right);
  const levels = levelsOf(side, units);
  const board = boardFor(
    extent,
    levels.map(({ label }) => label),
    notes.map(labelOf),
  );

  drawGround(board, extent);
  drawStaff(board, levels, extent);
  drawKneeRoom(board, side);
  drawFurniture(board, side);
  board.add('person', side.who, personShapes(side.body));
  drawLooks(board, side);
  drawStageLine(board, side, rise, extent);
  drawThighRoom(board, side);
  drawNotes(board, notes);
  drawScaleBar(
    board,
    assessment.booth.show,
    { x: board.onPaper({ x: extent.left, y: 0 }).x + 8, y: board.sheet.height - 10 },
    90,
  );

  return {
    kind: 'side',
    title: sideTitle(side),
    description: describe(side, units, notes),
    ...board.finished(),
    facts: factsOf(side, units, notes),
  };
}

/** 'Noor, sitting at Sound'. */
export function sideTitle({ who, posture, workstation }: SideSketch): string {
  return `${who}, ${postureWord(posture)} at ${workstation}`;
}

function extentOf({ body, desk, seat, screens, skirts }: SideSketch): Extent {
  const back = Math.min(body.hip.x - body.trunk / 2, body.heel.x);
  const base = seat ? Math.min(seat.pan.from - 60, (seat.pan.from + seat.pan.to - (seat.base ?? 450)) / 2) : back;
  return {
    left: Math.min(back, base, body.crown.x - 95) - 30,
    right:
      Math.max(
        deskDepth(desk),
        body.hand.x,
        ...screens.map(({ top, bottom }) => Math.max(top.x, bottom.x)),
        ...skirts.map(({ x }) => x),
      ) + 60,
    bottom: 0,
    top: Math.max(body.crown.z, ...screens.map(({ top, reach }) => reach?.max ?? top.z)) + 60,
  };
}

function boardFor(extent: Extent, levels: readonly Label[], notes: readonly Label[]): Board {
  const left = Math.max(...levels.map((label) => labelSize(label).width)) + MARGIN + GUTTER + 4;
  const right = Math.max(...notes.map((label) => labelSize(label).width)) + MARGIN + GUTTER;
  const scale = (extent.right - extent.left) / (WIDTH - left - right);
  const tall = notes.reduce((sum, label) => sum + labelSize(label).height + BETWEEN_NOTES, 0);
  const height = Math.max((extent.top - extent.bottom) / scale, tall) + FOOT;
  return new Board({ left: extent.left - left * scale, top: (height - FOOT) * scale, scale, width: WIDTH, height });
}

function drawGround(board: Board, { left, right }: Extent): void {
  board.add('floor', undefined, [line(stroke(left, 0, right, 0), 'thick')]);
}

function drawFurniture(board: Board, side: SideSketch): void {
  const { desk, seat } = side;
  if (seat) board.add('seat', seat.name, [...seatShapes(seat), ...ringShapes(side)]);
  board.add('desk', desk.name, deskShapes(desk));
  for (const { name, x, top, hem } of side.skirts) {
    board.add('skirt', name, [
      line(
        [
          { x, y: top },
          { x: x + 12, y: top },
          { x: x + 12, y: hem },
        ],
        'medium',
        'chain',
      ),
    ]);
  }
  for (const control of side.controls) board.add('control', control.name, [controlShape(control, side)]);
  for (const screen of side.screens) board.add('monitor', screen.name, screenShapes(screen));
}

/** From the eye to the middle of every screen, with the angle from the level. */
function drawLooks(board: Board, { body, screens }: SideSketch): void {
  const from = point(body.eye);
  for (const { name, centre, gaze } of screens) {
    const level =
      Math.abs(gaze) < 3
        ? []
        : [
            line([from, { x: from.x + LEVEL, y: from.y }], 'hair', 'dashed', 'soft'),
            line(arc(from, ANGLE, 0, gaze), 'thin'),
          ];
    board.add('gaze', name, [
      ...level,
      line([from, point(centre)], 'thin'),
      disc(point(centre), 9, 'fill-solid', 'no-line'),
    ]);
  }
  board.add('eye', undefined, [disc(from, 12, 'fill-solid', 'no-line')]);
}

/** The line to the lowest that is seen of the stage, as steep as it is. */
function drawStageLine(board: Board, { body }: SideSketch, rise: number | undefined, { right, top }: Extent): void {
  if (rise === undefined) return;
  const from = point(body.eye);
  const slope = Math.tan(radians(rise));
  const length = Math.min(right - from.x, slope > 0 ? (top - from.y) / slope : Infinity);
  const to = { x: from.x + length, y: from.y + length * slope };
  const barbs = [150, 210].map((turn) => {
    const angle = radians(rise + turn);
    return { x: to.x + BARB * Math.cos(angle), y: to.y + BARB * Math.sin(angle) };
  });
  board.add('sight', undefined, [line([from, to], 'thin', 'dashed'), line([barbs[0]!, to, barbs[1]!], 'thin')]);
}

function drawThighRoom(board: Board, { thighRoom }: SideSketch): void {
  if (!thighRoom) return;
  const { x, thigh, underside, least } = thighRoom;
  const from = least?.seat ?? thigh;
  board.add('thigh-room', undefined, [
    line(stroke(x, from, x, underside), 'medium'),
    ...[from, underside].map((y) => line(stroke(x - 25, y, x + 25, y), 'thin')),
  ]);
}

/** From the near edge as far as knees may go; drawn behind whoever sits there. */
function drawKneeRoom(board: Board, { kneeRoom, body }: SideSketch): void {
  if (!kneeRoom) return;
  const y = kneeRoomHeight(body);
  board.add('knee-room', undefined, [
    line(stroke(0, y, kneeRoom.deep, y), 'hair'),
    ...[0, kneeRoom.deep].map((x) => line(stroke(x, y - 25, x, y + 25), 'thin')),
  ]);
}

interface Level {
  readonly kind: string;
  readonly label: Label;
  readonly height: number;
  /** Where the thing itself is. */
  readonly x: number;
  readonly spread?: Spread;
}

function levelsOf({ body, eye, elbow, desk, seat }: SideSketch, { length }: Units): readonly Level[] {
  const level = (kind: string, height: number, x: number, bar?: Spread): Level => ({
    kind,
    label: { lines: [kind, length(height)] },
    height,
    x,
    ...(bar && { spread: bar }),
  });
  return [
    level('eye', eye.height, body.crown.x - 95, eye),
    level('elbow', elbow.height, body.elbow.x - 60, elbow),
    level('desk', desk.height, 0),
    ...(seat ? [level('seat', seat.height, seat.pan.from)] : []),
    ...(seat?.ring !== undefined ? [level('ring', seat.ring, (seat.pan.from + seat.pan.to) / 2 - 190)] : []),
  ];
}

/** A staff at the left with every height above the floor, and a bar where eye and elbow of nine in ten lie. */
function drawStaff(board: Board, levels: readonly Level[], extent: Extent): void {
  const x = board.onPaper({ x: extent.left, y: 0 }).x - 4;
  const top = Math.max(...levels.map(({ height, spread: bar }) => Math.max(height, bar?.high ?? 0)));
  const at = (y: number) => ({ x: board.inWorld({ x, y: 0 }).x, y });
  board.add('staff', undefined, [line([at(0), at(top)], 'thin')]);
  const tops = spread(
    levels.map(({ height, label }) => ({
      middle: board.onPaper({ x: 0, y: height }).y,
      height: labelSize(label).height + 2,
    })),
    MARGIN,
    board.sheet.height - FOOT,
  );
  levels.forEach(({ kind, label, height, x: end, spread: bar }, index) => {
    const middle = tops[index]! + labelSize(label).height / 2;
    const half = 2.5 * board.sheet.scale;
    const bars =
      bar && bar.high - bar.low >= NARROW
        ? [area(rectangle(at(0).x - half, bar.low, at(0).x + half, bar.high), 'thin', 'fill-paper')]
        : [];
    board.add(`${kind}-level`, undefined, [
      ...bars,
      line([at(height), { x: end, y: height }], 'hair', 'soft'),
      line([board.inWorld({ x: x - GUTTER + 3, y: middle }), at(height)], 'hair', 'soft'),
      disc(at(height), 1.6 * board.sheet.scale, 'fill-solid', 'no-line'),
    ]);
    const { width, height: tall } = labelSize(label);
    const box = { x: x - GUTTER - width, y: tops[index]!, width, height: tall };
    board.write(`${kind}-level`, undefined, { ...label, box, anchor: 'end' });
  });
}

function labelOf({ title, lines, verdict }: Note): Label {
  const heading = shortened(title, NOTES_WIDTH, true);
  const rest = lines.flatMap((text) => wrapped(text, NOTES_WIDTH));
  return { lines: [heading, ...rest], strong: true, ...(verdict && { mark: verdict }) };
}

function drawNotes(board: Board, notes: readonly Note[]): void {
  const labels = notes.map(labelOf);
  const sizes = labels.map(labelSize);
  const x = board.sheet.width - MARGIN - Math.max(...sizes.map(({ width }) => width));
  const tops = spread(
    notes.map(({ at }, index) => ({
      middle: board.onPaper(point(at)).y,
      height: sizes[index]!.height + BETWEEN_NOTES,
    })),
    MARGIN,
    board.sheet.height - MARGIN,
  );
  notes.forEach(({ kind, name, at }, index) => {
    const box = { x, y: tops[index]!, ...sizes[index]! };
    board.add(`${kind}-leader`, name, [
      line([point(at), board.inWorld({ x: x - 4, y: box.y + LINE_HEIGHT / 2 })], 'hair', 'soft'),
    ]);
    board.write(kind, name, { ...labels[index]!, box, anchor: 'start' });
  });
}

function factsOf({ eye, elbow, desk, seat }: SideSketch, units: Units, notes: readonly Note[]): readonly Fact[] {
  const heights: [string, string][] = [
    ['Eye above the floor', withSpread(eye, units)],
    ['Elbow above the floor', withSpread(elbow, units)],
    ['Desk above the floor', withRange(desk, units)],
    ...(seat ? ([['Seat above the floor', withRange(seat, units)]] as [string, string][]) : []),
    ...(seat?.ring !== undefined
      ? ([['Foot ring above the floor', units.length(seat.ring)]] as [string, string][])
      : []),
  ];
  return [
    ...heights.map(([what, value]) => ({ what, value })),
    ...notes.map(({ title, lines, verdict }) => ({
      what: title,
      value: lines.join(', '),
      ...(verdict && { verdict }),
    })),
  ];
}

function withSpread({ height, low, high }: Spread, { length }: Units): string {
  return high - low < NARROW ? length(height) : `${length(height)}, nine in ten from ${length(low)} to ${length(high)}`;
}

function withRange({ height, range }: { height: number; range: { min: number; max: number } }, units: Units): string {
  return range.max > range.min ? `${units.length(height)}, of ${units.range(range)}` : units.length(height);
}

function describe(side: SideSketch, { length }: Units, notes: readonly Note[]): string {
  const average = side.kind === 'crowd' ? `The average of ${side.who}` : side.who;
  const does = side.posture === 'sit' ? 'sits' : 'stands';
  const seat = side.seat ? ` on ${side.seat.name}, set to ${length(side.seat.height)}` : '';
  const told = notes.map(({ title, lines }) => `${title}: ${lines.join(', ')}.`).join(' ');
  return `${average} ${does} at the desk ${side.desk.name}${seat}, seen from the side. ${told}`;
}

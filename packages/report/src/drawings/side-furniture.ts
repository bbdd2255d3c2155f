import type { DeskProfile, SeatProfile, SideScreen, SideSketch } from '@boothwright/fit';
import type { Look, Shape } from './drawing.js';
import { rectangle, stroke } from './geometry.js';
import { area, line } from './shapes.js';

/** How thick things are drawn of which the file gives no thickness, millimetres. */
const SEAT = 45;
const POLE = 26;
const FOOT_OF_POLE = 22;
const RING = 18;
const USUAL_DEPTH = 700;
const USUAL_BASE = 450;

export function deskDepth({ depth }: DeskProfile): number {
  return depth ?? USUAL_DEPTH;
}

/** Top, what hangs under it, legs and closed front; an adjustable one with its highest and lowest place. */
export function deskShapes(desk: DeskProfile): readonly Shape[] {
  const { height, top, range, legs, front, hanging } = desk;
  const depth = deskDepth(desk);
  const under = height - top;
  const ends = range.max > range.min ? [range.min, range.max] : [];
  return [
    ...ends.map((end) => line(stroke(0, end, depth, end), 'hair', 'dashed')),
    ...(legs && legs.to > legs.from
      ? [legs.from, legs.to - legs.thickness].map((x) =>
          area(rectangle(x, 0, x + legs.thickness, under), 'thin', 'soft'),
        )
      : [line(stroke(depth - 40, 0, depth - 40, under), 'thin', 'soft')]),
    ...(front ? [line(stroke(10, under, 10, front.toeHeight), 'medium')] : []),
    ...hanging.map(({ from, to, drop }) => area(rectangle(from, under - drop, to, under), 'thin', 'fill-wash')),
    area(rectangle(0, under, depth, height), 'medium', 'fill-wash'),
  ];
}

export function controlShape({ from, to, height }: SideSketch['controls'][number], { desk }: SideSketch): Shape {
  const top = desk.height + Math.max(height, 12);
  return area(rectangle(from, desk.height, to, top), 'thin', 'fill-wash');
}

export function seatShapes(seat: SeatProfile): readonly Shape[] {
  const { height, pan, range, ring, base = USUAL_BASE } = seat;
  const axis = (pan.from + pan.to) / 2;
  const ends = range.max > range.min ? [range.min, range.max] : [];
  const dash: Look[] = pan.depthIsSaid ? [] : ['dashed'];
  return [
    ...ends.map((end) => line(stroke(pan.from - 40, end, pan.to, end), 'hair', 'dashed')),
    area(rectangle(axis - POLE / 2, 20, axis + POLE / 2, height - SEAT), 'thin', 'fill-paper'),
    line(stroke(axis - base / 2, FOOT_OF_POLE, axis + base / 2, FOOT_OF_POLE), 'thick'),
    ...(seat.kind === 'chair'
      ? [line(stroke(pan.from, height - SEAT, pan.from - 40, height + 380), 'thick', 'soft')]
      : []),
    area(rectangle(pan.from, height - SEAT, pan.to, height), 'medium', 'fill-wash', ...dash),
    ...(ring === undefined ? [] : [line(stroke(axis - 190, ring - RING / 2, axis + 190, ring - RING / 2), 'thin')]),
  ];
}

/** What carries the feet: a ring out to where they rest. */
export function ringShapes({ seat, body }: SideSketch): readonly Shape[] {
  if (seat?.ring === undefined) return [];
  const axis = (seat.pan.from + seat.pan.to) / 2;
  const y = seat.ring - RING / 2;
  return [
    line(
      [
        { x: axis, y },
        { x: (body.heel.x + body.toe.x) / 2, y },
      ],
      'thick',
    ),
  ];
}

/** Its face, and on an arm how low and high that goes. */
export function screenShapes({ top, centre, bottom, reach, main }: SideScreen): readonly Shape[] {
  const face = [
    { x: bottom.x, y: bottom.z },
    { x: top.x, y: top.z },
  ];
  const arm = reach ? [line(stroke(centre.x, reach.min, centre.x, reach.max), 'hair', 'dashed')] : [];
  return [...arm, line(face, 'thick', ...(main ? [] : (['soft'] as const)))];
}

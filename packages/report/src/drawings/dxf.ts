import {
  type CommonEntityOptions,
  DxfWriter,
  LWPolylineFlags,
  point2d,
  point3d,
  TextHorizontalAlignment,
  Units,
} from '@tarikjabiri/dxf';
import type { Verdict } from '@boothwright/fit';
import { MARK_SIZE, TEXT_SIZE, type Drawing, type Look, type Piece, type Point, type Shape } from './drawing.js';
import { arc } from './geometry.js';

/** Layers by what is drawn, with a colour number of the format's own palette: 7 is black or white, 1 red, 8 grey. */
const layers = {
  ROOM: { colour: 7, kinds: ['wall', 'floor', 'stage', 'balcony'] },
  DOORS: { colour: 7, kinds: ['door'] },
  SEATING: { colour: 8, kinds: ['row', 'watchers', 'wheelchair-space'] },
  FURNITURE: { colour: 7, kinds: ['desk', 'rack', 'seat', 'platform', 'column', 'control', 'skirt', 'booth'] },
  SCREENS: { colour: 5, kinds: ['monitor'] },
  PEOPLE: { colour: 8, kinds: ['person', 'workstation', 'occupied', 'reach', 'eye'] },
  WALKWAYS: { colour: 3, kinds: ['walkway'] },
  SIGHT_LINES: { colour: 8, kinds: ['bearing', 'sight', 'sight-leader', 'gaze'] },
  DIMENSIONS: {
    colour: 4,
    kinds: [
      ...['room-width', 'room-depth', 'booth-x', 'booth-y', 'stage-distance'],
      ...['desk-width', 'desk-depth', 'occupied-depth', 'knee-room', 'thigh-room'],
      ...['staff', 'eye-level', 'elbow-level', 'desk-level', 'seat-level', 'ring-level'],
    ],
  },
  NOTES: { colour: 8, kinds: [] },
  TROUBLE: { colour: 1, kinds: [] },
} as const;

type LayerName = keyof typeof layers;

const layerByKind = new Map<string, LayerName>(
  Object.entries(layers).flatMap(([name, { kinds }]) => kinds.map((kind) => [kind, name as LayerName] as const)),
);

/** Height of a capital for one of the size of its text. */
const CAPITAL = 0.72;

/**
 * A drawing as DXF (AutoCAD 2007, text): millimetres at full size, y away from the back wall or up. What is drawn lies on layers named for
 * what it is, the signs of what is wrong on `TROUBLE`. No text of a booth file becomes anything but text.
 */
export function drawingDxf(drawing: Drawing, madeBy: string): string {
  const dxf = new DxfWriter();
  dxf.setUnits(Units.Millimeters);
  dxf.setVariable('$MEASUREMENT', { 70: 1 });
  const { scale } = drawing.sheet;
  dxf.addLType('DASHED', '__ __ __', [6 * scale, -3.5 * scale]);
  dxf.addLType('DOTTED', '. . . .', [0, -3.2 * scale]);
  dxf.addLType('CHAIN', '__ . __ .', [10 * scale, -3 * scale, 1.5 * scale, -3 * scale]);
  for (const [name, { colour }] of Object.entries(layers)) dxf.addLayer(name, colour);
  for (const piece of drawing.pieces) {
    for (const shape of piece.shapes) addShape(dxf, shape, layerOf(piece, shape), scale);
  }
  return `999\n${settable(madeBy)}\n${dxf.stringify()}\n`;
}

function layerOf({ kind }: Piece, shape: Shape): LayerName {
  return shape.shape === 'mark' ? 'TROUBLE' : (layerByKind.get(kind) ?? 'NOTES');
}

/** Dashes, and a colour of its own for what is wrong. */
function looksOf(looks: readonly Look[]): CommonEntityOptions {
  const colourNumber = looks.includes('fail') ? RED : looks.includes('marginal') ? ORANGE : undefined;
  return { lineType: lineType(looks), ...(colourNumber !== undefined && { colorNumber: colourNumber }) };
}

const RED = 1;
const ORANGE = 30;

function addShape(dxf: DxfWriter, shape: Shape, layerName: LayerName, scale: number): void {
  switch (shape.shape) {
    case 'path':
      if (!shape.looks.includes('no-line')) addPath(dxf, shape.points, shape.closed, shape.looks, layerName);
      return;
    case 'silhouette':
      for (const outline of shape.outlines) addPath(dxf, outline, true, shape.looks, layerName);
      return;
    case 'circle':
      dxf.addCircle(point3d(shape.centre.x, shape.centre.y), shape.radius, {
        layerName,
        lineType: lineType(shape.looks),
      });
      return;
    case 'mark':
      for (const part of markParts(shape.verdict)) {
        const points = part.map(({ x, y }) => ({
          x: shape.at.x + x * MARK_SIZE * scale,
          y: shape.at.y + y * MARK_SIZE * scale,
        }));
        addPath(dxf, points, false, [], layerName);
      }
      return;
    case 'text': {
      const place = point3d(shape.at.x, shape.at.y);
      dxf.addText(place, TEXT_SIZE * CAPITAL * scale, settable(shape.text), {
        layerName,
        horizontalAlignment: alignments[shape.anchor],
        ...(shape.anchor !== 'start' && { secondAlignmentPoint: place }),
      });
    }
  }
}

const alignments = {
  start: TextHorizontalAlignment.Left,
  middle: TextHorizontalAlignment.Center,
  end: TextHorizontalAlignment.Right,
} as const;

function addPath(
  dxf: DxfWriter,
  points: readonly Point[],
  closed: boolean,
  looks: readonly Look[],
  layerName: LayerName,
): void {
  dxf.addLWPolyline(
    points.map(({ x, y }) => ({ point: point2d(x, y) })),
    { layerName, ...looksOf(looks), ...(closed && { flags: LWPolylineFlags.Closed }) },
  );
}

function lineType(looks: readonly Look[]): string {
  if (looks.includes('dashed')) return 'DASHED';
  if (looks.includes('dotted')) return 'DOTTED';
  return looks.includes('chain') ? 'CHAIN' : 'ByLayer';
}

/** Crossed square, triangle, ticked disc and open ring, a unit wide around their middle. */
function markParts(verdict: Verdict): readonly (readonly Point[])[] {
  const half = 0.5;
  const ring = arc({ x: 0, y: 0 }, half, 0, 360);
  switch (verdict) {
    case 'fail': {
      const corners = [
        [-1, -1],
        [1, -1],
        [1, 1],
        [-1, 1],
        [-1, -1],
      ].map(([x, y]) => ({ x: x! * half, y: y! * half }));
      return [corners, [corners[0]!, corners[2]!], [corners[1]!, corners[3]!]];
    }
    case 'marginal':
      return [
        [
          { x: -half, y: -half },
          { x: half, y: -half },
          { x: 0, y: half },
          { x: -half, y: -half },
        ],
      ];
    case 'pass':
      return [
        ring,
        [
          { x: -0.22, y: 0 },
          { x: -0.05, y: -0.2 },
          { x: 0.25, y: 0.2 },
        ],
      ];
    case 'unknown':
      return [ring];
  }
}

/** One line, in which nothing is a code of the format: no line break begins another value, no sign stands for another. */
function settable(text: string): string {
  return text
    .replace(/[\s\p{C}]+/gu, ' ')
    .replace(/\\/g, '\\U+005C')
    .replace(/\^/g, '^ ')
    .replace(/%{2,}/g, (signs) => '%%%'.repeat(signs.length));
}

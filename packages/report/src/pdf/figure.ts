import type { Verdict } from '@boothwright/fit';
import {
  TEXT_SIZE,
  MARK_SIZE,
  type Drawing,
  type Look,
  type Point,
  type Shape,
  type TextShape,
} from '../drawings/drawing.js';
import { markParts } from '../drawings/svg.js';
import { light, tint } from '../palette.js';
import { settable, type Doc, type Measure } from './type.js';

const weights: Partial<Record<Look, number>> = { hair: 0.5, thin: 0.9, medium: 1.5, thick: 2.6 };
const fills: Partial<Record<Look, string>> = {
  'fill-paper': light.paper,
  'fill-wash': tint(0.07),
  'fill-body': tint(0.15),
  'fill-solid': light.ink,
};
const tones: Partial<Record<Look, string>> = {
  soft: light.soft,
  faint: tint(0.32),
  gap: light.paper,
  pass: light.pass,
  marginal: light.marginal,
  fail: light.fail,
  unknown: light.unknown,
};

/** Draws a drawing as vectors, its upper left corner at a point of the page, `scale` points for one of its units. */
export function drawFigure(doc: Doc, measure: Measure, drawing: Drawing, at: Point, scale: number): void {
  const { sheet } = drawing;
  const onPaper = ({ x, y }: Point) => ({ x: (x - sheet.left) / sheet.scale, y: (sheet.top - y) / sheet.scale });
  doc.save();
  doc.translate(at.x, at.y).scale(scale);
  doc.rect(0, 0, sheet.width, sheet.height).clip();
  doc.lineJoin('round');
  for (const { shapes } of drawing.pieces) {
    for (const shape of shapes) drawShape(doc, measure, shape, onPaper, sheet.scale);
  }
  doc.restore();
}

function drawShape(doc: Doc, measure: Measure, shape: Shape, onPaper: (point: Point) => Point, scale: number): void {
  switch (shape.shape) {
    case 'path':
      trace(doc, shape.points.map(onPaper), shape.closed);
      return paint(doc, shape.looks);
    case 'circle': {
      const { x, y } = onPaper(shape.centre);
      doc.circle(x, y, shape.radius / scale);
      return paint(doc, shape.looks);
    }
    case 'silhouette':
      return drawSilhouette(
        doc,
        shape.outlines.map((outline) => outline.map(onPaper)),
        shape.looks,
      );
    case 'text':
      return drawText(doc, measure, shape, onPaper(shape.at));
    case 'mark':
      return drawMark(doc, shape.verdict, onPaper(shape.at), MARK_SIZE);
  }
}

function trace(doc: Doc, points: readonly Point[], closed: boolean): void {
  points.forEach(({ x, y }, index) => (index === 0 ? doc.moveTo(x, y) : doc.lineTo(x, y)));
  if (closed) doc.closePath();
}

function paint(doc: Doc, looks: readonly Look[]): void {
  const fill = looks.map((look) => fills[look]).find(Boolean);
  const stroked = !looks.includes('no-line');
  if (stroked) setPen(doc, looks);
  if (fill && stroked) doc.fillAndStroke(fill, toneOf(looks));
  else if (fill) doc.fill(fill);
  else if (stroked) doc.stroke(toneOf(looks));
}

/** Stroked first and filled over, so that lines inside it do not show. */
function drawSilhouette(doc: Doc, outlines: readonly (readonly Point[])[], looks: readonly Look[]): void {
  const all = () => outlines.forEach((outline) => trace(doc, outline, true));
  all();
  doc
    .undash()
    .lineWidth(looks.includes('thin') ? 1.6 : 2.4)
    .stroke(toneOf(looks));
  all();
  doc.fill(looks.map((look) => fills[look]).find(Boolean) ?? light.paper);
}

function toneOf(looks: readonly Look[]): string {
  return (
    looks
      .map((look) => tones[look])
      .filter(Boolean)
      .at(-1) ?? light.ink
  );
}

function setPen(doc: Doc, looks: readonly Look[]): void {
  const weight = looks.map((look) => weights[look]).find(Boolean) ?? 0.9;
  doc.lineWidth(looks.includes('gap') ? 4 : looks.includes('dotted') ? 1.3 : weight);
  doc.lineCap(looks.some((look) => look === 'dashed' || look === 'chain' || look === 'gap') ? 'butt' : 'round');
  setDash(doc, looks);
}

function setDash(doc: Doc, looks: readonly Look[]): void {
  if (looks.includes('dashed')) doc.dash(6, { space: 3.5 });
  else if (looks.includes('dotted')) doc.dash(0.1, { space: 3.2 });
  else if (looks.includes('chain')) doc.dash([10, 3, 1.5, 3] as unknown as number, {});
  else doc.undash();
}

/** On a ground of its own, so that lines do not run through it. */
function drawText(doc: Doc, measure: Measure, { text, anchor, looks }: TextShape, { x, y }: Point): void {
  const weight = looks.includes('strong') ? 'strong' : 'regular';
  const words = settable(text);
  const width = measure.width(words, weight, TEXT_SIZE);
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
  doc.save();
  doc
    .fillOpacity(0.8)
    .rect(left - 1, y - TEXT_SIZE * 0.8, width + 2, TEXT_SIZE * 1.05)
    .fill(light.paper);
  doc.restore();
  doc
    .font(weight)
    .fontSize(TEXT_SIZE)
    .fillColor(looks.includes('soft') ? light.soft : light.ink);
  doc.text(words, left, y, { lineBreak: false, baseline: 'alphabetic' });
}

/** The sign of a verdict, its middle at a point. */
export function drawMark(doc: Doc, verdict: Verdict, { x, y }: Point, size: number): void {
  doc.save();
  doc.translate(x - size / 2, y - size / 2).scale(size / 16);
  doc.undash().lineCap('round').lineJoin('round');
  for (const { d, filled } of markParts[verdict]) {
    doc.path(d);
    if (filled) doc.fill(light[verdict]);
    else doc.lineWidth(verdict === 'unknown' ? 1.6 : 2).stroke(verdict === 'unknown' ? light.unknown : light.paper);
  }
  doc.restore();
}

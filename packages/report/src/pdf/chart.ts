import { CHART, dashes, labelledTicks, COLOURS } from '../parts/chart-shape.js';
import { light, type ColourName } from '../palette.js';
import type { ChartTold } from '../telling/curves.js';
import { percent } from '../words.js';
import type { Point } from '../drawings/drawing.js';
import { settable, type Doc, type Measure } from './type.js';

const SIZE = 11;

/** Draws a chart's grid and lines, its upper left corner at a point of the page, `scale` points for one of its units. */
export function drawChart(doc: Doc, measure: Measure, chart: ChartTold, at: Point, scale: number): void {
  const { width, height, left, right, top, bottom } = CHART;
  const x = (value: number) => left + ((value - chart.from) / (chart.to - chart.from)) * (width - left - right);
  const y = (share: number) => height - bottom - share * (height - top - bottom);
  const line = (x1: number, y1: number, x2: number, y2: number, colour: string) =>
    doc.moveTo(x1, y1).lineTo(x2, y2).lineWidth(1).stroke(colour);
  const text = (words: string, px: number, py: number, anchor: 'middle' | 'end', colour: string) => {
    const shown = settable(words);
    const wide = measure.width(shown, 'regular', SIZE);
    doc.font('regular').fontSize(SIZE).fillColor(colour);
    doc.text(shown, px - (anchor === 'end' ? wide : wide / 2), py, { lineBreak: false, baseline: 'alphabetic' });
  };
  doc.save();
  doc.translate(at.x, at.y).scale(scale).lineCap('butt').lineJoin('round').undash();
  for (const share of [0, 0.5, 0.9, 1]) {
    line(left, y(share), width - right, y(share), share === 0 ? light.soft : light.line);
    text(percent(share), left - 6, y(share) + 3.5, 'end', light.soft);
  }
  for (const { at: value, label } of labelledTicks(chart)) {
    line(x(value), y(0), x(value), y(0) + 4, light.soft);
    text(label, x(value), height - 8, 'middle', light.soft);
  }
  if (chart.now) {
    doc.dash(1, { space: 2 });
    line(x(chart.now.at), top - 6, x(chart.now.at), y(0), light.ink);
    text(chart.now.label, x(chart.now.at), top - 10, 'middle', light.ink);
  }
  chart.lines.forEach(({ points }, index) => {
    points.forEach((point, nth) => {
      if (nth === 0) doc.moveTo(x(point.height), y(point.share));
      else doc.lineTo(x(point.height), y(point.share));
    });
    strokeLine(doc, index);
  });
  doc.restore();
}

/** Strokes the path as the line of one person, which differs by dash as well as by colour. */
export function strokeLine(doc: Doc, index: number): void {
  const dash = dashes[index % dashes.length]?.split(' ').map(Number);
  if (dash) doc.dash(dash as unknown as number, {});
  else doc.undash();
  doc.lineWidth(2).stroke(light[`line-${(index % COLOURS) + 1}` as ColourName]);
  doc.undash();
}

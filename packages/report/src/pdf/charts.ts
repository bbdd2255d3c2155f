import { CHART } from '../parts/chart-shape.js';
import type { ChartTold } from '../telling/curves.js';
import { drawChart, strokeLine } from './chart.js';
import { drawLine, LEADING, type Flow } from './flow.js';
import { linesOf, type Line } from './lines.js';
import type { Measure } from './type.js';

const SIZE = 8;
const BETWEEN = 16;
/** What the sample of a line takes before its words, points. */
const SAMPLE = 26;

interface Cell {
  readonly chart: ChartTold;
  readonly title: readonly Line[];
  readonly legend: readonly (readonly Line[])[];
  readonly height: number;
}

/** Sets charts two in a row, each with its title above and what its lines say below. */
export function setCharts(flow: Flow, measure: Measure, charts: readonly ChartTold[]): void {
  for (const row of rowsOf(flow, measure, charts)) {
    const height = heightOf(row);
    flow.keepTogether(height);
    row.forEach((cell, index) => setChart(flow, measure, cell, flow.frame.left + index * (halfWidth(flow) + BETWEEN)));
    flow.y += height + 8;
  }
}

/** The height of the first row. */
export function leastOfCharts(flow: Flow, measure: Measure, charts: readonly ChartTold[]): number {
  return heightOf(rowsOf(flow, measure, charts)[0]!);
}

function setChart(flow: Flow, measure: Measure, { chart, title, legend }: Cell, left: number): void {
  const { doc } = flow;
  const line = SIZE * LEADING;
  title.forEach((each, nth) => drawLine(doc, each, left, flow.y + nth * line, SIZE));
  let y = flow.y + title.length * line;
  drawChart(doc, measure, chart, { x: left, y }, plotWidth(flow) / CHART.width);
  y += plotHeight(flow);
  legend.forEach((lines, index) => {
    doc.moveTo(left, y + SIZE * 0.7).lineTo(left + SAMPLE - 6, y + SIZE * 0.7);
    strokeLine(doc, index);
    lines.forEach((each, nth) => drawLine(doc, each, left + SAMPLE, y + nth * line, SIZE));
    y += lines.length * line;
  });
}

function rowsOf(flow: Flow, measure: Measure, charts: readonly ChartTold[]): readonly (readonly Cell[])[] {
  const cells = charts.map((chart): Cell => {
    const title = linesOf([{ text: chart.title, as: 'strong' }], SIZE, halfWidth(flow), measure);
    const legend = chart.lines.map(({ summary }) => linesOf([summary], SIZE, halfWidth(flow) - SAMPLE, measure));
    const lines = title.length + legend.reduce((sum, { length }) => sum + length, 0);
    return { chart, title, legend, height: plotHeight(flow) + lines * SIZE * LEADING };
  });
  return cells.flatMap((cell, index) => (index % 2 === 0 ? [cells.slice(index, index + 2)] : []));
}

function heightOf(row: readonly Cell[]): number {
  return Math.max(...row.map(({ height }) => height));
}

function plotHeight(flow: Flow): number {
  return (CHART.height * plotWidth(flow)) / CHART.width;
}

/** A little narrower than its half of the page. */
function plotWidth(flow: Flow): number {
  return halfWidth(flow) * 0.8;
}

function halfWidth({ frame }: Flow): number {
  return (frame.width - BETWEEN) / 2;
}

import type { Block, Captioned, Item } from '../content/blocks.js';
import { CHART } from '../parts/chart-shape.js';
import { light } from '../palette.js';
import type { ChartTold } from '../telling/curves.js';
import { drawChart, strokeLine } from './chart.js';
import { drawFigure } from './figure.js';
import { drawLine, LEADING, type Flow } from './flow.js';
import { linesOf } from './lines.js';
import { leastOfTable, setTable } from './table.js';
import type { Measure } from './type.js';

const BODY = 9.5;
const SMALL = 8.5;
const HEADINGS = { 1: 21, 2: 13.5, 3: 11 } as const;
const ABOVE = { 1: 0, 2: 16, 3: 10 } as const;
const INDENT = 14;
/** Between two drawings that stand side by side. */
const BETWEEN = 16;
/** No drawing is taller than this part of a page. */
const TALLEST = 0.82;
const CHART_WIDTH = 370;

/** Sets blocks one after another; a heading stays with what follows it. */
export function setBlocks(flow: Flow, measure: Measure, blocks: readonly Block[]): void {
  blocks.forEach((block, index) => setBlock(flow, measure, block, blocks.slice(index + 1)));
}

function setBlock(flow: Flow, measure: Measure, block: Block, rest: readonly Block[]): void {
  const { width } = flow.frame;
  switch (block.kind) {
    case 'heading': {
      const size = HEADINGS[block.level];
      const lines = linesOf([{ text: block.text, as: 'strong' }], size, width, measure);
      flow.gap(ABOVE[block.level]);
      flow.keepTogether(lines.length * size * LEADING + leastOf(flow, measure, rest));
      if (block.level > 1) flow.doc.outline.addItem(block.text);
      flow.lines(lines, size);
      flow.y += 3;
      return;
    }
    case 'paragraph': {
      const lines = linesOf(block.text, BODY, width, measure);
      flow.keepTogether(Math.min(lines.length, 3) * BODY * LEADING);
      flow.lines(lines, BODY);
      flow.y += 5;
      return;
    }
    case 'list':
      block.items.forEach((item, index) => setItem(flow, measure, item, block.numbered ? `${index + 1}.` : '•'));
      flow.y += 3;
      return;
    case 'table':
      return setTable(flow, measure, block.head, block.rows);
    case 'drawings':
      return setDrawings(flow, measure, block.drawings);
    case 'chart':
      return setChart(flow, measure, block.chart);
  }
}

/** What has to stand below a heading for it not to stand alone. */
function leastOf(flow: Flow, measure: Measure, [next, ...rest]: readonly Block[]): number {
  const { width } = flow.frame;
  switch (next?.kind) {
    case undefined:
      return 0;
    case 'heading':
      return ABOVE[next.level] + HEADINGS[next.level] * LEADING + leastOf(flow, measure, rest);
    case 'paragraph':
      return Math.min(3, linesOf(next.text, BODY, width, measure).length) * BODY * LEADING;
    case 'list':
      return Math.min(flow.frame.height / 3, heightOfItem(flow, measure, next.items[0]!));
    case 'table':
      return Math.min(flow.frame.height / 2, leastOfTable(flow, measure, next.head, next.rows));
    case 'drawings':
      return heightOfDrawings(flow, next.drawings);
    case 'chart':
      return chartHeight() + 2 * BODY * LEADING;
  }
}

function itemLines(flow: Flow, measure: Measure, item: Item) {
  return item.flatMap((text) => linesOf(text, BODY, flow.frame.width - INDENT, measure));
}

function heightOfItem(flow: Flow, measure: Measure, item: Item): number {
  return itemLines(flow, measure, item).length * BODY * LEADING;
}

function setItem(flow: Flow, measure: Measure, item: Item, sign: string): void {
  const lines = itemLines(flow, measure, item);
  flow.keepTogether(lines.length * BODY * LEADING);
  if (!flow.fits(BODY * LEADING)) flow.turn();
  drawLine(flow.doc, [{ x: 0, text: sign, weight: 'regular', colour: 'soft' }], flow.frame.left, flow.y, BODY);
  flow.lines(lines, BODY, INDENT);
  flow.y += item.length > 1 ? 4 : 1.5;
}

function setDrawings(flow: Flow, measure: Measure, drawings: readonly Captioned[]): void {
  flow.keepTogether(heightOfDrawings(flow, drawings));
  const top = flow.y;
  let bottom = top;
  drawings.forEach(({ caption, drawing }, index) => {
    const scale = scaleOf(flow, drawing.sheet);
    const left = flow.frame.left + index * (halfWidth(flow) + BETWEEN);
    const room = drawing.sheet.width * scale;
    linesOf([{ text: caption, as: 'strong' }], SMALL, room, measure).forEach((line, nth) =>
      drawLine(flow.doc, line, left, top + nth * SMALL * LEADING, SMALL),
    );
    drawFigure(flow.doc, measure, drawing, { x: left, y: top + CAPTION }, scale);
    bottom = Math.max(bottom, top + CAPTION + drawing.sheet.height * scale);
  });
  flow.y = bottom + 12;
}

const CAPTION = 2.2 * SMALL * LEADING;

function heightOfDrawings(flow: Flow, drawings: readonly Captioned[]): number {
  return CAPTION + Math.max(...drawings.map(({ drawing }) => drawing.sheet.height * scaleOf(flow, drawing.sheet)));
}

/** A wide drawing fills the page's width, a narrow one half of it. */
function scaleOf(flow: Flow, { width, height }: { width: number; height: number }): number {
  const room = width > 500 ? flow.frame.width : halfWidth(flow);
  return Math.min(room / width, (flow.frame.height * TALLEST) / height);
}

function halfWidth(flow: Flow): number {
  return (flow.frame.width - BETWEEN) / 2;
}

function setChart(flow: Flow, measure: Measure, chart: ChartTold): void {
  const title = linesOf([{ text: chart.title, as: 'strong' }], BODY, flow.frame.width, measure);
  const summaries = chart.lines.map(({ summary }) => linesOf([summary], SMALL, flow.frame.width - 44, measure));
  const legend = summaries.reduce((sum, lines) => sum + lines.length * SMALL * LEADING, 0);
  flow.keepTogether(chartHeight() + title.length * BODY * LEADING + Math.min(legend, flow.frame.height / 3));
  flow.lines(title, BODY);
  drawChart(flow.doc, measure, chart, { x: flow.frame.left, y: flow.y }, CHART_WIDTH / CHART.width);
  flow.y += chartHeight();
  summaries.forEach((lines, index) => {
    if (!flow.fits(SMALL * LEADING)) flow.turn();
    const middle = flow.y + SMALL * 0.7;
    flow.doc.moveTo(flow.frame.left, middle).lineTo(flow.frame.left + 34, middle);
    strokeLine(flow.doc, index);
    flow.lines(lines, SMALL, 44);
  });
  flow.y += 6;
  setTable(
    flow,
    measure,
    [['Height'], ...chart.lines.map(({ who }) => [who])],
    chart.rows.map(({ height, shares }) => [[height], ...shares.map((share) => [share])]),
  );
}

function chartHeight(): number {
  return (CHART.height * CHART_WIDTH) / CHART.width;
}

/** At the foot of every page: what it belongs to, and which of how many it is. */
export function setFooters(flow: Flow, measure: Measure, title: string): void {
  const { start, count } = flow.doc.bufferedPageRange();
  const { left, top, width, height } = flow.frame;
  for (let page = start; page < start + count; page++) {
    flow.doc.switchToPage(page);
    const number = `${page - start + 1} of ${count}`;
    const [line] = linesOf([{ text: title, as: 'soft' }], 8, width - 60, measure);
    if (line) drawLine(flow.doc, line, left, top + height + 14, 8);
    const x = width - measure.width(number, 'regular', 8);
    drawLine(flow.doc, [{ x, text: number, weight: 'regular', colour: 'soft' }], left, top + height + 14, 8);
  }
  flow.doc.fillColor(light.ink);
}

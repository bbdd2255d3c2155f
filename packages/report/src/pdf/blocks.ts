import type { Block, Item } from '../content/blocks.js';
import { light } from '../palette.js';
import { setCharts, leastOfCharts } from './charts.js';
import { leastOfFigures, setFigures } from './figures.js';
import { drawLine, LEADING, type Flow } from './flow.js';
import { linesOf } from './lines.js';
import { leastOfTable, setTable } from './table.js';
import type { Measure } from './type.js';

const BODY = 8.3;
const HEADINGS = { 1: 20, 2: 13, 3: 10.5 } as const;
const ABOVE = { 1: 0, 2: 14, 3: 8 } as const;
const BELOW_HEADING = 3;
const INDENT = 12;
/** So many lines of an item stay together. */
const KEPT_LINES = 4;

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
      flow.keepTogether(lines.length * size * LEADING + BELOW_HEADING + leastOf(flow, measure, rest));
      if (block.level > 1) flow.doc.outline.addItem(block.text);
      flow.lines(lines, size);
      flow.y += BELOW_HEADING;
      return;
    }
    case 'paragraph': {
      const lines = linesOf(block.text, BODY, width, measure);
      flow.keepTogether(Math.min(lines.length, 3) * BODY * LEADING);
      flow.lines(lines, BODY);
      flow.y += 4;
      return;
    }
    case 'list':
      block.items.forEach((item, index) => setItem(flow, measure, item, block.numbered ? `${index + 1}.` : '•'));
      flow.y += 3;
      return;
    case 'table':
      return setTable(flow, measure, block);
    case 'figures':
      return setFigures(flow, measure, block);
    case 'charts':
      return setCharts(flow, measure, block.charts);
    case 'drawn':
      return setBlocks(flow, measure, block.blocks);
    case 'page':
      setBlocks(flow, measure, block.blocks);
      return rest.length > 0 ? flow.turn() : undefined;
    case 'more':
      return;
  }
}

/** What has to stand below a heading for it not to stand alone. */
function leastOf(flow: Flow, measure: Measure, [next, ...rest]: readonly Block[]): number {
  const { width } = flow.frame;
  switch (next?.kind) {
    case undefined:
      return 0;
    case 'heading':
      return ABOVE[next.level] + HEADINGS[next.level] * LEADING + BELOW_HEADING + leastOf(flow, measure, rest);
    case 'paragraph':
      return Math.min(3, linesOf(next.text, BODY, width, measure).length) * BODY * LEADING;
    case 'list':
      return heightOfItem(flow, measure, next.items[0]!);
    case 'table':
      return Math.min(flow.frame.height / 2, leastOfTable(flow, measure, next));
    case 'figures':
      return leastOfFigures(flow, measure, next);
    case 'charts':
      return leastOfCharts(flow, measure, next.charts);
    case 'page':
    case 'drawn':
      return leastOf(flow, measure, next.blocks);
    case 'more':
      return leastOf(flow, measure, rest);
  }
}

function itemLines(flow: Flow, measure: Measure, item: Item) {
  return item.flatMap((text) => linesOf(text, BODY, flow.frame.width - INDENT, measure));
}

function heightOfItem(flow: Flow, measure: Measure, item: Item): number {
  return Math.min(KEPT_LINES, itemLines(flow, measure, item).length) * BODY * LEADING;
}

function setItem(flow: Flow, measure: Measure, item: Item, sign: string): void {
  const lines = itemLines(flow, measure, item);
  flow.keepTogether(Math.min(lines.length, KEPT_LINES) * BODY * LEADING);
  drawLine(flow.doc, [{ x: 0, text: sign, weight: 'regular', colour: 'soft' }], flow.frame.left, flow.y, BODY);
  flow.lines(lines, BODY, INDENT);
  flow.y += item.length > 1 ? 3 : 1;
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

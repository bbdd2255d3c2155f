import type { Text } from '../content/blocks.js';
import { light } from '../palette.js';
import { drawLine, LEADING, type Flow } from './flow.js';
import { linesOf, widthsOf, type Line } from './lines.js';
import type { Measure } from './type.js';

const SIZE = 8.5;
const GUTTER = 9;
const PADDING = 2.5;
const HEIGHT = SIZE * LEADING;
/** A table that takes no more than this of a page is not broken. */
const KEPT_WHOLE = 0.3;

interface Row {
  /** The lines of each cell. */
  readonly cells: readonly (readonly Line[])[];
  readonly height: number;
}

/** Sets a table over the whole width; its head is repeated on every page it goes on to. */
export function setTable(
  flow: Flow,
  measure: Measure,
  head: readonly Text[],
  rows: readonly (readonly Text[])[],
): void {
  const widths = columnWidths([head, ...rows], flow.frame.width, measure);
  const rowOf = (texts: readonly Text[]): Row => {
    const cells = texts.map((text, column) => linesOf(text, SIZE, widths[column]!, measure));
    return { cells, height: Math.max(1, ...cells.map(({ length }) => length)) * HEIGHT + 2 * PADDING };
  };
  const top = rowOf(head.map(strengthened));
  const body = rows.map(rowOf);
  const whole = sum([top, ...body].map(({ height }) => height));
  flow.keepTogether(whole < flow.frame.height * KEPT_WHOLE ? whole : top.height + (body[0]?.height ?? 0));
  setRow(flow, top, widths, light.ink);
  for (const row of body) {
    if (!flow.fits(row.height) && row.height <= flow.frame.height - top.height) turn(flow, top, widths);
    setRow(flow, row, widths, light.line, () => turn(flow, top, widths));
  }
  flow.y += 8;
}

/** So much stays together at the top of a table: less than this is not left at the foot of a page. */
export function leastOfTable(
  flow: Flow,
  measure: Measure,
  head: readonly Text[],
  rows: readonly (readonly Text[])[],
): number {
  const widths = columnWidths([head, ...rows], flow.frame.width, measure);
  const heights = [head, ...rows].map((row) => {
    const lines = row.map((text, column) => linesOf(text, SIZE, widths[column]!, measure).length);
    return Math.max(1, ...lines) * HEIGHT + 2 * PADDING;
  });
  const whole = sum(heights);
  return whole < flow.frame.height * KEPT_WHOLE ? whole : sum(heights.slice(0, 2));
}

function turn(flow: Flow, head: Row, widths: readonly number[]): void {
  flow.turn();
  setRow(flow, head, widths, light.ink);
}

/** A row too tall for what is left goes on where `turnPage` leads. */
function setRow(flow: Flow, { cells }: Row, widths: readonly number[], colour: string, turnPage?: () => void): void {
  const most = Math.max(1, ...cells.map(({ length }) => length));
  flow.y += PADDING;
  for (let index = 0; index < most; index++) {
    if (turnPage && !flow.fits(HEIGHT + PADDING)) {
      turnPage();
      flow.y += PADDING;
    }
    let x = flow.frame.left;
    cells.forEach((lines, column) => {
      const line = lines[index];
      if (line) drawLine(flow.doc, line, x, flow.y, SIZE);
      x += widths[column]! + GUTTER;
    });
    flow.y += HEIGHT;
  }
  flow.y += PADDING;
  flow.rule(colour, colour === light.ink ? 0.9 : 0.5);
}

/** As wide as what stands in them asks for; where that is too much, the wider give way down to their widest word. */
function columnWidths(rows: readonly (readonly Text[])[], whole: number, measure: Measure): number[] {
  const columns = rows[0]!.map((_, column) => rows.map((row) => widthsOf(row[column]!, SIZE, measure)));
  const free = whole - GUTTER * (columns.length - 1);
  const most = columns.map((cells) => Math.max(...cells.map((cell) => cell.whole)) * 1.05 + 1);
  const least = columns.map((cells, column) =>
    Math.min(most[column]!, Math.max(...cells.map((cell) => cell.word)) * 1.05 + 1),
  );
  const [sumMost, sumLeast] = [sum(most), sum(least)];
  if (sumMost <= free) return most.map((width) => width + (free - sumMost) / columns.length);
  if (sumLeast >= free) return least.map((width) => (width * free) / sumLeast);
  const share = (free - sumLeast) / (sumMost - sumLeast);
  return least.map((width, column) => width + share * (most[column]! - width));
}

function strengthened(text: Text): Text {
  return text.map((span) => (typeof span === 'string' ? { text: span, as: 'strong' as const } : span));
}

function sum(values: readonly number[]): number {
  return values.reduce((a, b) => a + b, 0);
}

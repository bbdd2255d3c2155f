import type { TableBlock, Text } from '../content/blocks.js';
import { light } from '../palette.js';
import { drawLine, type Flow } from './flow.js';
import { linesOf, widthsOf, type Line } from './lines.js';
import type { Measure } from './type.js';

const SIZE = 8;
const GUTTER = 9;
const PADDING = 1.2;
const HEIGHT = SIZE * 1.3;
/** A table that takes no more than this of a page is not broken. */
const KEPT_WHOLE = 0.2;

interface Row {
  /** The lines of each cell. */
  readonly cells: readonly (readonly Line[])[];
  readonly height: number;
}

/** Sets a table over the whole width, its caption above; its head is repeated on every page it goes on to. */
export function setTable(flow: Flow, measure: Measure, table: TableBlock): void {
  const { caption, top, body, widths } = laidOut(flow, measure, table);
  flow.keepTogether(leastOf(flow, caption, top, body));
  flow.lines(caption, SIZE);
  setRow(flow, top, widths, light.ink);
  for (const row of body) {
    if (!flow.fits(row.height) && row.height <= flow.frame.height - top.height) turn(flow, top, widths);
    setRow(flow, row, widths, light.line, () => turn(flow, top, widths));
  }
  flow.y += 7;
}

/** So much stays together at the top of a table: less than this is not left at the foot of a page. */
export function leastOfTable(flow: Flow, measure: Measure, table: TableBlock): number {
  const { caption, top, body } = laidOut(flow, measure, table);
  return leastOf(flow, caption, top, body);
}

function laidOut(flow: Flow, measure: Measure, { caption, head, rows }: TableBlock) {
  const widths = columnWidths(head, rows, flow.frame.width, measure);
  const rowOf = (texts: readonly Text[]): Row => {
    const cells = texts.map((text, column) => linesOf(text, SIZE, widths[column]!, measure));
    return { cells, height: Math.max(1, ...cells.map(({ length }) => length)) * HEIGHT + 2 * PADDING };
  };
  return {
    widths,
    caption: linesOf([{ text: caption, as: 'soft' }], SIZE, flow.frame.width, measure),
    top: rowOf(head.map(strengthened)),
    body: rows.map(rowOf),
  };
}

function leastOf(flow: Flow, caption: readonly Line[], top: Row, body: readonly Row[]): number {
  const above = caption.length * HEIGHT + top.height;
  const whole = above + sum(body.map(({ height }) => height));
  return whole < flow.frame.height * KEPT_WHOLE ? whole : above + (body[0]?.height ?? 0);
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

/**
 * A column that asks for no more than its part gets it; what is left goes to those that ask for more, none below its widest word. What stands
 * at its head may be broken.
 */
function columnWidths(
  head: readonly Text[],
  rows: readonly (readonly Text[])[],
  whole: number,
  measure: Measure,
): number[] {
  const columns = head.map((text, column) => {
    const { word } = widthsOf(strengthened(text), SIZE, measure);
    return [{ whole: word, word }, ...rows.map((row) => widthsOf(row[column]!, SIZE, measure))];
  });
  const free = whole - GUTTER * (columns.length - 1);
  const most = columns.map((cells) => Math.max(...cells.map((cell) => cell.whole)) * 1.05 + 1);
  const least = columns.map((cells, column) =>
    Math.min(most[column]!, Math.max(...cells.map((cell) => cell.word)) * 1.05 + 1),
  );
  if (sum(most) <= free) return most.map((width) => width + (free - sum(most)) / columns.length);
  if (sum(least) >= free) return least.map((width) => (width * free) / sum(least));
  const widths = [...least];
  let left = free - sum(least);
  for (const [nth, column] of [...most.keys()].sort((a, b) => most[a]! - least[a]! - most[b]! + least[b]!).entries()) {
    const more = Math.min(most[column]! - least[column]!, left / (most.length - nth));
    widths[column]! += more;
    left -= more;
  }
  return widths;
}

function strengthened(text: Text): Text {
  return text.map((span) => (typeof span === 'string' ? { text: span, as: 'strong' as const } : span));
}

function sum(values: readonly number[]): number {
  return values.reduce((a, b) => a + b, 0);
}

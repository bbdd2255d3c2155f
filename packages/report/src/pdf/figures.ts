import type { Figure, FiguresBlock } from '../content/blocks.js';
import { drawFigure } from './figure.js';
import { drawLine, LEADING, type Flow } from './flow.js';
import { linesOf, type Line } from './lines.js';
import type { Measure } from './type.js';

const SIZE = 8;
/** Points for a unit of a drawing: its texts are then 7 points. */
const SCALE = 0.595;
const BETWEEN = 14;
const BELOW = 8;

interface Placed {
  readonly figure: Figure;
  readonly caption: readonly Line[];
  readonly scale: number;
  readonly width: number;
  readonly height: number;
}

/** Sets drawings at one scale, as many in a row as fit. */
export function setFigures(flow: Flow, measure: Measure, block: FiguresBlock): void {
  for (const row of rowsOf(flow, measure, block)) {
    flow.keepTogether(heightOf(row));
    let x = flow.frame.left;
    for (const { figure, caption, scale, width } of row) {
      caption.forEach((line, nth) => drawLine(flow.doc, line, x, flow.y + nth * SIZE * LEADING, SIZE));
      drawFigure(flow.doc, measure, figure.drawing, { x, y: flow.y + above(caption) }, scale);
      x += width + BETWEEN;
    }
    flow.y += heightOf(row) + BELOW;
  }
}

/** The height of the first row. */
export function leastOfFigures(flow: Flow, measure: Measure, block: FiguresBlock): number {
  return heightOf(rowsOf(flow, measure, block)[0]!);
}

function rowsOf(flow: Flow, measure: Measure, { figures }: FiguresBlock): readonly (readonly Placed[])[] {
  const rows: Placed[][] = [];
  let left = 0;
  for (const figure of figures) {
    const placed = place(flow, measure, figure);
    if (rows.length > 0 && placed.width <= left) rows.at(-1)!.push(placed);
    else {
      rows.push([placed]);
      left = flow.frame.width;
    }
    left -= placed.width + BETWEEN;
  }
  return rows;
}

function place(flow: Flow, measure: Measure, figure: Figure): Placed {
  const { sheet } = figure.drawing;
  const scale = Math.min(SCALE, flow.frame.width / sheet.width, (flow.frame.height * 0.9) / sheet.height);
  const width = sheet.width * scale;
  const caption = linesOf([{ text: figure.caption, as: 'strong' }], SIZE, width, measure);
  return { figure, caption, scale, width, height: above(caption) + sheet.height * scale };
}

function above(caption: readonly Line[]): number {
  return caption.length * SIZE * LEADING + 2;
}

function heightOf(row: readonly Placed[]): number {
  return Math.max(...row.map(({ height }) => height));
}

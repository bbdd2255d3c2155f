import { light } from '../palette.js';
import { MARK_ROOM, type Line } from './lines.js';
import { drawMark } from './figure.js';
import type { Doc } from './type.js';

/** The part of every page that is printed on, points. */
export interface Frame {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** From one line to the next, in sizes of the text. */
export const LEADING = 1.34;
const ASCENT = 1.05;

/** Where the next thing goes: down the frame, then on to another page. */
export class Flow {
  /** From the top of the page, points. */
  y: number;

  constructor(
    readonly doc: Doc,
    readonly frame: Frame,
  ) {
    this.y = frame.top;
  }

  get isAtTop(): boolean {
    return this.y === this.frame.top;
  }

  /** Whether so much still fits on this page. */
  fits(height: number): boolean {
    return this.y + height <= this.frame.top + this.frame.height + 0.01;
  }

  /** A new page if so much does not fit on this one, but would on an empty one. */
  keepTogether(height: number): void {
    if (!this.fits(height) && height <= this.frame.height) this.turn();
  }

  turn(): void {
    if (this.isAtTop) return;
    this.doc.addPage();
    this.y = this.frame.top;
  }

  /** Free paper, but none at the top of a page. */
  gap(height: number): void {
    if (!this.isAtTop) this.y += height;
  }

  /** Lines below one another, `indent` from the left; a page is turned between two of them. */
  lines(lines: readonly Line[], size: number, indent = 0): void {
    for (const line of lines) {
      if (!this.fits(size * LEADING)) this.turn();
      drawLine(this.doc, line, this.frame.left + indent, this.y, size);
      this.y += size * LEADING;
    }
  }

  /** A line from edge to edge. */
  rule(colour: string, weight: number): void {
    const { left, width } = this.frame;
    this.doc.undash().lineWidth(weight).lineCap('butt');
    this.doc
      .moveTo(left, this.y)
      .lineTo(left + width, this.y)
      .stroke(colour);
  }
}

/** Sets a line whose upper left corner is there. */
export function drawLine(doc: Doc, line: Line, left: number, top: number, size: number): void {
  const baseline = top + size * ASCENT;
  for (const { x, text, weight, colour, mark } of line) {
    const room = mark ? MARK_ROOM * size : 0;
    if (mark) drawMark(doc, mark, { x: left + x + size / 2, y: baseline - size * 0.36 }, size * 0.95);
    doc.font(weight).fontSize(size).fillColor(light[colour]);
    doc.text(text, left + x + room, baseline, { lineBreak: false, baseline: 'alphabetic' });
  }
}

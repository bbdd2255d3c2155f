import type { Verdict } from '@boothwright/fit';
import {
  LINE_HEIGHT,
  TEXT_SIZE,
  type Drawing,
  type Look,
  type Piece,
  type Point,
  type Shape,
  type Sheet,
} from './drawing.js';
import { distance } from './geometry.js';
import { Labels, MARK_GAP, markIndent, type Label, type PlacedLabel, type Spot } from './labels.js';
import { line } from './shapes.js';
import { textWidth } from './text-width.js';

/** A label that is to be placed. */
export interface Wanted {
  readonly kind: string;
  readonly name?: string;
  readonly station?: string;
  readonly label: Label;
  readonly spots: readonly Spot[];
  /** 0 if not said. */
  readonly priority?: number;
  /** It is left out without a word where it would cost more than this. */
  readonly dearest?: number;
  /** The place on the paper that it speaks of, if a line should lead there. */
  readonly from?: Point;
}

/** A label farther away than this from what it speaks of gets a line to it. */
const FAR = 16;

/** A sheet to draw on: turns places of the world into places of the paper and back, and keeps the pieces in order. */
export class Board {
  readonly labels: Labels;
  private readonly pieces: Piece[] = [];
  private readonly texts: Piece[] = [];
  private readonly wanted: (Wanted & { readonly priority: number })[] = [];

  constructor(readonly sheet: Sheet) {
    this.labels = new Labels({ x: 1, y: 1, width: sheet.width - 2, height: sheet.height - 2 });
  }

  /** Everything that was drawn, with the labels on top of all lines; and the labels for which no place was left. */
  finished(): Pick<Drawing, 'sheet' | 'pieces' | 'omitted'> {
    const omitted: string[] = [];
    for (const { kind, name, station, label, spots, from, dearest } of this.wanted.sort(
      (a, b) => b.priority - a.priority,
    )) {
      const placed = this.labels.place(label, spots, dearest);
      if (!placed && dearest === undefined) omitted.push(label.lines.join(' '));
      if (placed)
        this.texts.push(
          pieceOf(kind, name, [...this.leader(placed, from), ...this.shapesOf(placed)], label.mark, station),
        );
    }
    this.wanted.length = 0;
    return { sheet: this.sheet, pieces: [...this.pieces, ...this.texts], omitted };
  }

  onPaper({ x, y }: Point): Point {
    const { left, top, scale } = this.sheet;
    return { x: (x - left) / scale, y: (top - y) / scale };
  }

  inWorld({ x, y }: Point): Point {
    const { left, top, scale } = this.sheet;
    return { x: left + x * scale, y: top - y * scale };
  }

  add(kind: string, name: string | undefined, shapes: readonly Shape[], verdict?: Verdict, station?: string): void {
    if (shapes.length > 0) this.pieces.push(pieceOf(kind, name, shapes, verdict, station));
  }

  /** Asks for a label. It goes where it fits best once all lines are drawn, those of a high priority first. */
  label(wanted: Wanted): void {
    this.wanted.push({ priority: 0, ...wanted });
  }

  /** Draws a label in a box that is free for certain. */
  write(kind: string, name: string | undefined, placed: PlacedLabel): void {
    this.labels.keepFree(placed.box);
    this.texts.push(pieceOf(kind, name, this.shapesOf(placed), placed.mark));
  }

  private shapesOf(placed: PlacedLabel): Shape[] {
    const { box, anchor, lines, mark, strong, soft } = placed;
    const indent = markIndent(placed);
    const x = anchor === 'start' ? box.x : anchor === 'end' ? box.x + box.width : box.x + box.width / 2;
    const shapes = lines.map((text, index): Shape => {
      const shift = index === 0 && indent > 0 ? (anchor === 'start' ? indent : anchor === 'end' ? 0 : indent / 2) : 0;
      const y = box.y + index * LINE_HEIGHT + LINE_HEIGHT / 2 + TEXT_SIZE * 0.36;
      const looks: Look[] = [
        ...(strong && index === 0 ? (['strong'] as const) : []),
        ...(soft ? (['soft'] as const) : []),
      ];
      return { shape: 'text', at: this.inWorld({ x: x + shift, y }), anchor, text, looks };
    });
    return mark ? [{ shape: 'mark', at: this.inWorld(this.markPlace(placed)), verdict: mark }, ...shapes] : shapes;
  }

  /** A hairline from what a label speaks of to the label, if that is not beside it. */
  private leader({ box }: PlacedLabel, from: Point | undefined): Shape[] {
    if (!from) return [];
    const end = {
      x: Math.max(box.x - 2, Math.min(box.x + box.width + 2, from.x)),
      y: Math.max(box.y + 2, Math.min(box.y + box.height - 2, from.y)),
    };
    return distance(from, end) > FAR ? [line([this.inWorld(from), this.inWorld(end)], 'hair', 'soft')] : [];
  }

  /** Before the first line of the label. */
  private markPlace(placed: PlacedLabel): Point {
    const { box, anchor, lines, strong = false } = placed;
    const spare = box.width - markIndent(placed) - textWidth(lines[0]!, strong);
    const start = box.x + (anchor === 'start' ? 0 : anchor === 'end' ? spare : spare / 2);
    return { x: start + (markIndent(placed) - MARK_GAP) / 2, y: box.y + LINE_HEIGHT / 2 };
  }
}

function pieceOf(
  kind: string,
  name: string | undefined,
  shapes: readonly Shape[],
  verdict?: Verdict,
  station?: string,
): Piece {
  return {
    kind,
    ...(name !== undefined && { name }),
    ...(station !== undefined && { station }),
    ...(verdict && { verdict }),
    shapes,
  };
}

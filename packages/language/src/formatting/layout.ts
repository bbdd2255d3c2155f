import { alignColumns, alignComments } from './columns.js';
import { rowsOf, type Row } from './rows.js';
import type { Piece } from './pieces.js';
import type { Style } from './style.js';

/** White space to put between two places of a text. */
export interface Gap {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/**
 * The white space that a text should have: the author's lines, indented by their blocks; one space inside a property, two between
 * properties; at most one empty line at a time. Blocks of one line each that stand together keep the columns in which their
 * author aligned them, and so do comments behind lines.
 */
export function layOut(text: string, pieces: readonly Piece[], style: Style): Gap[] {
  const rows = rowsOf(text, pieces, style);
  alignColumns(rows);
  alignComments(rows);
  return rows
    .flatMap((row, index) => [before(row, rows[index - 1], style), ...inside(row)])
    .concat(atEnd(rows, text, style));
}

export function apply(text: string, gaps: readonly Gap[]): string {
  let result = '';
  let done = 0;
  for (const { start, end, text: white } of gaps) {
    result += text.slice(done, start) + white;
    done = end;
  }
  return result + text.slice(done);
}

function before(row: Row, previous: Row | undefined, { newLine }: Style): Gap {
  const start = previous ? previous.cells.at(-1)!.piece.end : 0;
  const lines = previous ? newLine.repeat(Math.min(row.newLines, 2)) : '';
  return { start, end: row.cells[0]!.piece.start, text: lines + row.indent };
}

function inside({ cells }: Row): Gap[] {
  return cells.slice(1).map(({ piece, gap }, index) => ({
    start: cells[index]!.piece.end,
    end: piece.start,
    text: ' '.repeat(gap),
  }));
}

function atEnd(rows: readonly Row[], text: string, { newLine }: Style): Gap {
  const last = rows.at(-1)?.cells.at(-1)?.piece;
  return { start: last?.end ?? 0, end: text.length, text: last ? newLine : '' };
}

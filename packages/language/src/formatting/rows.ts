import type { Piece } from './pieces.js';
import type { Style } from './style.js';

/** A line of the text as its author broke it. */
export interface Row {
  readonly cells: readonly Cell[];
  /** How many line ends stand before it. */
  readonly newLines: number;
  readonly indent: string;
  /** The whole of it is one block, and a comment perhaps. */
  readonly isBlock: boolean;
}

/** A piece in its row, and how many spaces stand before it. */
export interface Cell {
  readonly piece: Piece;
  /** How deep in blocks it stands. */
  readonly depth: number;
  gap: number;
}

export function rowsOf(text: string, pieces: readonly Piece[], style: Style): Row[] {
  const rows: Row[] = [];
  let depth = 0;
  let line: Cell[] = [];
  let newLines = 0;
  const finish = () => {
    if (line.length > 0) rows.push({ cells: line, newLines, indent: indentOf(line, style), isBlock: isOneBlock(line) });
  };
  pieces.forEach((piece, index) => {
    const previous = pieces[index - 1];
    const ends = text.slice(previous?.end ?? 0, piece.start).match(/\r\n|\n|\r/g)?.length ?? 0;
    if (piece.type === '}') depth--;
    if (ends > 0 || !previous) {
      finish();
      line = [];
      newLines = ends;
    }
    line.push({ piece, depth, gap: line.length > 0 ? gapBetween(previous!, piece) : 0 });
    if (piece.type === '{') depth++;
  });
  finish();
  return rows;
}

function gapBetween(previous: Piece, { type, begins }: Piece): number {
  if (type === ',' || type === '..' || previous.type === '..') return 0;
  if (type === 'LINE_COMMENT') return 2;
  return begins === 'item' && previous.type !== '{' && !previous.isComment ? 2 : 1;
}

/** What goes on from the line before is set in by one more step. */
function indentOf([first]: readonly Cell[], { indent }: Style): string {
  const { piece, depth } = first!;
  const goesOn = !piece.isComment && piece.begins !== 'item' && piece.type !== '}';
  return indent.repeat(Math.max(0, depth) + (goesOn ? 1 : 0));
}

function isOneBlock(line: readonly Cell[]): boolean {
  const said = line.filter(({ piece }) => !piece.isComment);
  const [first, last] = [said[0], said.at(-1)];
  return (
    line.every(({ piece }) => !/[\r\n]/.test(piece.image)) &&
    first?.piece.begins === 'item' &&
    last?.piece.type === '}' &&
    said.filter(({ depth, piece }) => depth === first.depth && piece.type === '}').length === 1 &&
    last.depth === first.depth
  );
}

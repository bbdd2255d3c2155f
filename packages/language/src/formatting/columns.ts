import type { Cell, Row } from './rows.js';

/**
 * Widens gaps so that what its author put into one column stays in one: the opening braces, then the properties one after another, of
 * blocks on consecutive lines.
 */
export function alignColumns(rows: readonly Row[]): void {
  for (const group of groupsOf(rows, ({ isBlock }) => isBlock)) {
    const columns = group.map(({ cells }) => cells.filter((cell) => isColumn(cell, cells[0]!)));
    const most = Math.max(...columns.map(({ length }) => length));
    for (let column = 0; column < most; column++)
      align(group.map((row, index) => ({ row, cell: columns[index]![column] })));
  }
}

/** The same for comments behind consecutive lines. */
export function alignComments(rows: readonly Row[]): void {
  const commentOf = ({ cells }: Row) => (cells.at(-1)!.piece.type === 'LINE_COMMENT' ? cells.at(-1) : undefined);
  for (const group of groupsOf(rows, (row) => row.cells.length > 1 && commentOf(row) !== undefined && isPlain(row)))
    align(group.map((row) => ({ row, cell: commentOf(row) })));
}

interface Place {
  readonly row: Row;
  readonly cell: Cell | undefined;
}

/** Aligns each run of places that stand one below the other in the text as it is. */
function align(places: readonly Place[]): void {
  let run: { readonly row: Row; readonly cell: Cell }[] = [];
  const finish = () => {
    const wanted = Math.max(...run.map(({ row, cell }) => columnOf(row, cell)));
    for (const { row, cell } of run) cell.gap += wanted - columnOf(row, cell);
    run = [];
  };
  for (const { row, cell } of places) {
    const above = run.at(-1);
    if (above && (!cell || sourceColumn(row, cell) !== sourceColumn(above.row, above.cell))) finish();
    if (cell) run.push({ row, cell });
  }
  if (run.length > 0) finish();
}

/** Where a cell will stand, from the beginning of its row's text. */
function columnOf({ cells, indent }: Row, cell: Cell): number {
  const before = cells.slice(0, cells.indexOf(cell));
  return before.reduce((sum, { piece, gap }) => sum + gap + piece.image.length, indent.length) + cell.gap;
}

/** Where it stands now, as if the row were indented as it will be. */
function sourceColumn({ cells, indent }: Row, cell: Cell): number {
  return indent.length + cell.piece.start - cells[0]!.piece.start;
}

function isColumn({ piece, depth }: Cell, first: Cell): boolean {
  return piece.type === '{' ? depth === first.depth : piece.begins === 'item' && depth === first.depth + 1;
}

function isPlain({ cells }: Row): boolean {
  return cells.every(({ piece }) => !/[\r\n]/.test(piece.image));
}

/** Rows that stand together, with no empty or other line between them. */
function groupsOf(rows: readonly Row[], belongs: (row: Row) => boolean): Row[][] {
  const groups: Row[][] = [];
  let last: Row | undefined;
  for (const row of rows) {
    if (belongs(row)) {
      const goesOn =
        last !== undefined &&
        belongs(last) &&
        row.newLines === 1 &&
        (!last.isBlock || !row.isBlock || row.indent === last.indent);
      if (goesOn) groups.at(-1)!.push(row);
      else groups.push([row]);
    }
    last = row;
  }
  return groups;
}

import type { PlacedPiece } from '../assessment.js';
import type { Millimetres } from '../units.js';
import { boxOf, type Box } from './polygon.js';

/** A cell of the floor is this long and wide: some desks fit into one. */
const CELL: Millimetres = 2500;
/** A piece that touches more cells than this is looked at whatever is asked. */
const WIDE = 50;
/** Fewer pieces are looked at one by one. */
const FEW = 12;

/** The pieces whose boxes touch a box, in the order of the list. The box may reach as far as it likes. */
export function piecesNear(pieces: readonly PlacedPiece[], box: Box): readonly PlacedPiece[] {
  if (pieces.length <= FEW) return pieces;
  const { cells, wide, extent } = gridOf(pieces);
  const columns = [cellOf(Math.max(box.left, extent.left)), cellOf(Math.min(box.right, extent.right))] as const;
  const rows = [cellOf(Math.max(box.near, extent.near)), cellOf(Math.min(box.far, extent.far))] as const;
  if ((columns[1] - columns[0] + 1) * (rows[1] - rows[0] + 1) > pieces.length) return pieces;
  const found = new Set(wide);
  for (let column = columns[0]; column <= columns[1]; column++)
    for (let row = rows[0]; row <= rows[1]; row++)
      for (const index of cells.get(`${column} ${row}`) ?? []) found.add(index);
  return [...found].sort((a, b) => a - b).map((index) => pieces[index]!);
}

interface Grid {
  /** Indices of the pieces that touch a cell. */
  readonly cells: ReadonlyMap<string, readonly number[]>;
  /** Indices of pieces that touch too many cells to be in them. */
  readonly wide: readonly number[];
  readonly extent: Box;
}

const grids = new WeakMap<readonly PlacedPiece[], Grid>();

function gridOf(pieces: readonly PlacedPiece[]): Grid {
  const known = grids.get(pieces);
  if (known) return known;
  const cells = new Map<string, number[]>();
  const wide: number[] = [];
  let extent: Box = { left: Infinity, right: -Infinity, near: Infinity, far: -Infinity };
  pieces.forEach(({ outline }, index) => {
    const { left, right, near, far } = boxOf(outline);
    extent = {
      left: Math.min(extent.left, left),
      right: Math.max(extent.right, right),
      near: Math.min(extent.near, near),
      far: Math.max(extent.far, far),
    };
    if ((right - left) * (far - near) > WIDE * CELL * CELL || right - left > WIDE * CELL || far - near > WIDE * CELL) {
      wide.push(index);
      return;
    }
    for (let column = cellOf(left); column <= cellOf(right); column++)
      for (let row = cellOf(near); row <= cellOf(far); row++) {
        const key = `${column} ${row}`;
        const cell = cells.get(key);
        if (cell) cell.push(index);
        else cells.set(key, [index]);
      }
  });
  const grid = { cells, wide, extent };
  grids.set(pieces, grid);
  return grid;
}

function cellOf(at: Millimetres): number {
  return Math.floor(at / CELL);
}

import type { Assessment, PlaceSketch } from '@boothwright/fit';
import { Board } from './board.js';
import type { Point } from './drawing.js';
import { extentOf, grown, type Extent } from './geometry.js';

/** What a plan keeps free around what it shows, in units of the paper. */
export interface Edges {
  readonly top: number;
  readonly sides: number;
  readonly bottom: number;
}

/** A board on which an extent of the plan fits: as wide as said, as tall as it takes, no taller than said, no larger than said. */
export function planBoard(extent: Extent, edges: Edges, most: { width: number; height: number; scale: number }): Board {
  const across = extent.right - extent.left;
  const up = extent.top - extent.bottom;
  const scale = Math.max(
    most.scale,
    across / (most.width - 2 * edges.sides),
    up / (most.height - edges.top - edges.bottom),
  );
  const height = up / scale + edges.top + edges.bottom;
  const spare = most.width * scale - across;
  return new Board({
    left: extent.left - spare / 2,
    top: extent.top + edges.top * scale,
    scale,
    width: most.width,
    height,
  });
}

const NEAR = 3000;
const MARGIN = 200;

/** The booth with the people who work there, the walkways around it, and the wall behind it if that is near. */
export function boothExtent({ layout, sketch }: Assessment): Extent | undefined {
  const { plan } = sketch!;
  const booth = [
    ...layout.pieces.filter(({ kind }) => kind === 'desk' || kind === 'rack').flatMap(({ outline }) => outline),
    ...layout.occupied.flatMap(({ outline }) => outline),
    ...plan.places.flatMap(placePoints),
  ];
  const core = extentOf(booth);
  if (!core) return undefined;
  const near = grown(core, NEAR);
  const ways = plan.walkways.flatMap(({ across }) => (across.every((point) => contains(near, point)) ? across : []));
  return grown(extentOf([...booth, ...ways])!, MARGIN);
}

function placePoints({ at, trunk, screens, controls }: PlaceSketch): Point[] {
  return [
    at,
    ...(trunk ? [trunk.at] : []),
    ...screens.flatMap(({ face }) => face),
    ...controls.flatMap(({ outline }) => outline),
  ];
}

function contains({ left, right, bottom, top }: Extent, { x, y }: Point): boolean {
  return x >= left && x <= right && y >= bottom && y <= top;
}

/** The room with its doors, or stage, rows and pieces where its size is not known; nothing if the pieces stand alone. */
export function roomExtent({ layout, sketch }: Assessment): Extent | undefined {
  const { stage, rows, doors } = sketch!.plan;
  const leaves = doors.flatMap(({ opening, leaf }) => [...opening, leaf]);
  if (layout.room) {
    const corners = [
      { x: 0, y: 0 },
      { x: layout.room.width, y: layout.room.depth },
    ];
    return extentOf([...corners, ...leaves]);
  }
  if (!stage && rows.length === 0) return undefined;
  const pieces = layout.pieces.flatMap(({ outline }) => outline);
  const all = extentOf([...pieces, ...(stage?.outline ?? []), ...rows.flat(), ...leaves]);
  return all && grown(all, MARGIN);
}

import type { Polygon } from '../assessment.js';
import type { Side, Walkway } from '../booth.js';
import type { Millimetres } from '../units.js';
import type { Scene } from '../scene/scene.js';
import { distanceBetween } from './polygon.js';

/** The clear width of a walkway and what it is made of: `from` between bare pieces, less `seat`, less `projection`. */
export interface ClearWidth {
  readonly from: Millimetres;
  readonly seat: Millimetres;
  readonly projection: Millimetres;
  readonly clear: Millimetres;
  /** The pieces or walls at the narrowest place, in words. */
  readonly between: readonly [string, string];
}

interface Obstacle {
  readonly what: string;
  /** The piece without people. */
  readonly bare: Polygon;
  /** The piece with the people who sit at it. */
  readonly outline: Polygon;
}

/** Where a walkway is narrowest; or the landmark or piece that the plan does not place. */
export function clearWidth(scene: Scene, walkway: Walkway): ClearWidth | { readonly unplaced: string } | undefined {
  if (!walkway.between) return undefined;
  const [first, second] = walkway.between.map((side) => obstaclesOf(scene, side));
  if (!first || first.length === 0) return { unplaced: nameOf(walkway.between[0]) };
  if (!second || second.length === 0) return { unplaced: nameOf(walkway.between[1]) };

  const pairs = first.flatMap((a) => second.map((b) => measure(a, b)));
  const narrowest = pairs.reduce((least, pair) => (pair.clear < least.clear ? pair : least));
  const passed = columnsPassed(scene, first, second, narrowest.clear);
  if (passed === undefined) return narrowest;
  return { ...narrowest, projection: narrowest.clear - passed, clear: passed };
}

function measure(a: Obstacle, b: Obstacle): ClearWidth {
  const from = distanceBetween(a.bare, b.bare);
  const clear = distanceBetween(a.outline, b.outline);
  return { from, seat: from - clear, projection: 0, clear, between: [a.what, b.what] };
}

/** A column between the sides leaves the wider of the two gaps beside it. */
function columnsPassed(scene: Scene, first: readonly Obstacle[], second: readonly Obstacle[], clear: Millimetres) {
  const gaps = scene.layout.pieces
    .filter((piece) => piece.kind === 'column')
    .map((column) => ({
      near: Math.min(...first.map((one) => distanceBetween(one.outline, column.outline))),
      far: Math.min(...second.map((one) => distanceBetween(one.outline, column.outline))),
    }))
    .filter(({ near, far }) => near < clear && far < clear)
    .map(({ near, far }) => Math.max(near, far));
  return gaps.length > 0 ? Math.min(...gaps) : undefined;
}

function obstaclesOf(scene: Scene, side: Side): readonly Obstacle[] {
  if (side.kind === 'piece') return boothObstacles(scene).filter(({ what }) => what === side.name);
  switch (side.name) {
    case 'booth':
      return boothObstacles(scene);
    case 'seating':
      return lineObstacle('the nearest row of seats', seatingLine(scene));
    case 'stage':
      return lineObstacle('the stage', scene.booth.room?.stage?.edge?.value);
    default:
      return wallObstacle(scene, side.name);
  }
}

/** Desks with the people who sit at them, and racks that stand on their own; what is under a desk is in nobody's way. */
function boothObstacles(scene: Scene): readonly Obstacle[] {
  const { layout, booth } = scene;
  const tucked = new Set(booth.racks.filter((rack) => rack.under).map((rack) => rack.name));
  return layout.pieces
    .filter((piece) => (piece.kind === 'desk' || piece.kind === 'rack') && !tucked.has(piece.name))
    .map((piece) => {
      const stations = booth.workstations.filter((station) => station.desk?.name === piece.name);
      const seats = layout.occupied.find(({ workstation }) => stations.some((station) => station.name === workstation));
      return {
        what: piece.name,
        bare: piece.outline,
        outline: seats ? joined(piece.outline, seats.outline) : piece.outline,
      };
    });
}

/** A desk and the zone behind it share the near edge: together they are one rectangle. */
function joined(desk: Polygon, seats: Polygon): Polygon {
  return [seats[0]!, seats[1]!, desk[2]!, desk[3]!];
}

/** Walls are long thin pieces just outside the room. */
const FAR: Millimetres = 1e6;

function wallObstacle(scene: Scene, wall: string): readonly Obstacle[] {
  const room = scene.booth.room;
  const width = room?.width?.value;
  const depth = room?.depth?.value;
  const named: Record<string, readonly [string, Polygon | undefined]> = {
    'back-wall': ['the back wall', box(-FAR, FAR, -1000, 0)],
    'left-wall': ['the left wall', box(-1000, 0, -FAR, FAR)],
    'right-wall': ['the right wall', width === undefined ? undefined : box(width, width + 1000, -FAR, FAR)],
    'stage-wall': ['the stage wall', depth === undefined ? undefined : box(-FAR, FAR, depth, depth + 1000)],
  };
  const [what, outline] = named[wall] ?? ['', undefined];
  return outline ? [{ what, bare: outline, outline }] : [];
}

function lineObstacle(what: string, y: Millimetres | undefined): readonly Obstacle[] {
  if (y === undefined) return [];
  const outline = box(-FAR, FAR, y, y + 1000);
  return [{ what, bare: outline, outline }];
}

/** The nearest row is counted from the front of the booth. */
function seatingLine(scene: Scene): Millimetres | undefined {
  const first = scene.booth.room?.seating?.first?.value;
  const fronts = boothObstacles(scene).flatMap(({ bare }) => bare.map((point) => point.y));
  return first === undefined || fronts.length === 0 ? undefined : Math.max(...fronts) + first;
}

function box(left: number, right: number, near: number, far: number): Polygon {
  return [
    { x: left, y: near },
    { x: right, y: near },
    { x: right, y: far },
    { x: left, y: far },
  ];
}

function nameOf(side: Side): string {
  return side.kind === 'piece' ? side.name : side.name.replace('-', ' ');
}

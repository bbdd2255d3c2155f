import type { Polygon, Side, Walkway } from '../booth.js';
import { profileOf } from '../limits/held-to.js';
import type { Scene } from '../scene/scene.js';
import { screenObstacles } from '../scene/sight.js';
import { linesOf } from '../scene/screen-lines.js';
import type { Millimetres } from '../units.js';
import { areaOutline } from './layout.js';
import { gapBetween, type Gap, box, FAR } from './polygon.js';
import { say } from '../words/say.js';

/** The clear width of a walkway and what it is made of: `from` between bare pieces, less `seat`, less `projection`. */
export interface ClearWidth {
  readonly from: Millimetres;
  readonly seat: Millimetres;
  readonly projection: Millimetres;
  readonly clear: Millimetres;
  /** The pieces or walls at the narrowest place, in words. */
  readonly between: readonly [string, string];
  /** What `projection` is: a column, a screen. */
  readonly inTheWay?: string;
  /** The shortest way across, people and things in the way aside; absent where the sides touch. */
  readonly across?: Gap;
  /** The two outlines between which `clear` is measured, what sticks out of a side left aside. */
  readonly outlines: readonly [Polygon, Polygon];
}

/** Something that bounds a walkway. */
export interface Obstacle {
  readonly what: string;
  /** The piece without people. */
  readonly bare: Polygon;
  /** The piece with the people who sit at it. */
  readonly outline: Polygon;
  /** Screens on it that a passer-by would meet. */
  readonly screens: readonly { readonly what: string; readonly outline: Polygon }[];
}

/** Something that stands between the sides of a walkway. */
export interface Narrowing {
  readonly what: string;
  readonly outline: Polygon;
  /** What it leaves beside it, on its wider side. */
  readonly left: Millimetres;
  /** The side of the walkway to which that is left. */
  readonly opposite: Polygon;
}

/** Where a walkway is narrowest; or the landmark or piece that the plan does not place. */
export function clearWidth(scene: Scene, walkway: Walkway): ClearWidth | { readonly unplaced: string } | undefined {
  const ofScene = measured.get(scene) ?? new Map<Walkway, ReturnType<typeof measureWidth>>();
  measured.set(scene, ofScene);
  if (!ofScene.has(walkway)) ofScene.set(walkway, measureWidth(scene, walkway));
  return ofScene.get(walkway);
}

/** Several checks ask for the same. */
const measured = new WeakMap<Scene, Map<Walkway, ReturnType<typeof measureWidth>>>();

function measureWidth(scene: Scene, walkway: Walkway): ClearWidth | { readonly unplaced: string } | undefined {
  const sides = sidesOf(scene, walkway);
  if (!sides || 'unplaced' in sides) return sides;
  const narrowest = narrowestOf(sides);
  const standing = narrowings(scene, walkway).map(({ what, left, outline, opposite }) => ({
    what,
    clear: left,
    outlines: [opposite, outline] as const,
  }));
  const head = profileOf(scene).headroom.value;
  const projecting = (walkway.projections ?? [])
    .filter(({ height }) => (height?.value ?? 0) < head)
    .map(({ reach }) => ({
      what: say`what sticks out`,
      clear: Math.max(0, narrowest.clear - (reach?.value ?? 0)),
      outlines: narrowest.outlines,
    }));
  const least = [...standing, ...projecting].reduce<Pick<ClearWidth, 'clear' | 'outlines'> & { what?: string }>(
    (tightest, one) => (one.clear < tightest.clear ? one : tightest),
    narrowest,
  );
  if (least.what === undefined) return narrowest;
  const projection = narrowest.projection + narrowest.clear - least.clear;
  return { ...narrowest, projection, clear: least.clear, inTheWay: least.what, outlines: least.outlines };
}

/** Columns, wheelchair spaces and loose racks between the sides; each leaves the wider of the two gaps beside it. */
export function narrowings(scene: Scene, walkway: Walkway): readonly Narrowing[] {
  const sides = sidesOf(scene, walkway);
  if (!sides || 'unplaced' in sides) return [];
  const { first, second } = sides;
  const bounding = new Set([...first, ...second].map(({ what }) => what));
  const tucked = tuckedRacks(scene);
  const pieces = scene.layout.pieces
    .filter(({ kind }) => kind === 'column' || kind === 'rack')
    .filter(({ name }) => !bounding.has(name) && !tucked.has(name))
    .map(({ name, outline }) => ({ what: name, outline }));
  const spaces = (scene.booth.room?.wheelchairSpaces ?? []).flatMap((space) => {
    const outline = areaOutline(space);
    return outline ? [{ what: say`the wheelchair space ${space.name}`, outline }] : [];
  });
  return narrowedBy(sides, [...pieces, ...spaces]);
}

/** Those of some things that reach between the sides of a walkway, and what each leaves. */
export function narrowedBy(
  sides: Sides,
  things: readonly { readonly what: string; readonly outline: Polygon }[],
): readonly Narrowing[] {
  const { first, second } = sides;
  const { clear } = narrowestOf(sides);
  return things.flatMap(({ what, outline }) => {
    const [near, far] = [nearestOf(first, outline), nearestOf(second, outline)];
    if (near.distance >= clear || far.distance >= clear) return [];
    const wider = near.distance > far.distance ? near : far;
    return [{ what, outline, left: wider.distance, opposite: wider.outline }];
  });
}

function nearestOf(side: readonly Obstacle[], to: Polygon): { distance: Millimetres; outline: Polygon } {
  const each = side.map(({ outline }) => ({ outline, distance: distance(outline, to) }));
  return each.reduce((least, one) => (one.distance < least.distance ? one : least));
}

interface Sides {
  readonly first: readonly Obstacle[];
  readonly second: readonly Obstacle[];
}

/** What bounds a walkway on either side. */
export function sidesOf(scene: Scene, walkway: Walkway): Sides | { readonly unplaced: string } | undefined {
  if (!walkway.between) return undefined;
  const [first, second] = walkway.between.map((side) => obstaclesOf(scene, side, walkway));
  if (!first || first.length === 0) return { unplaced: nameOf(walkway.between[0]) };
  if (!second || second.length === 0) return { unplaced: nameOf(walkway.between[1]) };
  return { first, second };
}

function narrowestOf({ first, second }: Sides): ClearWidth {
  const pairs = first.flatMap((a) => second.map((b) => measure(a, b)));
  return pairs.reduce((least, pair) => (pair.clear < least.clear ? pair : least));
}

function measure(a: Obstacle, b: Obstacle): ClearWidth {
  const across = gapBetween(a.bare, b.bare);
  const from = across?.distance ?? 0;
  const people = distance(a.outline, b.outline);
  const screens = [
    ...a.screens.map(({ what, outline }) => ({ what, outlines: [outline, b.outline] as const })),
    ...b.screens.map(({ what, outline }) => ({ what, outlines: [a.outline, outline] as const })),
  ]
    .map(({ what, outlines }) => ({ what, outlines, clear: distance(...outlines) }))
    .filter(({ clear }) => clear < people - 1e-6);
  const nearest = screens.sort((one, other) => one.clear - other.clear)[0];
  const clear = nearest?.clear ?? people;
  return {
    from,
    seat: from - people,
    projection: people - clear,
    clear,
    between: [a.what, b.what],
    ...(nearest && { inTheWay: nearest.what }),
    ...(across && { across }),
    outlines: nearest?.outlines ?? [a.outline, b.outline],
  };
}

function distance(a: Polygon, b: Polygon): Millimetres {
  return gapBetween(a, b)?.distance ?? 0;
}

function obstaclesOf(scene: Scene, side: Side, walkway: Walkway): readonly Obstacle[] {
  if (side.kind === 'piece') {
    const own = boothObstacles(scene).filter(({ what }) => what === side.name);
    const other = scene.layout.pieces.filter(({ name }) => name === side.name);
    return own.length > 0 ? own : other.map(({ name, outline }) => plain(name, outline));
  }
  switch (side.name) {
    case 'booth':
      return withSteps(scene, walkway);
    case 'seating':
      return lineObstacle(say`the nearest row of seats`, seatingLine(scene));
    case 'stage':
      return lineObstacle(say`the stage`, scene.booth.room?.stage?.edge?.value);
    default:
      return wallObstacle(scene, side.name);
  }
}

/** Desks with the people who sit at them, and racks that stand on their own; what is under a desk is in nobody's way. */
export function boothObstacles(scene: Scene): readonly Obstacle[] {
  const { layout, booth } = scene;
  const tucked = tuckedRacks(scene);
  const screens = screensMet(scene);
  return layout.pieces
    .filter((piece) => (piece.kind === 'desk' || piece.kind === 'rack') && !tucked.has(piece.name))
    .map((piece) => {
      const stations = booth.workstations.filter((station) => station.desk?.name === piece.name);
      const seats = layout.occupied.find(({ workstation }) => stations.some((station) => station.name === workstation));
      return {
        what: piece.name,
        bare: piece.outline,
        outline: seats ? joined(piece.outline, seats.outline) : piece.outline,
        screens: screens.filter(({ desk }) => desk === piece.name),
      };
    });
}

/** The public walks round a platform, not over its step; operators walk on it. */
function withSteps(scene: Scene, walkway: Walkway): readonly Obstacle[] {
  const booth = boothObstacles(scene);
  if (booth.length === 0 || walkway.users.value === 'operators') return booth;
  const level = profileOf(scene).cable.bevelled.value;
  const steps = scene.booth.platforms
    .filter(({ height }) => height === undefined || height.value > level)
    .flatMap(({ name }) => scene.layout.pieces.filter((piece) => piece.kind === 'platform' && piece.name === name))
    .map(({ name, outline }) => plain(name, outline));
  return [...booth, ...steps];
}

function tuckedRacks(scene: Scene): ReadonlySet<string> {
  return new Set(scene.booth.racks.filter((rack) => rack.under).map((rack) => rack.name));
}

/** A screen in the plan. */
export interface PlacedScreen {
  readonly what: string;
  readonly desk: string;
  /** Its face, from end to end. */
  readonly outline: Polygon;
  /** Its lower edge above the hall's floor, with desk and arm at their lowest. */
  readonly bottom: Millimetres;
}

/** Every screen that can be placed, as a line on the plan. */
export function placedScreens(scene: Scene): readonly PlacedScreen[] {
  return screenObstacles(scene).flatMap(({ what, line, top, onDesk, owner, view }) => {
    if (!owner?.desk || !view) return [];
    const desk = onDesk ? (owner.desk.height?.value.min ?? 0) : 0;
    const floor = top - linesOf(view, 0, 'highest').top;
    const { bottom } = linesOf(view, desk, 'lowest');
    return [{ what, desk: owner.desk.name, outline: line, bottom: floor + bottom }];
  });
}

/** Screens that hang lower than a head. */
function screensMet(scene: Scene): readonly PlacedScreen[] {
  const head = profileOf(scene).headroom.value;
  return placedScreens(scene).filter(({ bottom }) => bottom < head);
}

/** A desk and the zone behind it share the near edge: together they are one rectangle. */
function joined(desk: Polygon, seats: Polygon): Polygon {
  return [seats[0]!, seats[1]!, desk[2]!, desk[3]!];
}

/** A wall of the room as something that bounds a walkway; none if the file does not say where it is. */
export function wallObstacle(scene: Scene, wall: string): readonly Obstacle[] {
  const { right, stage } = scene.layout.walls;
  const named: Record<string, readonly [string, Polygon | undefined]> = {
    'back-wall': [say`the back wall`, box(-FAR, FAR, -1000, 0)],
    'left-wall': [say`the left wall`, box(-1000, 0, -FAR, FAR)],
    'right-wall': [say`the right wall`, right === undefined ? undefined : box(right, right + 1000, -FAR, FAR)],
    'stage-wall': [say`the stage wall`, stage === undefined ? undefined : box(-FAR, FAR, stage, stage + 1000)],
  };
  const [what, outline] = named[wall] ?? ['', undefined];
  return outline ? [plain(what, outline)] : [];
}

function lineObstacle(what: string, y: Millimetres | undefined): readonly Obstacle[] {
  return y === undefined ? [] : [plain(what, box(-FAR, FAR, y, y + 1000))];
}

function plain(what: string, outline: Polygon): Obstacle {
  return { what, bare: outline, outline, screens: [] };
}

/** The nearest row is counted from the front of the booth. */
export function seatingLine(scene: Scene): Millimetres | undefined {
  const first = scene.booth.room?.seating?.first?.value;
  const fronts = boothObstacles(scene).flatMap(({ bare }) => bare.map((point) => point.y));
  return first === undefined || fronts.length === 0 ? undefined : Math.max(...fronts) + first;
}

function nameOf(side: Side): string {
  return side.kind === 'piece' ? side.name : side.name.replace('-', ' ');
}

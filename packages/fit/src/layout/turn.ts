import type { PlanPoint, Polygon, Walkway } from '../booth.js';
import type { Scene } from '../scene/scene.js';
import type { Millimetres } from '../units.js';
import { boothObstacles, clearWidth, seatingLine, sidesOf, wallObstacle, type Obstacle } from './clear-width.js';
import { areaOutline } from './layout.js';
import { clip, gapBetween, spanAlong, box, FAR } from './polygon.js';
import { say } from '../words/say.js';

/** A walkway that turns back round the end of what it runs along. */
export interface Turn {
  /** How wide that is, from the lane before the turn to the lane after it; absent where the sides touch, and no lane is left. */
  readonly width?: Millimetres;
  readonly before: Millimetres;
  /** The roomier of the two ends. */
  readonly end?: Lane;
  readonly after?: Lane;
  /** The room beside an end is not known. */
  readonly openEnd: boolean;
}

export interface Lane {
  readonly clear: Millimetres;
  /** What narrows it. */
  readonly what: string;
}

/** The turn of a walkway, from the plan; or what the plan does not place. */
export function turnOf(scene: Scene, walkway: Walkway): Turn | { readonly unplaced: string } | undefined {
  const sides = sidesOf(scene, walkway);
  const measured = clearWidth(scene, walkway);
  if (!sides || !measured) return undefined;
  if ('unplaced' in sides) return sides;
  if ('unplaced' in measured) return measured;
  const isSecond = walkway.between![0].kind === 'landmark' && walkway.between![0].name !== 'booth';
  const element = isSecond ? sides.second : sides.first;
  const { across, clear } = measured;
  if (!across || across.distance < CLOSED) return { before: clear, openEnd: false };
  const sign = (isSecond ? -1 : 1) / across.distance;
  const toward = { x: (across.to.x - across.from.x) * sign, y: (across.to.y - across.from.y) * sign };
  const along = { x: -toward.y, y: toward.x };
  const [low, high] = spanOf(element, toward);
  const ends = [along, opposite(along)].map((way) => beyondEnd(scene, element, way, { toward, low, high }));
  const known = ends.flatMap((end) => end ?? []);
  return {
    width: high - low,
    before: clear,
    ...withLane('end', roomiest(known)),
    ...withLane('after', beyondBack(scene, element, toward, along)),
    openEnd: known.length < ends.length,
  };
}

const CLOSED: Millimetres = 1e-3;

function withLane<K extends 'end' | 'after'>(key: K, lane: Lane | undefined): Partial<Record<K, Lane>> {
  return lane ? ({ [key]: lane } as Record<K, Lane>) : {};
}

function roomiest(lanes: readonly Lane[]): Lane | undefined {
  return lanes.reduce<Lane | undefined>((best, lane) => (best && best.clear >= lane.clear ? best : lane), undefined);
}

/** The strip that lies straight beside an end: columns count outside it too, for they stand in the turn. */
interface Strip {
  readonly toward: PlanPoint;
  readonly low: Millimetres;
  readonly high: Millimetres;
}

function beyondEnd(scene: Scene, element: readonly Obstacle[], way: PlanPoint, strip: Strip): Lane | undefined {
  const [, edge] = spanOf(element, way);
  const beside = othersThan(scene, element).map(({ what, outline, corner }) => {
    const beyond = clip(outline, way, edge);
    const inStrip = clip(clip(beyond, strip.toward, strip.low + 1), opposite(strip.toward), 1 - strip.high);
    return { what, outline: corner ? beyond : inStrip };
  });
  return nearest(element, beside);
}

function beyondBack(scene: Scene, element: readonly Obstacle[], toward: PlanPoint, along: PlanPoint): Lane | undefined {
  const back = opposite(toward);
  const [, edge] = spanOf(element, back);
  const [from, to] = spanOf(element, along);
  const behind = othersThan(scene, element).map(({ what, outline }) => {
    const beside = clip(clip(outline, along, from + 1), opposite(along), 1 - to);
    return { what, outline: clip(beside, back, edge) };
  });
  return nearest(element, behind);
}

/** All that may narrow a turn: walls, rows, the stage, pieces and wheelchair spaces. */
function othersThan(scene: Scene, element: readonly Obstacle[]) {
  const own = new Set(element.map(({ what }) => what));
  const { room } = scene.booth;
  const walls = ['back-wall', 'left-wall', 'right-wall', 'stage-wall'].flatMap((wall) => wallObstacle(scene, wall));
  const rows = [
    { what: say`the nearest row of seats`, y: seatingLine(scene) },
    { what: say`the stage`, y: room?.stage?.edge?.value },
  ].flatMap(({ what, y }) => (y === undefined ? [] : [{ what, outline: fromLine(y) }]));
  const pieces = boothObstacles(scene).filter(({ what }) => !own.has(what));
  const columns = scene.layout.pieces.filter(({ kind }) => kind === 'column');
  const spaces = (room?.wheelchairSpaces ?? []).flatMap((space) => {
    const outline = areaOutline(space);
    return outline ? [{ what: say`the wheelchair space ${space.name}`, outline }] : [];
  });
  return [
    ...[...walls, ...rows, ...pieces].map(({ what, outline }) => ({ what, outline, corner: false })),
    ...columns.map(({ name, outline }) => ({ what: name, outline, corner: true })),
    ...spaces.map(({ what, outline }) => ({ what, outline, corner: true })),
  ];
}

function fromLine(y: Millimetres): Polygon {
  return box(-FAR, FAR, y, y + 1000);
}

function nearest(
  element: readonly Obstacle[],
  others: readonly { what: string; outline: Polygon }[],
): Lane | undefined {
  const lanes = others
    .filter(({ outline }) => outline.length >= 3)
    .map(({ what, outline }) => {
      const own = element.flatMap((one) => [one.outline, ...one.screens.map((screen) => screen.outline)]);
      return { what, clear: Math.min(...own.map((each) => gapBetween(each, outline)?.distance ?? 0)) };
    });
  return lanes.reduce<Lane | undefined>(
    (least, lane) => (least && least.clear <= lane.clear ? least : lane),
    undefined,
  );
}

function spanOf(element: readonly Obstacle[], axis: PlanPoint): [number, number] {
  return spanAlong(
    element.flatMap(({ bare }) => bare),
    axis,
  );
}

function opposite({ x, y }: PlanPoint): PlanPoint {
  return { x: -x, y: -y };
}

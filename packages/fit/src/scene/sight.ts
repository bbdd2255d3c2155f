import type { Origin, PlanPoint, Polygon } from '../booth.js';
import { placedDesk } from '../layout/layout.js';
import { pointIn, FAR } from '../layout/polygon.js';
import { placeAlong, type Station } from '../stations/station.js';
import { radians, type Millimetres } from '../units.js';
import type { Scene } from './scene.js';
import { linesOf } from './screen-lines.js';
import { viewsAt, type View } from './viewing.js';
import { say } from '../words/say.js';

/** A seated person's eye above the floor (Long, Architectural Acoustics, ch. 17: 1120 to 1220). */
export const SEATED_EYE: Millimetres = 1200;
/** Eye to crown, 95th percentile: 5 in (Panero & Zelnik 1979, 9.3). */
export const EYE_TO_CROWN: Millimetres = 127;
/** A standing person as an obstacle, and a wheelchair user's eye (CEN/TR 15913:2009). */
export const STANDING_CROWN: Millimetres = 1800;
export const WHEELCHAIR_EYE: Millimetres = 1150;
/** A standing spectator's eye (DIN EN 13200-1:2019). */
export const STANDING_EYE: Millimetres = 1600;
/** How wide a person stands in the way: 5th to 95th percentile 478 to 579 nude (Panero & Zelnik 1979, 8.2). */
const PERSON_WIDTH: Millimetres = 530;

/** Something upright that a line of sight passes over: a line on the plan with a top edge. */
export interface Obstacle {
  readonly what: string;
  readonly plural?: boolean;
  readonly line: readonly [PlanPoint, PlanPoint];
  /** Top above the hall's floor, but for the desk's height if `onDesk`; of a screen on an arm that is raised as high as it goes. */
  readonly top: Millimetres;
  readonly onDesk: boolean;
  /** The station whose screen it is, and the number that sets its height. */
  readonly owner?: Station;
  readonly view?: View;
  readonly origin?: Origin;
}

/** Height of the floor under a piece: a platform lifts desk and people together. */
export function floorAt(scene: Scene, point: PlanPoint): Millimetres {
  const under = scene.booth.platforms.filter(({ at, width, depth }) => {
    if (!at || !width || !depth) return false;
    const { x, y } = at.value;
    return point.x >= x - 1 && point.x <= x + width.value + 1 && point.y >= y - 1 && point.y <= y + depth.value + 1;
  });
  return Math.max(0, ...under.map(({ height }) => height?.value ?? 0));
}

/** Where a station's eyes are on the plan; undefined if its desk is not placed. */
export function eyePlace(scene: Scene, station: Station): PlanPoint | undefined {
  const placed = station.desk && placedDesk(scene.layout, station.desk);
  if (!placed) return undefined;
  return pointIn(placed.frame, placeAlong(station), station.workstation.lean.value);
}

/** Every screen that can be placed. */
export function screenObstacles(scene: Scene): readonly Obstacle[] {
  return scene.stations.flatMap((station) => {
    const placed = station.desk && placedDesk(scene.layout, station.desk);
    const eye = eyePlace(scene, station);
    if (!placed || !eye) return [];
    const floor = floorAt(scene, eye);
    return viewsAt(station).views.map((view): Obstacle => {
      const along = placeAlong(station) + view.aside;
      const away = station.workstation.lean.value + view.ahead;
      const facing = radians(view.bearing + view.swing);
      const half = view.size.width / 2;
      const ends = [-half, half].map((side) =>
        pointIn(placed.frame, along + side * Math.cos(facing), away - side * Math.sin(facing)),
      );
      const onDesk = view.use.height!.over === 'desk';
      return {
        what: view.name,
        line: [ends[0]!, ends[1]!],
        top: linesOf(view, 0, 'highest').top + floor,
        onDesk,
        owner: station,
        view,
        origin: view.use.monitor.origin,
      };
    });
  });
}

/** Racks that stand on the floor, as the outline they fill. */
export function rackObstacles(scene: Scene): readonly Obstacle[] {
  return scene.booth.racks.flatMap((rack) => {
    const piece = scene.layout.pieces.find(({ name, kind }) => kind === 'rack' && name === rack.name);
    if (!piece || rack.under || !rack.units) return [];
    const top = rack.units.value * RACK_UNIT + rack.frame.value + floorAt(scene, piece.outline[0]!);
    return sidesOf(piece.outline).map((line): Obstacle => ({
      what: rack.name,
      line,
      top,
      onDesk: false,
      origin: rack.origin,
    }));
  });
}

/** EIA-310. */
export const RACK_UNIT: Millimetres = 44.45;

/** Rows of people in front of the booth, across the whole room. */
export function crowdObstacles(scene: Scene): readonly Obstacle[] {
  const seating = scene.booth.room?.seating;
  if (!seating?.first) return [];
  const fronts = scene.layout.deskPieces.flatMap(({ outline }) => outline.map(({ y }) => y));
  if (fronts.length === 0) return [];
  const rows = seating.pitch ? (seating.rows?.value ?? 1) : 1;
  const top = seating.standing ? STANDING_CROWN : SEATED_EYE + EYE_TO_CROWN;
  const edge = scene.booth.room?.stage?.edge?.value ?? Infinity;
  return Array.from({ length: Math.min(rows, 500) }, (_, row) => {
    const y = Math.max(...fronts) + seating.first!.value + row * (seating.pitch?.value ?? 0);
    const line = [
      { x: -FAR, y },
      { x: FAR, y },
    ] as const;
    return {
      plural: true,
      what: crowdWord(seating.standing, rows > 1 ? row + 1 : undefined),
      line,
      top,
      onDesk: false,
      origin: seating.origin,
    };
  }).filter(({ line }) => line[0].y < edge);
}

function crowdWord(standing: boolean, row: number | undefined): string {
  if (row === undefined) return standing ? say`people who stand in front` : say`people on seats in front`;
  return standing ? say`people who stand in row ${row}` : say`people on seats in row ${row}`;
}

/** A person at a place, facing any way. */
export function personObstacle(
  what: string,
  place: PlanPoint,
  toward: PlanPoint,
  top: Millimetres,
  origin: Origin,
): Obstacle {
  const length = Math.hypot(toward.x - place.x, toward.y - place.y) || 1;
  const across = { x: (toward.y - place.y) / length, y: -(toward.x - place.x) / length };
  const half = PERSON_WIDTH / 2;
  const line = [
    { x: place.x - half * across.x, y: place.y - half * across.y },
    { x: place.x + half * across.x, y: place.y + half * across.y },
  ] as const;
  return { what, line, top, onDesk: false, origin };
}

/** Where on the way from `from` (0) to `to` (1) the line of sight crosses an obstacle; undefined if it passes by. */
export function crossing(from: PlanPoint, to: PlanPoint, [p, q]: readonly [PlanPoint, PlanPoint]): number | undefined {
  const way = { x: to.x - from.x, y: to.y - from.y };
  const side = { x: q.x - p.x, y: q.y - p.y };
  const turn = way.x * side.y - way.y * side.x;
  if (turn === 0) return undefined;
  const start = { x: p.x - from.x, y: p.y - from.y };
  const along = (start.x * side.y - start.y * side.x) / turn;
  const across = (start.x * way.y - start.y * way.x) / turn;
  return along > 1e-9 && along < 1 && across >= 0 && across <= 1 ? along : undefined;
}

/** Points along the stage's front edge to look at: its middle and both ends, and between. */
export function stageTargets(scene: Scene, from: PlanPoint): readonly PlanPoint[] {
  const { room } = scene.booth;
  const edge = room?.stage?.edge?.value;
  if (edge === undefined) return [];
  const width = room?.stage?.width?.value ?? room?.width?.value;
  const middle = room?.width ? room.width.value / 2 : from.x;
  if (width === undefined) return [{ x: middle, y: edge }];
  return Array.from({ length: TARGETS }, (_, index) => ({
    x: middle + width * (index / (TARGETS - 1) - 0.5),
    y: edge,
  }));
}

/** Odd, so that the middle is among them. */
const TARGETS = 9;

/** Which part of the stage's front edge a target is. */
export function partOfStage(targets: readonly PlanPoint[], target: PlanPoint): string {
  const place = targets.indexOf(target) / Math.max(1, targets.length - 1);
  if (targets.length === 1 || (place > 0.3 && place < 0.7)) return say`the middle of the stage`;
  return place <= 0.3 ? say`the left of the stage` : say`the right of the stage`;
}

/**
 * The sight-line value C: how far the line from an eye to a focal point passes above the eye of the person in front.
 * C = D·(N + R)/(D + T) − R, with D the level distance of the front eye from the focal point, T the row depth, R the
 * front eye's height above the focal point and N the riser (P. Shepherd, University of Bath; Green Guide 12.3).
 */
export function cValue(part: {
  readonly D: number;
  readonly T: number;
  readonly R: number;
  readonly N: number;
}): Millimetres {
  return (part.D * (part.N + part.R)) / (part.D + part.T) - part.R;
}

function sidesOf(outline: Polygon): (readonly [PlanPoint, PlanPoint])[] {
  return outline.map((point, index) => [point, outline[(index + 1) % outline.length]!] as const);
}

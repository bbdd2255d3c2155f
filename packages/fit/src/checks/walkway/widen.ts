import type { Remedy } from '../../assessment.js';
import type { Booth, PlanPoint, Walkway } from '../../booth.js';
import { typeLength } from '../../format.js';
import { clearWidth, type ClearWidth } from '../../layout/clear-width.js';
import { layOut } from '../../layout/layout.js';
import type { Scene } from '../../scene/scene.js';
import { TOLERANCE, type Millimetres } from '../../units.js';
import { sizeUp } from '../sizes.js';
import { say } from '../../words/say.js';

/** What makes a walkway so wide: the whole booth moved off the wall, or the nearest row of seats farther from it. */
export function widen(scene: Scene, walkway: Walkway, measured: ClearWidth, wanted: Millimetres): Remedy[] {
  const by = sizeUp(wanted - measured.clear, scene.booth.show);
  const remedy = runsAlong(walkway, 'seating') ? moveSeats(scene, by) : moveBooth(scene, walkway, measured, by);
  if (!remedy) return [];
  const { booth, ...rest } = remedy;
  const after = clearWidth({ ...scene, booth, layout: layOut(booth) }, walkway);
  return after && !('unplaced' in after) && after.clear >= wanted - TOLERANCE ? [rest] : [];
}

/** A remedy, and the booth as it is then. */
type Tried = Remedy & { readonly booth: Booth };

function moveSeats({ booth, length }: Scene, by: Millimetres): Tried | undefined {
  const { room } = booth;
  const first = room?.seating?.first;
  if (!first?.origin) return undefined;
  const value = sizeUp(first.value + by, booth.show);
  return {
    title: say`Keep the nearest row of seats ${length(value)} from the booth`,
    changes: [{ origin: first.origin, text: typeLength(value, booth.show) }],
    safe: false,
    booth: { ...booth, room: { ...room!, seating: { ...room!.seating!, first: { ...first, value } } } },
  };
}

const walls = ['back-wall', 'left-wall', 'right-wall', 'stage-wall', 'stage'] as const;

function moveBooth(
  { booth, length }: Scene,
  walkway: Walkway,
  { across, between }: ClearWidth,
  by: Millimetres,
): Tried | undefined {
  const isWall = walkway.between!.map((side) => side.kind === 'landmark' && walls.some((wall) => wall === side.name));
  if (!across || across.distance === 0 || isWall[0] === isWall[1]) return undefined;
  const { from, to, distance } = across;
  const sign = (isWall[0] ? 1 : -1) / distance;
  const move = { x: (to.x - from.x) * sign * by, y: (to.y - from.y) * sign * by };
  const placements = booth.placements.map((placement) => ({
    ...placement,
    at: { ...placement.at, value: { x: placement.at.value.x + move.x, y: placement.at.value.y + move.y } },
  }));
  const changes = placements.flatMap(({ at }) =>
    at.origin ? [{ origin: at.origin, text: typePoint(at.value, booth) }] : [],
  );
  if (changes.length < placements.length) return undefined;
  return {
    title: say`Move the booth ${length(by)} away from ${between[isWall[0] ? 0 : 1]}`,
    changes,
    safe: false,
    booth: { ...booth, placements },
  };
}

function runsAlong(walkway: Walkway, landmark: string): boolean {
  return walkway.between!.some((side) => side.kind === 'landmark' && side.name === landmark);
}

function typePoint({ x, y }: PlanPoint, { show }: Booth): string {
  return `${typeLength(x, show)}, ${typeLength(y, show)}`;
}

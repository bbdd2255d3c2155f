import type { Door, PlanPoint, Room, Skirt } from '../booth.js';
import { clearWidth } from '../layout/clear-width.js';
import { areaOutline, placedDoor } from '../layout/layout.js';
import { distanceBetween, box } from '../layout/polygon.js';
import type { Scene } from '../scene/scene.js';
import { crowdObstacles } from '../scene/sight.js';
import { wayAcross } from './across.js';
import { STAGE_DEPTH, type DoorSketch, type PlanSketch, type Segment } from './figures.js';
import { placesOf } from './places.js';

export function planSketch(scene: Scene): PlanSketch {
  const { room } = scene.booth;
  const stage = room && stageOf(room);
  const edge = room?.balcony?.edge?.value;
  const balcony = edge === undefined ? undefined : acrossRoom(scene, edge);
  return {
    ...(stage && { stage }),
    doors: (room?.doors ?? []).flatMap((door) => doorSketch(door, room!)),
    rows: crowdObstacles(scene)
      .map(({ line: [{ y }] }) => acrossRoom(scene, y))
      .filter((row) => row !== undefined),
    ...(balcony && { balcony }),
    wheelchairSpaces: (room?.wheelchairSpaces ?? []).flatMap((space) => {
      const outline = areaOutline(space);
      return outline ? [{ name: space.name, outline }] : [];
    }),
    watchers: (room?.watchers ?? []).flatMap(({ name, at }) => (at ? [{ name, at: at.value }] : [])),
    places: placesOf(scene),
    walkways: scene.booth.walkways.flatMap((walkway) => {
      const width = clearWidth(scene, walkway);
      const across = width && !('unplaced' in width) && wayAcross(...width.outlines, width.clear);
      return across ? [{ name: walkway.name, across }] : [];
    }),
    skirts: scene.booth.skirts.map((skirt) => ({ name: skirt.name, runs: runsOf(scene, skirt) })),
  };
}

function stageOf({ stage, width, depth }: Room): PlanSketch['stage'] {
  const wide = stage?.width?.value ?? width?.value;
  if (!stage?.edge || wide === undefined) return undefined;
  const middle = (width?.value ?? wide) / 2;
  const near = stage.edge.value;
  const far = Math.max(near, depth?.value ?? near + STAGE_DEPTH);
  const [left, right] = [middle - wide / 2, middle + wide / 2];
  return { outline: box(left, right, near, far), widthIsSaid: stage.width !== undefined };
}

function doorSketch(door: Door, room: Room): DoorSketch[] {
  const placed = placedDoor(door, room);
  return placed ? [{ name: door.name, opens: door.opens.value, ...placed }] : [];
}

/** A line across the room; where its width is not said, over all that is placed and a little more. Nothing if nothing is placed either. */
function acrossRoom(scene: Scene, y: number): Segment | undefined {
  const width = scene.booth.room?.width?.value;
  if (width === undefined && scene.layout.pieces.length === 0) return undefined;
  const xs = scene.layout.pieces.flatMap(({ outline }) => outline.map(({ x }) => x));
  const left = width === undefined ? Math.min(...xs) - BESIDE : 0;
  const right = width ?? Math.max(...xs) + BESIDE;
  return [
    { x: left, y },
    { x: right, y },
  ];
}

const BESIDE = 1000;
/** Two ends this near to one another meet, and need no cloth between them. */
const MEETING = 5;

/** The edges that a skirt hangs on: far edges, and ends at which no other desk of the skirt stands. */
function runsOf(scene: Scene, { on, sides }: Skirt): readonly Segment[] {
  const desks = on.flatMap(({ name }) => scene.layout.deskPieces.filter((piece) => piece.name === name));
  const wants = new Set(sides.value);
  return desks.flatMap((desk) => {
    const [nearLeft, nearRight, farRight, farLeft] = desk.outline as [PlanPoint, PlanPoint, PlanPoint, PlanPoint];
    const isFree = ([p, q]: Segment) => {
      const middle = { x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 };
      return desks.every((other) => other === desk || distanceBetween([middle, middle], other.outline) > MEETING);
    };
    const left: Segment[] = wants.has('ends') || wants.has('left-end') ? [[nearLeft, farLeft]] : [];
    const right: Segment[] = wants.has('ends') || wants.has('right-end') ? [[nearRight, farRight]] : [];
    const front: Segment[] = wants.has('front') ? [[farLeft, farRight]] : [];
    return [...front, ...[...left, ...right].filter(isFree)];
  });
}

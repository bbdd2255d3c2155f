import { withName } from '../lookup.js';
import type { LayoutFigures, PlacedPiece } from '../assessment.js';
import type { Booth, Desk, Door, FloorArea, PlanPoint, Polygon, Rack, Room, Workstation } from '../booth.js';
import type { Millimetres } from '../units.js';
import { frameAt, pointIn, rectangleIn, type Frame } from './polygon.js';

/** An occupied seat reaches this far from the desk edge it stands at: 19 in (IBC 2018 1029.13.1, 2021 1030.13.1). */
export const OCCUPIED_SEAT: Millimetres = 19 * 25.4;

/** Where everything stands. */
export interface Layout extends LayoutFigures {
  /** By desk or rack name. */
  readonly frames: ReadonlyMap<string, Frame>;
  readonly deskPieces: readonly PlacedPiece[];
  /** How far the right wall is from the left one, and the stage's from the back one: each if the file says so. */
  readonly walls: { readonly right?: Millimetres; readonly stage?: Millimetres };
}

export function layOut(booth: Booth): Layout {
  const frames = placedFrames(booth);
  const deskPieces = booth.desks.flatMap((desk) => pieceOf(frames.get(desk.name), desk, 'desk'));
  const standing = booth.racks.flatMap((rack) => pieceOf(frames.get(rack.name), rack, 'rack'));
  const platforms = booth.platforms.flatMap((platform): PlacedPiece[] => {
    if (!platform.at || !platform.width || !platform.depth) return [];
    return pieceOf(frameAt(platform.at.value, 0), platform, 'platform');
  });
  const columns = (booth.room?.columns ?? []).flatMap((column): PlacedPiece[] => {
    if (!column.at) return [];
    return pieceOf(frameAt(column.at.value, 0), column, 'column');
  });
  const room = booth.room;
  return {
    ...(room?.width && room.depth && { room: { width: room.width.value, depth: room.depth.value } }),
    walls: {
      ...(room?.width && { right: room.width.value }),
      ...(room?.depth && { stage: room.depth.value }),
    },
    frames,
    deskPieces,
    pieces: [...deskPieces, ...standing, ...columns, ...platforms],
    occupied: booth.workstations.flatMap((station) => occupiedBy(station, booth.desks, frames)),
    doorSwings: (room?.doors ?? []).flatMap((door) => swingOf(door, room!)),
  };
}

/** The desk's frame and size, if the file places it and sizes it. */
export function placedDesk(layout: Layout, desk: Desk): { frame: Frame; width: number; depth: number } | undefined {
  const frame = layout.frames.get(desk.name);
  if (!frame || !desk.width || !desk.depth) return undefined;
  return { frame, width: desk.width.value, depth: desk.depth.value };
}

/** The floor that a wheelchair space keeps, if the file says where. */
export function areaOutline({ at, width, depth }: FloorArea): Polygon | undefined {
  return at && rectangleIn(frameAt(at.value, 0), [0, width.value], [0, depth.value]);
}

function placedFrames(booth: Booth): Map<string, Frame> {
  const frames = new Map<string, Frame>();
  const widths = new Map<string, Millimetres | undefined>([
    ...booth.desks.map((desk): [string, number | undefined] => [desk.name, desk.width?.value]),
    ...booth.racks.map((rack): [string, number | undefined] => [rack.name, rack.width?.value]),
  ]);
  for (const placement of booth.placements) {
    const start = frameAt(placement.at.value, placement.turn.value);
    let along = 0;
    for (const piece of placement.pieces) {
      frames.set(piece.name, { ...start, origin: pointIn(start, along, 0) });
      along += widths.get(piece.name) ?? 0;
    }
  }
  for (const rack of booth.racks) {
    const desk = rack.under && frames.get(rack.under.desk.name);
    if (!rack.under || !desk) continue;
    frames.set(rack.name, { ...desk, origin: pointIn(desk, rack.under.at.value, rack.under.setback.value) });
  }
  return frames;
}

type Sized = Pick<Desk | Rack, 'name' | 'origin' | 'width' | 'depth'>;

function pieceOf(frame: Frame | undefined, piece: Sized, kind: PlacedPiece['kind']): PlacedPiece[] {
  if (!frame || !piece.width || !piece.depth) return [];
  const outline = rectangleIn(frame, [0, piece.width.value], [0, piece.depth.value]);
  return [{ name: piece.name, kind, outline, origin: piece.origin }];
}

/** The rule measures from a line along the whole edge, whether or not a chair stands there. */
function occupiedBy(workstation: Workstation, desks: readonly Desk[], frames: ReadonlyMap<string, Frame>) {
  const desk = withName(desks, workstation.desk?.name);
  const frame = desk && frames.get(desk.name);
  if (!workstation.seat || !frame || !desk.width) return [];
  const outline = rectangleIn(frame, [0, desk.width.value], [-OCCUPIED_SEAT, 0]);
  return [{ workstation: workstation.name, outline }];
}

/**
 * The quarter circle that a leaf sweeps into the room, as a polygon that holds it: it touches the circle along the wall, along
 * the open leaf and between, and its corners stand out by a thousandth of the leaf.
 */
function swingOf(door: Door, room: Room): { door: string; outline: Polygon }[] {
  if (door.opens.value === 'out' || !door.wall || !door.at || !door.width) return [];
  const frame = wallFrame(door.wall.value, room);
  if (!frame) return [];
  const near = door.at.value;
  const width = door.width.value;
  const hingeIsNear = nearHinge(door);
  const hinge = hingeIsNear ? near : near + width;
  const direction = hingeIsNear ? 1 : -1;
  const onArc = (angle: number, radius: Millimetres) =>
    pointIn(frame, hinge + direction * radius * Math.cos(angle), radius * Math.sin(angle));
  const step = Math.PI / 2 / SWING_STEPS;
  const corners = Array.from({ length: SWING_STEPS }, (_, index) =>
    onArc((index + 0.5) * step, width / Math.cos(step / 2)),
  );
  const open = pointIn(frame, hinge, width);
  return [{ door: door.name, outline: [pointIn(frame, hinge, 0), onArc(0, width), ...corners, open] }];
}

const SWING_STEPS = 16;

/** Where a door is in its wall, and where the end of its leaf stands when it is open at a right angle. */
export interface PlacedDoor {
  readonly opening: readonly [PlanPoint, PlanPoint];
  readonly hinge: PlanPoint;
  readonly leaf: PlanPoint;
}

/** Undefined if the file does not say where the door is. */
export function placedDoor(door: Door, room: Room): PlacedDoor | undefined {
  const frame = door.wall && wallFrame(door.wall.value, room);
  if (!frame || !door.at || !door.width) return undefined;
  const near = door.at.value;
  const width = door.width.value;
  const hinge = nearHinge(door) ? near : near + width;
  return {
    opening: [pointIn(frame, near, 0), pointIn(frame, near + width, 0)],
    hinge: pointIn(frame, hinge, 0),
    leaf: pointIn(frame, hinge, door.opens.value === 'in' ? width : -width),
  };
}

/** Along a wall as `at` counts, and into the room. */
function wallFrame(wall: string, room: Room): Frame | undefined {
  const width = room.width?.value;
  const depth = room.depth?.value;
  if (wall === 'back-wall') return { origin: { x: 0, y: 0 }, right: { x: 1, y: 0 }, forward: { x: 0, y: 1 } };
  if (wall === 'left-wall') return { origin: { x: 0, y: 0 }, right: { x: 0, y: 1 }, forward: { x: 1, y: 0 } };
  if (wall === 'right-wall' && width !== undefined) {
    return { origin: { x: width, y: 0 }, right: { x: 0, y: 1 }, forward: { x: -1, y: 0 } };
  }
  if (wall === 'stage-wall' && depth !== undefined) {
    return { origin: { x: 0, y: depth }, right: { x: 1, y: 0 }, forward: { x: 0, y: -1 } };
  }
  return undefined;
}

/** Whether the hinge stands at the end where `at` starts. A person who faces the back wall has the left wall on the right. */
function nearHinge(door: Door): boolean {
  const startIsRight = door.wall?.value === 'back-wall' || door.wall?.value === 'right-wall';
  return (door.hinge.value === 'right') === startIsRight;
}

import type {
  Cable,
  Column,
  Door,
  FloorArea,
  Monitor,
  Platform,
  Rack,
  ScreenUse,
  Side,
  Skirt,
  Walkway,
} from '../booth.js';
import { byDefault, given, nowhere, fixed } from './booths.js';

/** What stands on the floor and on desks, for tests. Lengths in millimetres. */
const landmarks = ['booth', 'stage', 'seating', 'back-wall', 'left-wall', 'right-wall', 'stage-wall'] as const;

export function aWalkway(name: string, between: readonly [string, string], parts: Partial<Walkway> = {}): Walkway {
  return {
    name,
    origin: nowhere,
    between: [sideOf(between[0]), sideOf(between[1])],
    users: byDefault('public' as const),
    seats: byDefault('none' as const),
    turns: false,
    ...parts,
  };
}

function sideOf(name: string): Side {
  const landmark = landmarks.find((each) => each === name);
  return landmark ? { kind: 'landmark', name: landmark, origin: nowhere } : { kind: 'piece', name, origin: nowhere };
}

export function aColumn(name: string, x: number, y: number, width: number, depth: number): Column {
  return { name, origin: nowhere, at: given({ x, y }), width: given(width), depth: given(depth) };
}

export function aWheelchairSpace(name: string, x: number, y: number, width = 914, depth = 1220): FloorArea {
  return { name, origin: nowhere, at: given({ x, y }), width: given(width), depth: given(depth) };
}

export function aDoor(
  name: string,
  wall: NonNullable<Door['wall']>['value'],
  at: number,
  width: number,
  parts: Partial<Door> = {},
): Door {
  return {
    name,
    origin: nowhere,
    wall: given(wall),
    at: given(at),
    width: given(width),
    opens: byDefault('in' as const),
    hinge: byDefault('left' as const),
    ...parts,
  };
}

export function aRack(name: string, units: number, parts: Partial<Rack> = {}): Rack {
  return {
    name,
    origin: nowhere,
    units: given(units),
    width: given(550),
    depth: given(500),
    frame: byDefault(0),
    plugs: byDefault(0),
    ...parts,
  };
}

/** Stands under a desk. */
export function under(desk: string, at = 0, setback = 0): Pick<Rack, 'under'> {
  return { under: { desk: { name: desk, origin: nowhere }, at: given(at), setback: given(setback) } };
}

/** A monitor so wide and so high. */
export function aMonitorOf(name: string, width: number, height: number, parts: Partial<Monitor> = {}): Monitor {
  return {
    name,
    origin: nowhere,
    diagonal: given(Math.hypot(width, height)),
    aspect: given({ across: width, down: height }),
    ...parts,
  };
}

/** A screen on a desk: its middle `at` from the left end, its face `setback` from the near edge, 100 above the desk. */
export function aScreenAt(monitor: string, at: number, setback: number, parts: Partial<ScreenUse> = {}): ScreenUse {
  return {
    monitor: { name: monitor, origin: nowhere },
    origin: nowhere,
    setback: given(setback),
    at: given(at),
    height: { line: 'bottom', over: 'desk', distance: fixed(100) },
    tilt: byDefault(0),
    main: byDefault(false),
    ...parts,
  };
}

export function aPlatform(name: string, height: number, parts: Partial<Platform> = {}): Platform {
  return {
    name,
    origin: nowhere,
    at: given({ x: 0, y: 0 }),
    width: given(4000),
    depth: given(3000),
    height: given(height),
    ...parts,
  };
}

export function aSkirt(name: string, on: readonly string[], parts: Partial<Skirt> = {}): Skirt {
  return {
    name,
    origin: nowhere,
    on: on.map((piece) => ({ name: piece, origin: nowhere })),
    sides: byDefault(['front'] as const),
    ...parts,
  };
}

export function aCable(name: string, height: number, parts: Partial<Cable> = {}): Cable {
  return {
    name,
    origin: nowhere,
    across: { name: 'Behind', origin: nowhere },
    height: given(height),
    cover: byDefault('none' as const),
    ...parts,
  };
}

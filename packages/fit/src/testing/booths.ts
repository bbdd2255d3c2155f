import type { Booth, Crowd, Desk, Given, Operator, Origin, Placement, Room, Seat, Workstation } from '../booth.js';
import { dimensionNames, type DimensionName, type Sex } from '../bodies/dimensions.js';

/** Booths for tests, without a text behind them. Lengths in millimetres. */
export const nowhere: Origin = { uri: 'test:', start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };

export function given<T>(value: T): Given<T> {
  return { value, isDefault: false, origin: nowhere };
}

export function byDefault<T>(value: T): Given<T> {
  return { value, isDefault: true };
}

export function fixed(height: number): Given<{ min: number; max: number }> {
  return given({ min: height, max: height });
}

export function range(min: number, max: number): Given<{ min: number; max: number }> {
  return given({ min, max });
}

export function aBooth(parts: Partial<Booth> = {}): Booth {
  return {
    name: 'Test booth',
    show: 'mm',
    limits: 'us',
    shoe: byDefault(25),
    slump: byDefault(40),
    overrides: [],
    accepted: [],
    operators: [],
    crowds: [],
    desks: [],
    seats: [],
    monitors: [],
    workstations: [],
    walkways: [],
    racks: [],
    skirts: [],
    platforms: [],
    cables: [],
    placements: [],
    ...parts,
  };
}

export function aRoom(width: number, depth: number, parts: Partial<Room> = {}): Room {
  return {
    origin: nowhere,
    width: given(width),
    depth: given(depth),
    sprinklers: false,
    voiceAlarm: false,
    doors: [],
    columns: [],
    wheelchairSpaces: [],
    watchers: [],
    ...parts,
  };
}

export function anOperator(name: string, measured: Partial<Record<DimensionName, number>>, sex?: Sex): Operator {
  const entries = Object.entries(measured).map(([dimension, value]) => [dimension, given(value)]);
  return {
    name,
    origin: nowhere,
    measured: Object.fromEntries(entries) as Operator['measured'],
    statureIsReported: false,
    ...(sex && { sex: given(sex) }),
  };
}

/** An operator of whom every dimension is known: the given ones, and the rest as stated. */
export function aMeasuredOperator(
  name: string,
  dimensions: Record<DimensionName, number>,
  sex: Sex = 'female',
): Operator {
  return anOperator(name, Object.fromEntries(dimensionNames.map((each) => [each, dimensions[each]])), sex);
}

export function aCrowd(name: string, women: number, cover = 0.9): Crowd {
  return { name, origin: nowhere, women: given(women), cover: given(cover) };
}

export function aDesk(name: string, height: number | readonly [number, number], parts: Partial<Desk> = {}): Desk {
  const [min, max] = typeof height === 'number' ? [height, height] : height;
  return {
    name,
    origin: nowhere,
    width: given(1500),
    depth: given(700),
    height: range(min, max),
    top: byDefault(25),
    hanging: [],
    closed: false,
    ...parts,
  };
}

export function aSeat(name: string, seat: number | readonly [number, number], parts: Partial<Seat> = {}): Seat {
  const [min, max] = typeof seat === 'number' ? [seat, seat] : seat;
  return { kind: 'stool', name, origin: nowhere, seat: range(min, max), ...parts };
}

export function ringBelow(drop: number): Pick<Seat, 'footRing'> {
  return { footRing: { from: 'seat', distance: given(drop) } };
}

export function ringAt(height: number): Pick<Seat, 'footRing'> {
  return { footRing: { from: 'floor', distance: given(height) } };
}

export function aStation(
  name: string,
  desk: string,
  seat: string | undefined,
  people: readonly string[],
  parts: Partial<Workstation> = {},
): Workstation {
  return {
    name,
    origin: nowhere,
    desk: { name: desk, origin: nowhere },
    ...(seat !== undefined && { seat: { name: seat, origin: nowhere } }),
    people: people.map((person) => ({ name: person, origin: nowhere })),
    postures: byDefault([seat === undefined ? 'stand' : 'sit'] as const),
    task: byDefault('controls' as const),
    working: byDefault(0),
    lean: byDefault(0),
    screens: [],
    controls: [],
    ...parts,
  };
}

export function aPlacement(pieces: readonly string[], x: number, y: number, turn = 0): Placement {
  return {
    pieces: pieces.map((name) => ({ name, origin: nowhere })),
    origin: nowhere,
    at: given({ x, y }),
    turn: given(turn),
  };
}

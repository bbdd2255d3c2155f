import type {
  Assessment,
  Given,
  Millimetres,
  Origin,
  PieceRef,
  PlanPoint,
  Range,
  Room,
  Workstation,
} from '@boothwright/fit';
import type { Handle } from './protocol.js';

/** A handle as the text has it, before steps and words: those depend on how the text writes the number. */
export interface Held extends Omit<Handle, 'step' | 'told'> {
  /** The property as the language spells it. */
  readonly property: string;
  /** The value's text; absent if the file does not say it. */
  readonly written?: Origin;
  /** Which of the lengths in that text. */
  readonly part: number;
  /** The name or keyword of the block that is to say it, if the file does not. */
  readonly owner?: Origin;
}

const FARTHEST: Millimetres = 200_000;
const LONGEST: Millimetres = 8000;
/** Heights that a slider offers, if the file's own is not beyond them. */
const offered = {
  desk: [500, 1400],
  seat: [300, 1000],
  ring: [100, 700],
  overDesk: [0, 900],
  overFloor: [0, 2400],
} as const;

/**
 * All numbers of a booth that can be changed in a drawing: where pieces, doors, stage, balcony and seats stand, and how high desks, seats,
 * rings and screens are. Pieces that stand in a row move with their row. What an angle or another piece decides cannot be moved.
 */
export function handlesOf(assessment: Assessment): readonly Held[] {
  const { booth } = assessment;
  const { room, platforms, workstations } = booth;
  return [
    ...placements(assessment),
    ...points('column', room?.columns),
    ...points('wheelchair-space', room?.wheelchairSpaces),
    ...points('watchers', room?.watchers),
    ...points('platform', platforms),
    ...(room ? alongRoom(room) : []),
    ...underDesks(assessment),
    ...workstations.flatMap((station) => onDesk(station, assessment)),
    ...workstations.flatMap((station) => heightsAt(station, assessment)),
  ];
}

function placements({ booth, layout }: Assessment): Held[] {
  const placed = new Set(layout.pieces.map(({ name }) => name));
  return booth.placements
    .filter(({ pieces }) => placed.has(pieces[0]!.name))
    .flatMap(({ pieces, at }) => {
      const refs = pieces.map(({ name }): PieceRef => {
        return { kind: booth.desks.some((desk) => desk.name === name) ? 'desk' : 'rack', name };
      });
      return point(refs, at);
    });
}

/** What one number of the room places: doors along their wall; stage, balcony and seats toward the stage. */
function alongRoom({ width, depth, doors, stage, balcony, seating }: Room): Held[] {
  const one = (
    piece: PieceRef,
    property: string,
    says: string,
    given: Given<number> | undefined,
    way: PlanPoint,
    max: number,
  ) => (given ? [along(piece, { property, says, ...numberOf(given), way, max: Math.max(max, given.value) })] : []);
  const far = depth?.value ?? FARTHEST;
  return [
    ...doors.flatMap(({ name, wall, at, width: opening }) => {
      const isAside = wall?.value === 'left-wall' || wall?.value === 'right-wall';
      const length = (isAside ? depth : width)?.value ?? FARTHEST;
      const says = isAside ? 'from the back wall' : 'from the left wall';
      return wall
        ? one({ kind: 'door', name }, 'at', says, at, isAside ? UP : RIGHT, length - (opening?.value ?? 0))
        : [];
    }),
    ...one({ kind: 'stage' }, 'edge', 'from the back wall', stage?.edge, UP, far),
    ...one({ kind: 'balcony' }, 'edge', 'from the back wall', balcony?.edge, UP, far),
    ...one({ kind: 'seating' }, 'first', 'in front of the booth', seating?.first, UP, far),
  ];
}

/** A rack under a desk moves along it, and away from its near edge. */
function underDesks({ booth, layout }: Assessment): Held[] {
  return booth.racks.flatMap(({ name, origin, under }) => {
    const ways = under && waysOf(under.desk.name, layout);
    if (!ways) return [];
    const piece: PieceRef = { kind: 'rack', name };
    return (['at', 'setback'] as const).map((property) =>
      along(piece, { ...onWayOf(property, ways), ...numberOf(under[property]), owner: origin }),
    );
  });
}

const RIGHT: PlanPoint = { x: 1, y: 0 };
const UP: PlanPoint = { x: 0, y: 1 };

type Ways = NonNullable<ReturnType<typeof waysOf>>;

/** What a number means that places something on a desk. */
function onWayOf(property: 'at' | 'setback', ways: Ways) {
  const says = property === 'at' ? 'from the left end of the desk' : 'from the near edge of the desk';
  return { property, says, way: ways[property], max: LONGEST };
}

function numberOf({ value, origin }: Given<number>) {
  return { value, written: origin };
}

type Along = Pick<Held, 'property' | 'says' | 'value' | 'written' | 'way' | 'max' | 'owner'>;

/** One number that moves a piece along a straight line; of what other workstations may have too, the workstation is part of its id. */
function along(piece: PieceRef, rest: Along, workstation?: string): Held {
  const { kind, name } = piece;
  const id = [rest.property, kind, name, workstation].filter((part) => part !== undefined).join(' ');
  return { id, is: 'place', pieces: [piece], min: 0, part: 0, ...rest };
}

type Pointed = { readonly name: string; readonly at?: Given<PlanPoint> };

function points(kind: PieceRef['kind'], list: readonly Pointed[] = []): Held[] {
  return list.flatMap(({ name, at }) => (at ? point([{ kind, name }], at) : []));
}

function point(pieces: readonly PieceRef[], { value, origin }: Given<PlanPoint>): Held[] {
  const [{ kind, name }] = pieces as [PieceRef];
  const common = { is: 'place', pieces, property: 'at', written: origin, min: 0, max: FARTHEST } as const;
  const id = `${kind} ${name}`;
  return [
    { ...common, id: `x ${id}`, says: 'from the left wall', value: value.x, part: 0, way: RIGHT },
    { ...common, id: `y ${id}`, says: 'from the back wall', value: value.y, part: 1, way: UP },
  ];
}

/** What stands on a desk, and the person at it, move along it; things also away from its near edge. */
function onDesk(station: Workstation, { layout, sketch }: Assessment): Held[] {
  const { name: workstation, origin, at, controls, screens } = station;
  const place = sketch?.plan.places.find((each) => each.workstation === workstation);
  const ways = waysOf(station.desk?.name, layout);
  if (!ways || !place) return [];
  const { corner } = ways;
  const now = (place: PlanPoint) => Math.max(0, (place.x - corner.x) * ways.at.x + (place.y - corner.y) * ways.at.y);
  const one = (
    piece: PieceRef,
    property: 'at' | 'setback',
    given: Given<number> | undefined,
    value: number,
    owner: Origin,
  ): Held =>
    along(
      piece,
      { ...onWayOf(property, ways), value: given?.value ?? value, written: given?.origin, owner },
      workstation,
    );
  const setback = (piece: PieceRef, given: Given<number> | undefined, owner: Origin) =>
    given ? [one(piece, 'setback', given, 0, owner)] : [];
  return [
    one({ kind: 'workstation', name: workstation }, 'at', at, now(place.at), origin),
    ...controls.flatMap((control) => {
      const drawn = place.controls.find(({ name }) => name === control.name);
      const piece: PieceRef = { kind: 'control', name: control.name, workstation };
      if (!drawn) return [];
      const own = one(piece, 'at', control.at, now(middleOf(drawn.outline)), control.origin);
      return [own, ...setback(piece, control.setback, control.origin)];
    }),
    ...screens.flatMap((screen) => {
      const drawn = place.screens.find(({ name }) => name === screen.monitor.name);
      const piece: PieceRef = { kind: 'screen', name: screen.monitor.name, workstation };
      if (!drawn) return [];
      const own = screen.at || !screen.turn ? [one(piece, 'at', screen.at, now(drawn.middle), screen.origin)] : [];
      return [...own, ...setback(piece, screen.setback, screen.origin)];
    }),
  ];
}

/** The near left corner of a desk, and the ways along it and away from its near edge. */
function waysOf(name: string | undefined, { pieces }: Assessment['layout']) {
  const desk = pieces.find((piece) => piece.kind === 'desk' && piece.name === name);
  if (!desk) return undefined;
  const [corner, right, , far] = desk.outline as [PlanPoint, PlanPoint, PlanPoint, PlanPoint];
  return { corner, at: unit(corner, right), setback: unit(corner, far) };
}

/** What can be set higher and lower at a workstation. */
function heightsAt(station: Workstation, { booth }: Assessment): Held[] {
  const { name: workstation, screens } = station;
  const desk = booth.desks.find(({ name }) => name === station.desk?.name);
  const seat = booth.seats.find(({ name }) => name === station.seat?.name);
  const ring = seat?.footRing;
  return [
    ...(desk?.height
      ? ofRange({ kind: 'desk', name: desk.name }, 'height', `desk ${desk.name}`, desk.height, offered.desk)
      : []),
    ...(seat?.seat
      ? ofRange({ kind: 'seat', name: seat.name }, 'seat', `seat ${seat.name}`, seat.seat, offered.seat)
      : []),
    ...(ring
      ? [
          one(
            { kind: 'seat', name: seat.name },
            'foot-ring',
            `foot ring ${ring.from === 'seat' ? 'below the seat' : 'above the floor'}`,
            ring.distance,
            offered.ring,
          ),
        ]
      : []),
    ...screens.flatMap(({ monitor: { name }, height }) =>
      height
        ? ofRange(
            { kind: 'screen', name, workstation },
            height.line,
            `${name}, ${height.line} above the ${height.over}`,
            height.distance,
            height.over === 'desk' ? offered.overDesk : offered.overFloor,
          )
        : [],
    ),
  ].map((held) => ({ ...held, id: `${held.id} ${workstation}`, workstation }));
}

type Bounds = readonly [Millimetres, Millimetres];

/** Less than this between the ends of a range would be no range. */
const NARROWEST: Millimetres = 5;

function ofRange(
  piece: PieceRef,
  property: string,
  called: string,
  { value, origin }: Given<Range>,
  [low, high]: Bounds,
): Held[] {
  const { min, max } = value;
  const end = (says: string, now: number, bounds: Bounds, part: number) =>
    one(piece, property, says, { value: now, origin, isDefault: false }, bounds, part);
  if (max === min) return [end(called, min, [low, high], 0)];
  return [
    end(`${called}, lowest`, min, [low, max - NARROWEST], 0),
    end(`${called}, highest`, max, [min + NARROWEST, high], 1),
  ];
}

function one(
  piece: PieceRef,
  property: string,
  says: string,
  { value, origin }: Given<number>,
  [min, max]: Bounds,
  part = 0,
): Held {
  const id = `${property} ${part} ${piece.kind} ${piece.name}`;
  const ends = { min: Math.min(min, value), max: Math.max(max, value) };
  return { id, is: 'height', pieces: [piece], says, value, ...ends, property, written: origin, part };
}

function unit(from: PlanPoint, to: PlanPoint): PlanPoint {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}

function middleOf(outline: readonly PlanPoint[]): PlanPoint {
  const sum = outline.reduce((a, b) => ({ x: a.x + b.x, y: a.y + b.y }), { x: 0, y: 0 });
  return { x: sum.x / outline.length, y: sum.y / outline.length };
}

import { grouping } from '../lookup.js';
import type { Missing } from '../assessment.js';
import type { Body } from '../bodies/body.js';
import type { People } from '../bodies/people.js';
import type { Booth, Desk, Hanging, Origin, Posture, Rack, Seat, Workstation } from '../booth.js';
import type { Millimetres, Range, Share } from '../units.js';
import type { Dimensions } from './demand.js';
import { said, say } from '../words/say.js';

/** How deep under the desk a seated person's thighs reach: the depth at the knee, 17 in (OSHA Computer Workstations). */
export const THIGH_DEPTH: Millimetres = 17 * 25.4;

const AT_A_DESK: Millimetres = 7 * 25.4;
const AT_A_STOOL: Millimetres = 7.5 * 25.4;

/** The least height from the seat to the underside of the desk, for anyone: 7 in with a chair, 7 1/2 in with a stool (Panero & Zelnik 1979, 3.2 and 7.3). */
export function leastThighGap({ seat }: Station): Millimetres {
  return seat!.kind === 'stool' ? AT_A_STOOL : AT_A_DESK;
}

/** An operator or a crowd, as a body. */
export interface Person {
  readonly name: string;
  readonly kind: 'operator' | 'crowd';
  readonly origin: Origin;
  readonly body: Body;
  /** The same for bodies of which the same is known. */
  readonly bodyKey: string;
  readonly people: People;
  /** The mean of every dimension. */
  readonly dimensions: Dimensions;
  /** The share that must meet the preferred band for a pass. */
  readonly wanted: Share;
  /** What every result about them takes for granted, in words. */
  readonly assumes: () => readonly string[];
}

/** One workstation with everything it refers to. */
export interface Station {
  readonly workstation: Workstation;
  readonly name: string;
  readonly booth: Booth;
  readonly desk?: Desk;
  readonly seat?: Seat;
  readonly people: readonly Person[];
  readonly shoe: Millimetres;
  readonly slump: Millimetres;
  readonly working: Millimetres;
}

/** The stations at a desk, in the order of the booth. */
export const stationsAt = grouping<Station>(({ desk }) => [desk?.name]);

/** The racks under a desk. */
export const racksBelow = grouping<Rack>(({ under }) => [under?.desk.name]);

/** Where a workstation names one of its people. */
export function whereNamed({ workstation }: Station, person: Person): Origin {
  return workstation.people.find(({ name }) => name === person.name)!.origin;
}

export function sits(station: Station): boolean {
  return station.workstation.postures.value.includes('sit');
}

export function stands(station: Station): boolean {
  return station.workstation.postures.value.includes('stand');
}

/** Seat and desk heights in a posture: a standing person has no seat. Undefined if the file does not say them. */
export function heightsOf(station: Station, posture: Posture): { seat: Range; desk: Range } | undefined {
  const desk = station.desk?.height?.value;
  const seat = seatHeight(station, posture);
  return desk && seat ? { seat, desk } : undefined;
}

/** The same, a height that the file does not say being any: enough for rules that do not ask for it. */
export function openHeights(station: Station, posture: Posture): { seat: Range; desk: Range } {
  return { seat: seatHeight(station, posture) ?? ANY_HEIGHT, desk: station.desk?.height?.value ?? ANY_HEIGHT };
}

const ANY_HEIGHT: Range = { min: -1e6, max: 1e6 };

function seatHeight(station: Station, posture: Posture): Range | undefined {
  return posture === 'stand' ? { min: 0, max: 0 } : station.seat?.seat?.value;
}

/** The desk's height, if the file does not say it. */
export function lacksDeskHeight(station: Station): Missing | undefined {
  const { workstation, desk } = station;
  if (!desk) return missing('desk', `workstation ${station.name}`, 'desk Left', workstation.origin);
  if (!desk.height) return missing('height', `desk ${desk.name}`, 'height 40in', desk.origin);
  return undefined;
}

export function lacksSeat(station: Station): Missing | undefined {
  const { workstation, seat } = station;
  return seat ? undefined : missing('stool', `workstation ${station.name}`, 'stool Tall', workstation.origin);
}

export function lacksSeatHeight(station: Station): Missing | undefined {
  const { seat } = station;
  if (!seat) return lacksSeat(station);
  if (!seat.seat) return missing('seat', `${seat.kind} ${seat.name}`, 'seat 28in..32in', seat.origin);
  return undefined;
}

export function missing(property: string, of: string, example: string, origin?: Origin): Missing {
  return { property, of, example, ...(origin && { origin }) };
}

/**
 * Seat height less foot support, as a linear form's parts: on the floor or a fixed ring the seat's height counts; a ring
 * that hangs below the seat moves with it, and only its drop counts.
 */
export function seatAboveFeet(station: Station): { seat: 0 | 1; constant: Millimetres } {
  const ring = station.seat?.footRing;
  if (!ring) return { seat: 1, constant: 0 };
  return ring.from === 'seat'
    ? { seat: 0, constant: ring.distance.value }
    : { seat: 1, constant: -ring.distance.value };
}

/** Where along its desk a station's operator is, from the desk's left end: where the file says, or in the middle. */
export function placeAlong(station: Station): Millimetres {
  return station.workstation.at?.value ?? (station.desk?.width?.value ?? 0) / 2;
}

/** The drop of what hangs there, if the file does not say it. */
export function lacksDrop(desk: Desk, from: Millimetres, to: Millimetres): Missing | undefined {
  const piece = hangingBetween(desk, from, to).find(({ drop }) => !drop);
  return piece && missing('drop', say`the ${said(piece.kind)} of desk ${desk.name}`, 'drop 4in', piece.origin);
}

/** What the top and whatever hangs below it take between two depths from the near edge. */
export function thicknessBetween(desk: Desk, from: Millimetres, to: Millimetres): Millimetres {
  const drops = hangingBetween(desk, from, to).map(({ drop }) => drop?.value ?? 0);
  return desk.top.value + Math.max(0, ...drops);
}

/** What hangs lowest between two depths from the near edge, and how much more height there is without it; nothing if that is none. */
export function lowestBetween(desk: Desk, from: Millimetres, to: Millimetres) {
  const hanging = hangingBetween(desk, from, to).map(({ kind, drop }) => ({ kind, drop: drop?.value ?? 0 }));
  const [lowest, next] = hanging.sort((a, b) => b.drop - a.drop);
  const relief = lowest && lowest.drop - (next?.drop ?? 0);
  return relief ? { kind: lowest.kind, relief } : undefined;
}

function hangingBetween(desk: Desk, from: Millimetres, to: Millimetres): readonly Hanging[] {
  return desk.hanging.filter((piece) => {
    const near = piece.fromEdge.value;
    const far = piece.depth ? near + piece.depth.value : Infinity;
    return near < to - 1 && far > from + 1;
  });
}

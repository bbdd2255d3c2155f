import type { Origin, Posture } from '../booth.js';
import type { Scene, StationRule } from '../scene/scene.js';
import { meritFor, type Merit } from '../stations/merit.js';
import type { Heights } from '../stations/rules.js';
import { heightsOf, type Person, type Station } from '../stations/station.js';
import type { Millimetres, Range } from '../units.js';
import { say } from '../words/say.js';

/** One number of the file that can be chosen anew, and everyone it concerns. */
export interface Choice {
  readonly kind: 'desk' | 'seat' | 'ring';
  /** 'the desk Left'. */
  readonly label: string;
  /** The desk's or the seat's name. */
  readonly of: string;
  readonly now: Millimetres;
  readonly origin: Origin;
  readonly within: Range;
  readonly places: readonly Place[];
  /** A place as it would be with another value. */
  readonly at: (place: Place, value: Millimetres) => Setup;
  /** What it can be set to, if it is not one number. */
  readonly adjustable?: Adjustable;
  /** The value in words. */
  readonly words: (value: Millimetres) => string;
}

export interface Adjustable {
  readonly range: Range;
  /** A place as it would be with another range. */
  readonly over: (place: Place, range: Range) => Setup;
}

/** One person in one posture at one station. */
export interface Place {
  readonly station: Station;
  readonly posture: Posture;
  readonly person: Person;
  readonly setup: Setup;
}

/** What the person meets there. */
export interface Setup {
  readonly rules: readonly StationRule[];
  readonly heights: Heights;
  readonly merit: (heights: Heights) => Merit;
}

/** Heights that furniture comes in, with room to spare. */
export const DESK_HEIGHTS: Range = { min: 550, max: 1350 };
export const SEAT_HEIGHTS: Range = { min: 300, max: 950 };
export const RING_DROPS: Range = { min: 300, max: 508 };

/** The desk's height, as the file says it: one number, or a range. */
export function deskChoice(scene: Scene, station: Station): Choice | undefined {
  const { desk } = station;
  const given = desk?.height;
  if (!desk || !given?.origin) return undefined;
  return {
    ...heightOf('desk', given.value),
    label: say`the desk ${desk.name}`,
    of: desk.name,
    origin: given.origin,
    within: DESK_HEIGHTS,
    places: placesAt(scene, (other) => other.desk?.name === desk.name),
    words: (value) => scene.length(value),
  };
}

/** The seat's height, as the file says it: one number, or a range. */
export function seatChoice(scene: Scene, station: Station): Choice | undefined {
  const { seat } = station;
  const given = seat?.seat;
  if (!seat || !given?.origin) return undefined;
  return {
    ...heightOf('seat', given.value),
    label: say`the seat of ${seat.name}`,
    of: seat.name,
    origin: given.origin,
    within: SEAT_HEIGHTS,
    places: seatedAt(scene, seat.name),
    words: (value) => scene.length(value),
  };
}

/** What is now, and what a place would be with another height or another range of heights. */
function heightOf(kind: 'desk' | 'seat', range: Range): Pick<Choice, 'kind' | 'now' | 'at' | 'adjustable'> {
  const over = ({ setup }: Place, heights: Range) => ({ ...setup, heights: { ...setup.heights, [kind]: heights } });
  return {
    kind,
    now: range.min,
    at: (place, value) => over(place, { min: value, max: value }),
    ...(range.min < range.max && { adjustable: { range, over } }),
  };
}

/** The drop of a foot ring that hangs below the seat. */
export function ringChoice(scene: Scene, station: Station): Choice | undefined {
  const { seat } = station;
  const ring = seat?.footRing;
  if (!seat || ring?.from !== 'seat' || !ring.distance.origin) return undefined;
  const changed = new Map<string, Setup>();
  return {
    kind: 'ring',
    label: say`the foot ring of ${seat.name}`,
    of: seat.name,
    now: ring.distance.value,
    origin: ring.distance.origin,
    within: RING_DROPS,
    places: seatedAt(scene, seat.name),
    at(place, value) {
      const key = JSON.stringify([place.station.name, place.person.name, value]);
      const known = changed.get(key);
      if (known) return known;
      const footRing = { ...ring, distance: { ...ring.distance, value } };
      const other = { ...place.station, seat: { ...place.station.seat!, footRing } };
      const rules = scene.rules(other, 'sit');
      const setup = { rules, heights: place.setup.heights, merit: meritFor(rules, place.person) };
      changed.set(key, setup);
      return setup;
    },
    words: (value) => say`${scene.length(value)} below the seat`,
  };
}

function seatedAt(scene: Scene, seat: string): Place[] {
  return placesAt(scene, (station) => station.seat?.name === seat).filter(({ posture }) => posture === 'sit');
}

function placesAt(scene: Scene, uses: (station: Station) => boolean): Place[] {
  return scene.stations.filter(uses).flatMap((station) =>
    station.workstation.postures.value.flatMap((posture) => {
      const heights = heightsOf(station, posture);
      const rules = scene.rules(station, posture);
      if (!heights || rules.length === 0) return [];
      return station.people.map((person) => {
        return { station, posture, person, setup: { rules, heights, merit: meritFor(rules, person) } };
      });
    }),
  );
}

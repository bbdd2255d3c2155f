import type { Remedy } from '../assessment.js';
import type { Origin, Posture } from '../booth.js';
import { buyingStep, listOf, typeLength } from '../format.js';
import type { Scene, StationRule } from '../scene/scene.js';
import { verdictOf } from '../scene/verdict.js';
import { meritFor, type Merit } from '../stations/merit.js';
import { sharesOf, type Heights } from '../stations/rules.js';
import { heightsOf, type Person, type Station } from '../stations/station.js';
import type { Millimetres, Range } from '../units.js';

/** A height that the file gives as one number, and everyone it concerns. */
interface Choice {
  readonly label: string;
  readonly now: Millimetres;
  readonly origin: Origin;
  readonly within: Range;
  /** The same place with another height. */
  readonly places: readonly Place[];
  readonly at: (place: Place, value: Millimetres) => Heights;
}

/** One person in one posture at one station. */
interface Place {
  readonly station: Station;
  readonly person: Person;
  readonly rules: readonly StationRule[];
  readonly heights: Heights;
  readonly merit: (heights: Heights) => Merit;
}

const DESK_HEIGHTS: Range = { min: 550, max: 1350 };
const SEAT_HEIGHTS: Range = { min: 300, max: 950 };

/**
 * What to change so that a person fits, without leaving out the others who use the same desk or seat: the height that
 * suits everyone, or the one that suits this person and whom it leaves out, or an adjustable desk.
 */
export function remediesFor(scene: Scene, station: Station, posture: Posture, person: Person): readonly Remedy[] {
  const cache = remembered.get(scene) ?? new Map<string, readonly Remedy[]>();
  remembered.set(scene, cache);
  const key = JSON.stringify([station.name, posture, person.name]);
  const known = cache.get(key);
  if (known) return known;
  const choices = [deskChoice(scene, station), posture === 'sit' ? seatChoice(scene, station) : undefined];
  const remedies = choices.flatMap((choice) => (choice ? remediesOf(scene, choice, posture, person) : []));
  cache.set(key, remedies);
  return remedies;
}

const remembered = new WeakMap<Scene, Map<string, readonly Remedy[]>>();

function remediesOf(scene: Scene, choice: Choice, posture: Posture, person: Person): Remedy[] {
  const best = bestHeight(scene, choice, choice.places);
  if (best === undefined) return [];
  const verdict = suits(choice, best);
  if (verdict.suited.length === choice.places.length && !same(best, choice.now)) {
    return [change(scene, choice, best, `suits ${everyone(verdict.suited)}`, true)];
  }
  const own = choice.places.filter((place) => place.person === person && place.rules[0]?.body.posture === posture);
  const ownBest = bestHeight(scene, choice, own);
  const remedies: Remedy[] = [];
  if (verdict.suited.length > 0 && !same(best, choice.now)) {
    const left = verdict.left.length > 0 ? `, not ${everyone(verdict.left)}` : '';
    remedies.push(change(scene, choice, best, `suits ${everyone(verdict.suited)}${left}`, false));
  } else if (ownBest !== undefined && !same(ownBest, choice.now)) {
    const result = suits(choice, ownBest);
    const effect = result.suited.length > 0 ? `suits ${everyone(result.suited)}` : `is nearest for ${person.name}`;
    const left = result.left.length > 0 && result.suited.length > 0 ? `, not ${everyone(result.left)}` : '';
    remedies.push(change(scene, choice, ownBest, effect + left, false));
  }
  const range = adjustableRange(scene, choice);
  if (range) remedies.push(range);
  return remedies;
}

function change(scene: Scene, choice: Choice, value: Millimetres, effect: string, safe: boolean): Remedy {
  const text = typeLength(value, scene.booth.show);
  const verb = value < choice.now ? 'Lower' : 'Raise';
  return {
    title: `${verb} ${choice.label} to ${scene.length(value)}: ${effect}`,
    changes: [{ origin: choice.origin, text }],
    safe,
  };
}

/** No single height serves all: say the range that would, if each person is served somewhere in it. */
function adjustableRange(scene: Scene, choice: Choice): Remedy | undefined {
  if (choice.places.length < 2) return undefined;
  const heights = choice.places.flatMap((place) => {
    const best = bestHeight(scene, choice, [place]);
    return best !== undefined && place.merit(choice.at(place, best)).miss === 0 ? [best] : [];
  });
  if (heights.length < choice.places.length) return undefined;
  const min = Math.min(...heights);
  const max = Math.max(...heights);
  if (same(min, max)) return undefined;
  const text = `${typeLength(min, scene.booth.show)}..${typeLength(max, scene.booth.show)}`;
  return {
    title: `No single height serves everyone; ${choice.label} adjustable from ${scene.length(min)} to ${scene.length(max)} would`,
    changes: [{ origin: choice.origin, text }],
    safe: true,
  };
}

/** The height, in steps that people buy and cut, at which the worst-off place misses least; then the one with most ease. */
function bestHeight(scene: Scene, choice: Choice, places: readonly Place[]): Millimetres | undefined {
  const step = buyingStep(scene.booth.show);
  let best: { height: number; miss: number; ease: number } | undefined;
  for (let n = Math.ceil(choice.within.min / step); n * step <= choice.within.max; n++) {
    const height = n * step;
    let miss = 0;
    let ease = Infinity;
    for (const place of places) {
      const merit = place.merit(choice.at(place, height));
      miss = Math.max(miss, merit.miss);
      ease = Math.min(ease, merit.ease);
    }
    const better = !best || miss < best.miss - 1e-6 || (miss <= best.miss + 1e-6 && ease > best.ease + 1e-6);
    if (better) best = { height, miss, ease };
  }
  return best?.height;
}

function suits(choice: Choice, height: Millimetres): { suited: Place[]; left: Place[] } {
  const suited: Place[] = [];
  const left: Place[] = [];
  for (const place of choice.places) {
    const heights = choice.at(place, height);
    const preferred = sharesOf(place.rules, 'preferred', heights, place.person.people).joint;
    const mean = place.merit(heights).miss;
    const passes = verdictOf(preferred, 1, place.person.wanted) === 'pass';
    (passes || (place.person.kind === 'operator' && mean === 0) ? suited : left).push(place);
  }
  return { suited, left };
}

function everyone(places: readonly Place[]): string {
  const names = [...new Set(places.map(({ person }) => person.name))];
  return listOf(
    names.map((name) => {
      const postures = new Set(
        places.filter(({ person }) => person.name === name).map(({ rules }) => rules[0]!.body.posture),
      );
      return postures.size === 2 || places.every(({ rules }) => rules[0]!.body.posture === [...postures][0])
        ? name
        : `${name} ${postures.has('sit') ? 'seated' : 'standing'}`;
    }),
  );
}

function deskChoice(scene: Scene, station: Station): Choice | undefined {
  const { desk } = station;
  const given = desk?.height;
  if (!desk || !given?.origin || given.value.min !== given.value.max) return undefined;
  return {
    label: `the desk ${desk.name}`,
    now: given.value.min,
    origin: given.origin,
    within: DESK_HEIGHTS,
    places: placesAt(scene, (other) => other.desk?.name === desk.name),
    at: (place, value) => ({ seat: place.heights.seat, desk: { min: value, max: value } }),
  };
}

function seatChoice(scene: Scene, station: Station): Choice | undefined {
  const { seat } = station;
  const given = seat?.seat;
  if (!seat || !given?.origin || given.value.min !== given.value.max) return undefined;
  return {
    label: `the seat of ${seat.name}`,
    now: given.value.min,
    origin: given.origin,
    within: SEAT_HEIGHTS,
    places: placesAt(scene, (other) => other.seat?.name === seat.name).filter(
      ({ rules }) => rules[0]!.body.posture === 'sit',
    ),
    at: (place, value) => ({ seat: { min: value, max: value }, desk: place.heights.desk }),
  };
}

function placesAt(scene: Scene, uses: (station: Station) => boolean): Place[] {
  return scene.stations.filter(uses).flatMap((station) =>
    station.workstation.postures.value.flatMap((posture) => {
      const heights = heightsOf(station, posture);
      const rules = scene.rules(station, posture);
      if (!heights || rules.length === 0) return [];
      return station.people.map((person) => ({ station, person, rules, heights, merit: meritFor(rules, person) }));
    }),
  );
}

function same(a: Millimetres, b: Millimetres): boolean {
  return Math.abs(a - b) < 1;
}

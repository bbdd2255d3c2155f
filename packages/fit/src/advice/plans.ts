import type { LeftOut, Plan } from '../assessment.js';
import { bestValue } from '../assess/best.js';
import { DESK_HEIGHTS, deskChoice, ringChoice, SEAT_HEIGHTS, type Choice, type Place } from '../assess/choices.js';
import type { Booth, FootRing, Given } from '../booth.js';
import type { Check } from '../checks/check.js';
import { buyingStep, listOf, typeLength } from '../format.js';
import { makeScene, type Scene } from '../scene/scene.js';
import { verdictOf } from '../scene/verdict.js';
import { marginIn, valueOf } from '../stations/demand.js';
import { meritFor } from '../stations/merit.js';
import { settingOf } from '../stations/rules.js';
import { sharesOf } from '../stations/shares.js';
import { heightsOf, sits, type Person, type Station } from '../stations/station.js';
import { TOLERANCE, type Millimetres, type Range } from '../units.js';
import { exactBand } from './bands.js';
import { seatRangeFor } from './seat-range.js';

type Setting = Plan['settings'][number];

/**
 * What to set at a station. First the desk's height alone; then desk, seat range and ring together; then the same with a desk that
 * is adjustable. Each plan is tried: put into the booth and assessed anew, so that what it promises is what it keeps. A longer
 * plan is kept only if it serves more.
 */
export function plansFor(scene: Scene, station: Station, checks: readonly Check[]): readonly Plan[] {
  const candidates = [deskAlone(scene, station), together(scene, station, false), together(scene, station, true)];
  const plans: Plan[] = [];
  for (const settings of candidates) {
    if (!settings || settings.length === 0) continue;
    const plan = tryPlan(scene, station, checks, settings);
    if (plans.every((shorter) => rank(plan) > rank(shorter))) plans.push(plan);
  }
  return plans.sort((a, b) => rank(b) - rank(a));
}

function rank({ serves, likely }: Plan): number {
  return serves.length + likely.length * 0.9;
}

function deskAlone(scene: Scene, station: Station): Setting[] | undefined {
  const choice = deskChoice(scene, station);
  if (!choice || choice.places.length === 0) return undefined;
  const value = bestForMost(scene, choice);
  return [{ part: 'desk', of: choice.of, value: { min: value, max: value } }];
}

/** Ring first, for legs; then the desk, with the seat free to follow; then the range that the seat needs there. */
function together(scene: Scene, station: Station, adjustable: boolean): Setting[] | undefined {
  const desk = deskChoice(scene, station, true);
  if (!desk) return undefined;
  const seated = sits(station) && station.seat?.seat;
  if (!seated && !adjustable) return undefined;
  const ring = seated ? ringSetting(scene, station) : undefined;
  const ringed = ring ? makeScene(withSettings(scene.booth, [ring]), scene.checks) : scene;
  const free = freeSeat(ringed, station);
  if (!free) return undefined;
  const given = station.desk!.height!.value;
  const deskRange = adjustable
    ? reachOfAll(scene, free)
    : given.min < given.max
      ? given
      : fixedAt(bestForMost(scene, free));
  const seat = seated ? seatRangeFor(free, deskRange, buyingStep(scene.booth.show)) : undefined;
  return [
    ...(deskRange === given ? [] : [{ part: 'desk' as const, of: desk.of, value: deskRange }]),
    ...(seat ? [{ part: 'seat' as const, of: station.seat!.name, value: seat }] : []),
    ...(ring ? [ring] : []),
  ];
}

/** The narrowest desk range that holds a height for each place. */
function reachOfAll(scene: Scene, choice: Choice): Range {
  const step = buyingStep(scene.booth.show);
  const bands = choice.places.flatMap((place) => exactBand(choice, place) ?? []);
  if (bands.length === 0) return fixedAt(bestForMost(scene, choice));
  const low = Math.min(...bands.map(({ max }) => max));
  const high = Math.max(...bands.map(({ min }) => min));
  if (high <= low) return fixedAt(Math.round((high + low) / 2 / step) * step);
  return { min: Math.floor((low - STANDING_ROOM) / step) * step, max: Math.ceil((high + STANDING_ROOM) / step) * step };
}

/** An adjustable desk reaches this far into each band, so that people like those named are served too. */
const STANDING_ROOM: Millimetres = 25;

function fixedAt(value: Millimetres): Range {
  return { min: value, max: value };
}

/** The value that serves all with most ease; if none serves all, one that serves the most, and then misses least. */
function bestForMost(scene: Scene, choice: Choice): Millimetres {
  const shared = bestValue(scene, choice, choice.places);
  const bands = choice.places.map((place) => exactBand(choice, place));
  if (bands.every((band) => band && shared >= band.min - TOLERANCE && shared <= band.max + TOLERANCE)) return shared;
  const step = buyingStep(scene.booth.show);
  const count = (value: Millimetres) => bands.filter((band) => band && value >= band.min && value <= band.max).length;
  const first = Math.ceil(choice.within.min / step);
  const values = Array.from({ length: Math.floor(choice.within.max / step) - first + 1 }, (_, n) => (first + n) * step);
  const most = Math.max(...values.map(count));
  const candidates = values.filter((value) => count(value) === most);
  if (most === 0) return shared;
  return candidates.reduce((a, b) => (Math.abs(b - shared) < Math.abs(a - shared) ? b : a));
}

/** What one number cannot give: people whose legs or heights are too far apart for one stool or one desk. */
export function notesFor(scene: Scene, station: Station): readonly string[] {
  const ring = ringChoice(scene, station);
  if (!ring) return [];
  const operators = ring.places.filter(
    ({ person, station: at }) => person.kind === 'operator' && at.name === station.name,
  );
  const legs = operators.map(({ person }) => ({
    name: person.name,
    leg: person.dimensions.poplitealHeight + station.shoe,
  }));
  if (legs.length < 2) return [];
  const short = legs.reduce((a, b) => (b.leg < a.leg ? b : a));
  const long = legs.reduce((a, b) => (b.leg > a.leg ? b : a));
  if (long.leg - short.leg <= LEG_PLAY) return [];
  const drops = [short, long].map(({ leg }) => scene.length(leg - LEG_PLAY / 2));
  return [
    `No one foot ring suits the legs of both ${short.name} and ${long.name}: a ring that moves on its column, or a second stool, with rings about ${drops[0]} and ${drops[1]} below the seat, would.`,
  ];
}

/** Seat not too high and not too low: the preferred bands together allow this much. */
const LEG_PLAY: Millimetres = 50;

function ringSetting(scene: Scene, station: Station): Setting | undefined {
  const ring = ringChoice(scene, station);
  if (!ring) return undefined;
  const legsOnly: Choice = {
    ...ring,
    at(place, value) {
      const setup = ring.at(place, value);
      const rules = setup.rules.filter(({ demands }) =>
        demands.every(({ form }) => form.seat === 0 && form.desk === 0),
      );
      return { rules, heights: ANY, merit: meritFor(rules, place.person) };
    },
  };
  return { part: 'ring', of: ring.of, value: fixedAt(bestForMost(scene, legsOnly)) };
}

const ANY = { seat: SEAT_HEIGHTS, desk: DESK_HEIGHTS };

/** The desk's choice at a station whose seat may take any height. */
function freeSeat(scene: Scene, station: Station): Choice | undefined {
  const own = scene.stations.find(({ name }) => name === station.name)!;
  const choice = deskChoice(scene, own, true);
  if (!choice) return undefined;
  const loosen = (place: Place): Place => {
    const seat = place.posture === 'sit' ? SEAT_HEIGHTS : place.setup.heights.seat;
    return { ...place, setup: { ...place.setup, heights: { ...place.setup.heights, seat } } };
  };
  return { ...choice, places: choice.places.map(loosen) };
}

/** The booth with other heights in it. */
export function withSettings(booth: Booth, settings: readonly Setting[]): Booth {
  const valueOfPart = (part: Setting['part'], of: string) =>
    settings.find((one) => one.part === part && one.of === of)?.value;
  const set = (given: Given<Range> | undefined, value: Range | undefined) =>
    given && value ? { ...given, value } : given;
  return {
    ...booth,
    desks: booth.desks.map((desk) => ({ ...desk, height: set(desk.height, valueOfPart('desk', desk.name)) })),
    seats: booth.seats.map((seat) => {
      const drop = valueOfPart('ring', seat.name)?.min;
      const footRing: FootRing | undefined =
        seat.footRing && drop !== undefined
          ? { ...seat.footRing, distance: { ...seat.footRing.distance, value: drop } }
          : seat.footRing;
      return { ...seat, seat: set(seat.seat, valueOfPart('seat', seat.name)), footRing };
    }),
  };
}

function tryPlan(scene: Scene, station: Station, checks: readonly Check[], settings: readonly Setting[]): Plan {
  const tried = makeScene(withSettings(scene.booth, settings), checks);
  const deskName = station.desk!.name;
  const stations = tried.stations.filter(({ desk }) => desk?.name === deskName);
  const results = stations.flatMap((each) =>
    each.people.map((person) => ({ person, ...resultOf(tried, each, person) })),
  );
  const names = [...new Set(results.map(({ person }) => person.name))];
  const of = (name: string) => results.filter(({ person }) => person.name === name);
  const serves = names.filter((name) => of(name).every(({ left, sure }) => left.length === 0 && sure));
  const likely = names.filter((name) => !serves.includes(name) && of(name).every(({ left }) => left.length === 0));
  return {
    title: titleOf(scene, settings, names.length, serves, likely),
    settings,
    changes: settings.flatMap((setting) => changeOf(scene, setting)),
    serves,
    likely,
    leftOut: results.flatMap(({ left }) => left),
  };
}

/** What keeps a person from being served, and whether the shares are high enough to be sure. */
function resultOf(scene: Scene, station: Station, person: Person): { left: LeftOut[]; sure: boolean } {
  let sure = true;
  const left = station.workstation.postures.value.flatMap((posture): LeftOut[] => {
    const heights = heightsOf(station, posture);
    const rules = scene.rules(station, posture);
    if (!heights || rules.length === 0) return [];
    const shares = sharesOf(rules, 'preferred', heights, person.people);
    if (person.kind === 'crowd') {
      const verdict = verdictOf(shares.joint, 1, person.wanted);
      const weakest = rules[shares.byRule.indexOf(Math.min(...shares.byRule))]!;
      return verdict === 'pass' ? [] : [{ who: person.name, posture, check: weakest.check }];
    }
    sure &&= shares.byRule.every((share) => share >= person.wanted);
    const { seat, desk } = settingOf(rules, heights, person.dimensions);
    return rules.flatMap((rule): LeftOut[] => {
      const margins = rule.demands.map((d) => marginIn(d.preferred, valueOf(d.form, person.dimensions, seat, desk)));
      const margin = Math.min(...margins);
      return margin >= -TOLERANCE ? [] : [{ who: person.name, posture, check: rule.check, by: -margin }];
    });
  });
  return { left, sure };
}

function titleOf(
  scene: Scene,
  settings: readonly Setting[],
  people: number,
  serves: readonly string[],
  likely: readonly string[],
): string {
  const parts = settings.map(({ part, of, value }) => {
    const height =
      value.min === value.max ? scene.length(value.min) : `${scene.length(value.min)} to ${scene.length(value.max)}`;
    if (part === 'desk') return `the desk ${of} to ${height}`;
    return part === 'seat' ? `the seat of ${of} to ${height}` : `its ring to ${height} below the seat`;
  });
  const open = likely.length > 0 ? `, and most likely ${listOf(likely)}: measure to be sure` : '';
  return `Set ${listOf(parts)}: serves ${serves.length} of ${people}${open}`;
}

function changeOf(scene: Scene, { part, of, value }: Setting): Plan['changes'][number][] {
  const { desks, seats, show } = scene.booth;
  const seat = seats.find(({ name }) => name === of);
  const origin =
    part === 'desk'
      ? desks.find(({ name }) => name === of)?.height?.origin
      : part === 'seat'
        ? seat?.seat?.origin
        : seat?.footRing?.distance.origin;
  if (!origin) return [];
  const typed = (length: Millimetres) => typeLength(length, show);
  return [{ origin, text: value.min === value.max ? typed(value.min) : `${typed(value.min)}..${typed(value.max)}` }];
}

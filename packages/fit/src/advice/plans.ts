import type { Plan } from '../assessment.js';
import { DESK_HEIGHTS, deskChoice, ringChoice, SEAT_HEIGHTS, type Choice } from '../assess/choices.js';
import type { Check } from '../checks/check.js';
import { buyingStep } from '../format.js';
import { makeScene, type Scene } from '../scene/scene.js';
import { meritFor } from '../stations/merit.js';
import { sits, type Station } from '../stations/station.js';
import type { Millimetres, Range } from '../units.js';
import { exactBand } from './bands.js';
import { bestForMost } from './best-for-most.js';
import { freeSeat } from './free-seat.js';
import { reaches, seatRangeFor, seatSpans } from './seat-range.js';
import { tryPlan, type Tried } from './try-plan.js';
import { withSettings, type Setting } from './with-settings.js';

/**
 * What to set at a station. First the desk's height alone; then desk and ring; then desk, ring and the seat's range; then the same
 * with a desk that is adjustable. Each plan is tried: put into the booth and assessed anew, so that what it promises is what it keeps. A plan is
 * kept only if it serves more than the file does, and a longer one only if it serves more than the shorter.
 */
export function plansFor(scene: Scene, station: Station, checks: readonly Check[]): readonly Plan[] {
  const desk = station.desk?.name;
  if (desk === undefined) return [];
  const kept: Tried[] = [tryPlan(scene, desk, checks, [])];
  const trial = (some: readonly Setting[]) => tryPlan(scene, desk, checks, some, scene);
  for (const settings of settingsFor(scene, station, checks)) {
    if (settings.length > 0) {
      const tried = trial(settings);
      if (kept.every(({ worth }) => tried.worth > worth + LEAST_GAIN)) kept.push(withoutIdle(tried, trial));
    }
    if (kept.some(({ worth, people }) => worth + LEAST_GAIN >= people)) break;
  }
  return kept
    .slice(1)
    .reverse()
    .map(({ plan }) => plan);
}

/** From the least to change to the most; each is found when it is asked for, since whoever is served by the first needs no other. */
function* settingsFor(scene: Scene, station: Station, checks: readonly Check[]): Iterable<readonly Setting[]> {
  yield deskOnly(scene, station);
  const ringed = withRing(scene, station, checks);
  yield [...deskOnly(ringed.scene, station), ...ringed.settings];
  yield together(scene, station, ringed, false);
  yield together(scene, station, ringed, true);
}

/** A plan that serves no more people, and of a crowd hardly more, is not worth the work. */
const LEAST_GAIN = 0.02;

/** The plan without the settings that serve nobody. */
function withoutIdle(tried: Tried, trial: (settings: readonly Setting[]) => Tried): Tried {
  const { settings } = tried.plan;
  if (settings.length < 2) return tried;
  for (const idle of settings) {
    const fewer = trial(settings.filter((setting) => setting !== idle));
    if (fewer.worth >= tried.worth) return withoutIdle(fewer, trial);
  }
  return tried;
}

/** The desk's height, the seat's range as the file says it. */
function deskOnly(scene: Scene, station: Station): readonly Setting[] {
  const choice = deskChoice(
    scene,
    scene.stations.find(({ name }) => name === station.name)!,
  );
  if (!choice || choice.adjustable || choice.places.length === 0) return [];
  return changed(scene, [{ part: 'desk', of: choice.of, value: fixedAt(bestForMost(scene, choice)) }]);
}

/** Ring first, for legs; then the desk, with the seat free to follow; then the range that the seat needs there. */
function together(scene: Scene, station: Station, ringed: Ringed, isAdjustable: boolean): readonly Setting[] {
  const desk = deskChoice(scene, station);
  if (!desk) return [];
  const seated = sits(station) && station.seat?.seat !== undefined;
  if (!seated && !isAdjustable) return [];
  const free = freeSeat(ringed.scene, station);
  if (!free) return [];
  const given = station.desk!.height!.value;
  const height = isAdjustable
    ? reachOfAll(scene, free)
    : given.min < given.max
      ? given
      : fixedAt(bestForMost(scene, free));
  const seats = seated ? seatSetting(ringed.scene, station, free, height) : [];
  return [...changed(scene, [{ part: 'desk', of: desk.of, value: height }]), ...seats, ...ringed.settings];
}

/** The narrowest desk range that holds a height for each place. */
function reachOfAll(scene: Scene, choice: Choice): Range {
  const step = buyingStep(scene.booth.show);
  const bands = choice.places.flatMap((place) => exactBand(choice, place) ?? []);
  if (bands.length === 0) return fixedAt(bestForMost(scene, choice));
  const low = Math.min(...bands.map(({ max }) => max));
  const high = Math.max(...bands.map(({ min }) => min));
  if (high <= low) return fixedAt(bestForMost(scene, choice));
  return { min: Math.floor((low - STANDING_ROOM) / step) * step, max: Math.ceil((high + STANDING_ROOM) / step) * step };
}

/** An adjustable desk reaches this far into each band, so that people like those named are served too. */
const STANDING_ROOM: Millimetres = 25;

/** The seat's range, if the present one does not reach: for this desk's people, and for those who use the seat elsewhere. */
function seatSetting(scene: Scene, station: Station, free: Choice, desk: Range): readonly Setting[] {
  const seat = station.seat!;
  const spans = seatSpans(free, seat.name, desk);
  if (spans.length === 0 || reaches(seat.seat!.value, spans)) return [];
  const elsewhere = scene.stations
    .filter((other) => other.seat?.name === seat.name && other.desk?.height && other.desk.name !== station.desk!.name)
    .flatMap((other) => {
      const choice = freeSeat(scene, other);
      return choice ? seatSpans(choice, seat.name, other.desk!.height!.value) : [];
    });
  const value = seatRangeFor([...spans, ...elsewhere], buyingStep(scene.booth.show));
  return value ? changed(scene, [{ part: 'seat', of: seat.name, value }]) : [];
}

interface Ringed {
  readonly settings: readonly Setting[];
  readonly scene: Scene;
}

/** The booth with the foot ring where it suits most legs. */
function withRing(scene: Scene, station: Station, checks: readonly Check[]): Ringed {
  const ring = sits(station) ? ringChoice(scene, station) : undefined;
  if (!ring) return { settings: [], scene };
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
  const settings = changed(scene, [{ part: 'ring', of: ring.of, value: fixedAt(bestForMost(scene, legsOnly)) }]);
  return {
    settings,
    scene: settings.length > 0 ? makeScene(withSettings(scene.booth, settings), checks) : scene,
  };
}

const ANY = { seat: SEAT_HEIGHTS, desk: DESK_HEIGHTS };

/** Those settings that are not what the file says already. */
function changed({ booth }: Scene, settings: readonly Setting[]): readonly Setting[] {
  const now = ({ part, of }: Setting): Range | undefined => {
    if (part === 'desk') return booth.desks.find(({ name }) => name === of)?.height?.value;
    const seat = booth.seats.find(({ name }) => name === of);
    if (part === 'seat') return seat?.seat?.value;
    return seat?.footRing && fixedAt(seat.footRing.distance.value);
  };
  return settings.filter((setting) => {
    const [before, after] = [now(setting), setting.value];
    return !before || Math.abs(before.min - after.min) >= 1 || Math.abs(before.max - after.max) >= 1;
  });
}

function fixedAt(value: Millimetres): Range {
  return { min: value, max: value };
}

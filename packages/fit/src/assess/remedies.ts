import type { Remedy } from '../assessment.js';
import type { Posture } from '../booth.js';
import { buyingStep, effectOf, inPosture, named, nearestOf, typeLength, typeRange } from '../format.js';
import type { Scene, StationRule } from '../scene/scene.js';
import { verdictOf } from '../scene/verdict.js';
import { marginIn, valueOf, type Demand } from '../stations/demand.js';
import { settingOf } from '../stations/rules.js';
import { sharesOf } from '../stations/shares.js';
import type { Person, Station } from '../stations/station.js';
import { TOLERANCE, type Millimetres, type Range } from '../units.js';
import { type Best, bestOf, lastStep, nearestOfBest } from './best.js';
import { deskChoice, ringChoice, seatChoice, type Adjustable, type Choice, type Place, type Setup } from './choices.js';
import { say } from '../words/say.js';

/**
 * What to change so that one check holds for one person, without leaving out the others who use the same desk or seat:
 * the value that suits everyone; or the best compromise, with whom it leaves out, and an adjustable desk.
 */
export function remediesFor(
  scene: Scene,
  station: Station,
  posture: Posture,
  person: Person,
  rule: StationRule,
): readonly Remedy[] {
  if (rule.demands.some((demand) => demand.settled && !isMet(demand, person))) return [];
  const remedies = choicesFor(scene, station, posture, rule).flatMap((choice) => {
    const own = choice.places.find(
      (place) => place.person === person && place.posture === posture && place.station === station,
    );
    return own ? remediesOf(scene, choice, own, rule.check) : [];
  });
  return remedies.sort((a, b) => Number(b.safe) - Number(a.safe));
}

/** Whether a demand that no height changes is met by the person's mean body. */
function isMet({ form, preferred }: Demand, person: Person): boolean {
  return marginIn(preferred, valueOf(form, person.dimensions, 0, 0)) >= -TOLERANCE;
}

/** The numbers of the file that the rule's quantity depends on. */
function choicesFor(scene: Scene, station: Station, posture: Posture, rule: StationRule): readonly Choice[] {
  const known = remembered.get(scene) ?? new Map<string, Choice | undefined>();
  remembered.set(scene, known);
  const once = (key: string, make: () => Choice | undefined) => {
    if (!known.has(key)) known.set(key, make());
    return known.get(key) ?? [];
  };
  const forms = rule.demands.map((demand) => demand.form);
  const legs = posture === 'sit' && forms.some(({ body }) => body.poplitealHeight !== undefined);
  return [
    forms.some(({ desk }) => desk !== 0) ? once(`desk ${station.desk?.name}`, () => deskChoice(scene, station)) : [],
    forms.some(({ seat }) => seat !== 0) ? once(`seat ${station.seat?.name}`, () => seatChoice(scene, station)) : [],
    legs ? once(`ring ${station.seat?.name}`, () => ringChoice(scene, station)) : [],
  ].flat();
}

const remembered = new WeakMap<Scene, Map<string, Choice | undefined>>();

function remediesOf(scene: Scene, choice: Choice, own: Place, check: string): Remedy[] {
  if (choice.adjustable) return widened(scene, choice, choice.adjustable, own);
  const helpful = (places: readonly Place[]) => helpfulOf(scene, choice, own, check, bestOf(scene, choice, places));
  const [shared] = helpful(choice.places);
  if (shared !== undefined) return [change(scene, choice, shared, own)];
  return [...helpful([own]).map((value) => change(scene, choice, value, own)), ...adjustable(scene, choice)];
}

/**
 * The best value, if the check holds there for the place's mean body, and it is a new one. Else, of the values that are as good, the nearest
 * to what the file says of which that is so.
 */
function helpfulOf(scene: Scene, choice: Choice, own: Place, check: string, best: Best): Millimetres[] {
  const step = buyingStep(scene.booth.show);
  const helps = (value: Millimetres) => !same(value, choice.now) && holds(choice, own, check, value);
  if (helps(best.value)) return [best.value];
  const nearest = nearestOfBest(best, choice.now);
  const towards = (value: Millimetres) =>
    lastStep(Math.round(value / step), Math.round(nearest / step), (n) => helps(n * step)) * step;
  return [best.asGood.min, best.asGood.max]
    .filter(helps)
    .map(towards)
    .sort((a, b) => Math.abs(a - choice.now) - Math.abs(b - choice.now))
    .slice(0, 1);
}

/** Whether a check holds for the place's mean body with that value. */
function holds(choice: Choice, place: Place, check: string, value: Millimetres): boolean {
  const { rules, heights } = choice.at(place, value);
  const { dimensions } = place.person;
  const { seat, desk } = settingOf(rules, heights, dimensions);
  return rules
    .filter((rule) => rule.check === check)
    .flatMap((rule) => rule.demands)
    .every(({ form, preferred }) => marginIn(preferred, valueOf(form, dimensions, seat, desk)) >= -TOLERANCE);
}

function change(scene: Scene, choice: Choice, value: Millimetres, own: Place): Remedy {
  const isHigher = (choice.kind === 'ring') === value < choice.now;
  const suited = choice.places.filter((place) => suits(choice.at(place, value), place));
  const lost = choice.places.filter((place) => !suited.includes(place) && suits(choice.at(place, choice.now), place));
  const effect = suited.length > 0 ? effectOf(names(suited), names(lost)) : nearestOf(names([own]), names(lost));
  const to = choice.words(value);
  return {
    title: isHigher ? say`Raise ${choice.label} to ${to}: ${effect}` : say`Lower ${choice.label} to ${to}: ${effect}`,
    changes: [{ origin: choice.origin, text: typeLength(value, scene.booth.show) }],
    safe: lost.length === 0 && choice.places.every((place) => !worsens(choice, place, value)),
  };
}

/**
 * A range that does not reach far enough: as far as everyone needs whom some height of it would suit, or as this one needs, if
 * that suits them in all. What can be bought decides, so it is never called safe.
 */
function widened(scene: Scene, choice: Choice, { range, over }: Adjustable, own: Place): Remedy[] {
  const unsuited = operatorsAt(choice).filter((place) => !suits(place.setup, place));
  const forAll = unsuited.flatMap((place) => servingAlone(scene, choice, place));
  const wide = [forAll, [bestOf(scene, choice, [own]).value]]
    .map((values) => ({ min: Math.min(range.min, ...values), max: Math.max(range.max, ...values) }))
    .find((each) => !isSame(each, range) && suits(over(own, each), own));
  if (!wide) return [];
  const suited = choice.places.filter((place) => suits(over(place, wide), place));
  const lost = choice.places.filter((place) => !suited.includes(place) && suits(place.setup, place));
  const [min, max] = [scene.length(wide.min), scene.length(wide.max)];
  return [
    {
      title: say`Make ${choice.label} adjustable from ${min} to ${max}: ${effectOf(names(suited), names(lost))}`,
      changes: [{ origin: choice.origin, text: typeRange(wide, scene.booth.show) }],
      safe: false,
    },
  ];
}

function operatorsAt({ places }: Choice): readonly Place[] {
  return places.filter(({ person }) => person.kind === 'operator');
}

/** The height that suits one place best, if it suits it at all. */
function servingAlone(scene: Scene, choice: Choice, place: Place): Millimetres[] {
  const best = bestOf(scene, choice, [place]).value;
  const { heights, merit } = choice.at(place, best);
  return merit(heights).miss <= TOLERANCE ? [best] : [];
}

/** Whether some check of a place has a worse verdict with the value than it has now. */
function worsens(choice: Choice, place: Place, value: Millimetres): boolean {
  const now = ranksAt(choice.at(place, choice.now), place);
  return ranksAt(choice.at(place, value), place).some((rank, index) => rank < now[index]!);
}

/** By rule: 0 fails, 1 is marginal, 2 passes, as a finding would say. */
function ranksAt({ rules, heights }: Setup, { person }: Place): number[] {
  const preferred = sharesOf(rules, 'preferred', heights, person).byRule;
  const outer = sharesOf(rules, 'outer', heights, person).byRule;
  return preferred.map((share, index) =>
    ['fail', 'marginal', 'pass'].indexOf(verdictOf(share, outer[index]!, person.wanted)),
  );
}

/** Whether it suits: an operator whose mean body is inside every preferred band, a crowd that reaches its cover. */
function suits({ rules, heights, merit }: Setup, { person }: Place): boolean {
  if (person.kind === 'operator') return merit(heights).miss <= TOLERANCE;
  return sharesOf(rules, 'preferred', heights, person).joint >= person.wanted;
}

/** No single height serves all: the range that would, if each person is served somewhere in it. */
function adjustable(scene: Scene, choice: Choice): Remedy[] {
  if (choice.kind === 'ring' || choice.places.length < 2) return [];
  const operators = operatorsAt(choice);
  const values = operators.flatMap((place) => servingAlone(scene, choice, place));
  if (values.length < operators.length || values.length < 2) return [];
  const min = Math.min(...values);
  const max = Math.max(...values);
  if (same(min, max)) return [];
  return [
    {
      title: say`No single height serves ${named(names(operators))}: make ${choice.label} adjustable from ${scene.length(min)} to ${scene.length(max)}`,
      changes: [{ origin: choice.origin, text: typeRange({ min, max }, scene.booth.show) }],
      safe: false,
    },
  ];
}

/** Names, with the posture where one person stands on both sides or is served in one posture only. */
function names(places: readonly Place[]): string[] {
  return [...new Set(places.map(({ person }) => person.name))].map((name) => {
    const own = places.filter(({ person }) => person.name === name);
    const both = own[0]!.station.workstation.postures.value.length === 2;
    const [posture, ...others] = new Set(own.map((one) => one.posture));
    return both && others.length === 0 ? inPosture(name, posture!) : name;
  });
}

function isSame(a: Range, b: Range): boolean {
  return same(a.min, b.min) && same(a.max, b.max);
}

function same(a: Millimetres, b: Millimetres): boolean {
  return Math.abs(a - b) < 1;
}

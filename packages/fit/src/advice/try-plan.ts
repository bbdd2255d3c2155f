import type { LeftOut, Plan } from '../assessment.js';
import type { Check } from '../checks/check.js';
import { typeLength, typeRange } from '../format.js';
import { makeScene, type Scene } from '../scene/scene.js';
import { verdictOf } from '../scene/verdict.js';
import { marginIn, valueOf } from '../stations/demand.js';
import { settingOf } from '../stations/rules.js';
import { sharesOf } from '../stations/shares.js';
import { heightsOf, type Person, type Station } from '../stations/station.js';
import { TOLERANCE } from '../units.js';
import { titleOf } from './plan-words.js';
import { withSettings, type Setting } from './with-settings.js';

/** A plan put into the booth and assessed anew, and what it is worth: people served, a crowd in part. */
export interface Tried {
  readonly plan: Plan;
  readonly worth: number;
  /** How many people and crowds there are: none is worth more. */
  readonly people: number;
}

/** 'Most likely' is worth a little less than 'for sure', a crowd in part at most half, a person in one posture less. */
const LIKELY = 0.9;
const CROWD_IN_PART = 0.5;
const ONE_POSTURE = 0.3;

/**
 * Tries settings for the people of one desk. Whoever sits on a stool that they change but works elsewhere, and would lose by it, is
 * among those left out.
 */
export function tryPlan(
  scene: Scene,
  desk: string,
  checks: readonly Check[],
  settings: readonly Setting[],
  before?: Scene,
): Tried {
  const tried = settings.length > 0 ? makeScene(withSettings(scene.booth, settings), checks) : scene;
  const own = outcomesAt(tried, (station) => station.desk?.name === desk);
  const names = [...new Set(own.map(({ person }) => person.name))];
  const of = (name: string) => own.filter(({ person }) => person.name === name);
  const serves = names.filter((name) => of(name).every(({ left, sure }) => left.length === 0 && sure));
  const likely = names.filter((name) => !serves.includes(name) && of(name).every(({ left }) => left.length === 0));
  const harmed = before ? harmedElsewhere(before, tried, desk, settings) : [];
  const outlook = { settings, serves, likely, leftOut: [...own.flatMap(({ left }) => left), ...harmed] };
  const sitsAndStands = (who: string) =>
    tried.stations.some(
      ({ people, workstation }) => people.some(({ name }) => name === who) && workstation.postures.value.length > 1,
    );
  return {
    plan: {
      ...outlook,
      title: titleOf(scene, { ...outlook, people: names.length }, sitsAndStands),
      changes: settings.flatMap((setting) => changeOf(scene, setting)),
    },
    worth: serves.length + likely.length * LIKELY + worthInPart(own) - new Set(harmed.map(({ who }) => who)).size,
    people: names.length,
  };
}

interface Outcome {
  readonly person: Person;
  readonly postures: number;
  readonly left: readonly LeftOut[];
  /** The shares are high enough to be sure. */
  readonly sure: boolean;
}

function outcomesAt(scene: Scene, where: (station: Station) => boolean): readonly Outcome[] {
  return scene.stations.filter(where).flatMap((station) =>
    station.people.map((person) => ({
      person,
      postures: station.workstation.postures.value.length,
      ...outcomeOf(scene, station, person),
    })),
  );
}

function harmedElsewhere(before: Scene, after: Scene, desk: string, settings: readonly Setting[]): readonly LeftOut[] {
  const seats = new Set(settings.filter(({ part }) => part !== 'desk').map(({ of }) => of));
  const elsewhere = (station: Station) => station.desk?.name !== desk && seats.has(station.seat?.name ?? '');
  const earlier = outcomesAt(before, elsewhere);
  return outcomesAt(after, elsewhere).flatMap(({ left }, index) => (earlier[index]!.left.length === 0 ? left : []));
}

function outcomeOf(scene: Scene, station: Station, person: Person): Pick<Outcome, 'left' | 'sure'> {
  let sure = true;
  const left = station.workstation.postures.value.flatMap((posture): LeftOut[] => {
    const heights = heightsOf(station, posture);
    const rules = scene.rules(station, posture);
    if (!heights || rules.length === 0) return [];
    const about = { who: person.name, posture, workstation: station.name };
    const shares = sharesOf(rules, 'preferred', heights, person);
    if (person.kind === 'crowd') {
      const weakest = rules[shares.byRule.indexOf(Math.min(...shares.byRule))]!;
      const isServed = verdictOf(shares.joint, 1, person.wanted) === 'pass';
      return isServed ? [] : [{ ...about, check: weakest.check, share: shares.joint }];
    }
    sure &&= shares.byRule.every((share) => share >= person.wanted);
    const { seat, desk } = settingOf(rules, heights, person.dimensions);
    return rules.flatMap((rule): LeftOut[] => {
      const margins = rule.demands.map((d) => marginIn(d.preferred, valueOf(d.form, person.dimensions, seat, desk)));
      const margin = Math.min(...margins);
      return margin >= -TOLERANCE ? [] : [{ ...about, check: rule.check, by: -margin }];
    });
  });
  return { left, sure };
}

function worthInPart(outcomes: readonly Outcome[]): number {
  const parts = outcomes.map(({ person, left, postures }) => {
    if (left.length === 0) return 0;
    if (person.kind === 'crowd') return CROWD_IN_PART * (Math.min(...left.map(({ share }) => share!)) / person.wanted);
    return ONE_POSTURE * (1 - new Set(left.map(({ posture }) => posture)).size / postures);
  });
  return parts.reduce((sum, part) => sum + part, 0);
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
  return [{ origin, text: value.min === value.max ? typeLength(value.min, show) : typeRange(value, show) }];
}

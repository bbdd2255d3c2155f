import { makeBody, meanOf, type Knowledge } from '../bodies/body.js';
import { assumedOfAges } from '../bodies/growing.js';
import { dimensionNames, type DimensionName } from '../bodies/dimensions.js';
import { peopleOf } from '../bodies/people.js';
import type { Booth, Crowd, Operator, Posture, Workstation } from '../booth.js';
import type { BodyRule, Check } from '../checks/check.js';
import { formatLength } from '../format.js';
import { layOut, type Layout } from '../layout/layout.js';
import type { Rule } from '../stations/rules.js';
import type { Person, Station } from '../stations/station.js';
import type { Millimetres } from '../units.js';

/** A booth made ready for checks: people as bodies, workstations with what they refer to, everything in its place. */
export interface Scene {
  readonly checks: readonly Check[];
  readonly booth: Booth;
  readonly layout: Layout;
  readonly persons: ReadonlyMap<string, Person>;
  readonly stations: readonly Station[];
  /** A length in the reader's unit. */
  length(value: Millimetres): string;
  /** The rules that hold at a station in a posture, in their order; the station may be a changed one. */
  rules(station: Station, posture: Posture): readonly StationRule[];
}

/** A rule that can be answered at a station, with its check. */
export interface StationRule extends Rule {
  /** The check's title. */
  readonly title: string;
  readonly body: BodyRule;
}

export function makeScene(booth: Booth, checks: readonly Check[]): Scene {
  const persons = new Map<string, Person>();
  for (const operator of booth.operators) persons.set(operator.name, operatorOf(operator));
  for (const crowd of booth.crowds) persons.set(crowd.name, crowdOf(crowd));
  const stations = booth.workstations.map((workstation) => stationOf(booth, workstation, persons));
  const ordered = checks.filter((check) => check.rule).sort((a, b) => a.rule!.order - b.rule!.order);
  const rulesByStation = new Map<Station, Map<Posture, readonly StationRule[]>>();

  return {
    checks,
    booth,
    layout: layOut(booth),
    persons,
    stations,
    length: (value) => formatLength(value, booth.show),
    rules(station, posture) {
      const byPosture = rulesByStation.get(station) ?? new Map<Posture, readonly StationRule[]>();
      rulesByStation.set(station, byPosture);
      const known = byPosture.get(posture);
      if (known) return known;
      const rules = ordered
        .filter(({ rule }) => rule!.posture === posture && (rule!.applies?.(station) ?? true) && !rule!.lacks(station))
        .map((check) => ({
          check: check.id,
          title: check.title,
          demands: check.rule!.demands(station),
          body: check.rule!,
        }));
      byPosture.set(posture, rules);
      return rules;
    },
  };
}

function stationOf(booth: Booth, workstation: Workstation, persons: ReadonlyMap<string, Person>): Station {
  const desk = booth.desks.find((candidate) => candidate.name === workstation.desk?.name);
  const seat = booth.seats.find((candidate) => candidate.name === workstation.seat?.name);
  return {
    workstation,
    name: workstation.name,
    booth,
    ...(desk && { desk }),
    ...(seat && { seat }),
    people: workstation.people.flatMap((reference) => persons.get(reference.name) ?? []),
    shoe: booth.shoe.value,
    slump: booth.slump.value,
    working: workstation.working.value,
  };
}

/** Of these people nine in ten must meet a preferred band, unless a crowd says otherwise. */
const USUAL_SHARE = 0.9;

function operatorOf(operator: Operator): Person {
  const measured: Partial<Record<DimensionName, number>> = {};
  for (const name of dimensionNames) {
    const given = operator.measured[name];
    if (given) measured[name] = given.value;
  }
  const women = operator.sex ? (operator.sex.value === 'female' ? 1 : 0) : 0.5;
  const knowledge = { women, measured, reportedStature: operator.statureIsReported };
  return {
    ...bodyFor(knowledge),
    name: operator.name,
    kind: 'operator',
    origin: operator.origin,
    wanted: USUAL_SHARE,
    assumes: [],
  };
}

function crowdOf(crowd: Crowd): Person {
  const statureRange = crowd.stature?.value;
  const ages = crowd.ages?.value;
  const knowledge = {
    women: crowd.women.value,
    measured: {},
    ...(ages && { ages }),
    ...(statureRange && { statureRange }),
  };
  return {
    ...bodyFor(knowledge),
    name: crowd.name,
    kind: 'crowd',
    origin: crowd.origin,
    wanted: crowd.cover.value,
    assumes: assumedOfAges(ages),
  };
}

type BodyParts = Pick<Person, 'body' | 'bodyKey' | 'people' | 'dimensions'>;

const REMEMBERED_BODIES = 64;
const remembered = new Map<string, BodyParts>();

/** The same knowledge gives the same people; making them anew at each keystroke would cost more than all checks. */
function bodyFor(knowledge: Knowledge): BodyParts {
  const key = JSON.stringify(knowledge);
  const known = remembered.get(key);
  if (known) return known;
  const body = makeBody(knowledge);
  const dimensions = {} as Record<DimensionName, number>;
  for (const name of dimensionNames) dimensions[name] = meanOf(body, name);
  const parts = { body, bodyKey: key, people: peopleOf(body), dimensions };
  if (remembered.size >= REMEMBERED_BODIES) remembered.delete(remembered.keys().next().value!);
  remembered.set(key, parts);
  return parts;
}

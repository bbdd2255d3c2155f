import { makeBody, meanOf, type Knowledge } from '../bodies/body.js';
import { assumedOfAges } from '../bodies/growing.js';
import { dimensionNames, type DimensionName } from '../bodies/dimensions.js';
import { peopleOf, type People } from '../bodies/people.js';
import type { Booth, Crowd, Desk, Operator, Posture, Seat, Workstation } from '../booth.js';
import type { BodyRule } from '../checks/body-rule.js';
import { formatLength } from '../format.js';
import { layOut, type Layout } from '../layout/layout.js';
import type { Rule } from '../stations/rules.js';
import type { Person, Station } from '../stations/station.js';
import type { Millimetres } from '../units.js';

/** A booth made ready for checks: people as bodies, workstations with what they refer to, everything in its place. */
export interface Scene {
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

/** What a scene knows of a check. */
interface Ruling {
  readonly id: string;
  readonly title: string;
  readonly rule?: BodyRule;
}

export function makeScene(booth: Booth, checks: readonly Ruling[]): Scene {
  const persons = new Map<string, Person>();
  for (const crowd of byName(booth.crowds).values()) persons.set(crowd.name, known(crowds, crowd, crowdOf));
  for (const operator of byName(booth.operators).values())
    persons.set(operator.name, known(operators, operator, operatorOf));
  const desks = byName(booth.desks);
  const seats = byName(booth.seats);
  const stations = booth.workstations.map((workstation) =>
    stationOf(booth, workstation, desks.get(workstation.desk?.name), seats.get(workstation.seat?.name), persons),
  );
  const ordered = checks.filter((check) => check.rule).sort((a, b) => a.rule!.order - b.rule!.order);
  const rulesByStation = new Map<Station, Map<Posture, readonly StationRule[]>>();
  let layout: Layout | undefined;

  return {
    booth,
    get layout() {
      return (layout ??= layOut(booth));
    },
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

/** The same declaration is the same person, from one scene to the next. */
const operators = new WeakMap<Operator, Person>();
const crowds = new WeakMap<Crowd, Person>();

function known<Said extends object>(persons: WeakMap<Said, Person>, said: Said, make: (said: Said) => Person): Person {
  const found = persons.get(said) ?? make(said);
  persons.set(said, found);
  return found;
}

/** Of things with one name the first counts. */
export function byName<Thing extends { readonly name: string }>(
  things: readonly Thing[],
): ReadonlyMap<string | undefined, Thing> {
  const named = new Map<string | undefined, Thing>();
  for (const thing of things) if (!named.has(thing.name)) named.set(thing.name, thing);
  return named;
}

function stationOf(
  booth: Booth,
  workstation: Workstation,
  desk: Desk | undefined,
  seat: Seat | undefined,
  persons: ReadonlyMap<string, Person>,
): Station {
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
  return personOf(knowledge, {
    name: operator.name,
    kind: 'operator',
    origin: operator.origin,
    wanted: USUAL_SHARE,
    assumes: () => [],
  });
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
  return personOf(knowledge, {
    name: crowd.name,
    kind: 'crowd',
    origin: crowd.origin,
    wanted: crowd.cover.value,
    assumes: () => assumedOfAges(ages),
  });
}

type BodyParts = Pick<Person, 'body' | 'bodyKey' | 'dimensions'>;

/** Its people are made when they are asked for, and forgotten when many others were asked for since. */
function personOf(knowledge: Knowledge, rest: Omit<Person, keyof BodyParts | 'people'>): Person {
  const parts = bodyFor(knowledge);
  return {
    ...parts,
    get people() {
      return recall(peopleByKey, REMEMBERED_PEOPLE, parts.bodyKey, () => peopleOf(parts.body));
    },
    ...rest,
  };
}

/** The same knowledge gives the same body; making it anew at each keystroke would cost more than all checks. */
function bodyFor(knowledge: Knowledge): BodyParts {
  const key = JSON.stringify(knowledge);
  return recall(bodiesByKey, REMEMBERED_BODIES, key, () => {
    const body = makeBody(knowledge);
    const dimensions = {} as Record<DimensionName, number>;
    for (const name of dimensionNames) dimensions[name] = meanOf(body, name);
    return { body, bodyKey: key, dimensions };
  });
}

const bodiesByKey = new Map<string, BodyParts>();
const REMEMBERED_BODIES = 1024;
/** Up to a megabyte each. More than work at one place: there each is asked for with each of the others. */
const peopleByKey = new Map<string, People>();
const REMEMBERED_PEOPLE = 128;

/** What is in the map, or made and put into it; the one not asked for longest gives way. */
function recall<Value>(map: Map<string, Value>, most: number, key: string, make: () => Value): Value {
  const value = map.get(key) ?? make();
  map.delete(key);
  map.set(key, value);
  if (map.size > most) map.delete(map.keys().next().value!);
  return value;
}

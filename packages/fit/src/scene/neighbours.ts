import type { Body } from '../bodies/body.js';
import type { People } from '../bodies/people.js';
import type { Millimetres, Share } from '../units.js';
import type { Person } from '../stations/station.js';

/**
 * The share of pairs, one of each body, whose forearm breadths add up to no more than a length. The two know nothing of
 * each other.
 */
export function shareOfPairs(one: Person, other: Person, most: Millimetres): Share {
  const ofOne = sharesOfPairs.get(one.body) ?? new WeakMap<Body, Map<Millimetres, Share>>();
  sharesOfPairs.set(one.body, ofOne);
  const ofBoth = ofOne.get(other.body) ?? new Map<Millimetres, Share>();
  ofOne.set(other.body, ofBoth);
  const known = ofBoth.get(most);
  if (known !== undefined) return known;
  const share = count(one.people, other.people, most);
  if (ofBoth.size >= REMEMBERED_DISTANCES) ofBoth.clear();
  ofBoth.set(most, share);
  return share;
}

/** The same two bodies so far apart: a keystroke elsewhere costs nothing here. */
const sharesOfPairs = new WeakMap<Body, WeakMap<Body, Map<Millimetres, Share>>>();
const REMEMBERED_DISTANCES = 100;

function count(people: People, others: People, most: Millimetres): Share {
  let share = 0;
  for (const one of sortedBreadths(people))
    for (const other of sortedBreadths(others))
      share += one.weight * other.weight * pairsUpTo(one.values, other.values, most);
  return Math.min(1, share);
}

/** How many pairs, one of each, add up to no more than a length. */
function pairsUpTo(values: Float64Array, others: Float64Array, most: Millimetres): number {
  let pairs = 0;
  let fitting = others.length;
  for (const value of values) {
    while (fitting > 0 && others[fitting - 1]! > most - value) fitting--;
    pairs += fitting;
  }
  return pairs;
}

/** The forearm breadths of the people of one sex, who all count as much. */
interface Sorted {
  readonly values: Float64Array;
  readonly weight: Share;
}

function sortedBreadths(people: People): readonly Sorted[] {
  const known = remembered.get(people);
  if (known) return known;
  const { count, personsPerSex: each, weights } = people;
  const column = people.column('forearmForearmBreadth');
  const sorted = Array.from({ length: count / each }, (_, sex) => ({
    values: column.slice(sex * each, (sex + 1) * each).sort(),
    weight: weights[sex * each]!,
  }));
  remembered.set(people, sorted);
  return sorted;
}

const remembered = new WeakMap<People, readonly Sorted[]>();

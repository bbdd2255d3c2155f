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
  const sorted = sortedBreadths(others);
  const breadths = people.column('forearmForearmBreadth');
  let share = 0;
  for (let person = 0; person < people.count; person++) {
    share += people.weights[person]! * shareUpTo(sorted, most - breadths[person]!);
  }
  return Math.min(1, share);
}

interface Sorted {
  readonly values: Float64Array;
  /** The share of people up to and with each value. */
  readonly shares: Float64Array;
}

function sortedBreadths(people: People): Sorted {
  const known = remembered.get(people);
  if (known) return known;
  const column = people.column('forearmForearmBreadth');
  const order = Array.from(column.keys()).sort((a, b) => column[a]! - column[b]!);
  let sum = 0;
  const shares = Float64Array.from(order, (person) => (sum += people.weights[person]!));
  const sorted = { values: Float64Array.from(order, (person) => column[person]!), shares };
  remembered.set(people, sorted);
  return sorted;
}

const remembered = new WeakMap<People, Sorted>();

function shareUpTo({ values, shares }: Sorted, most: Millimetres): Share {
  let low = 0;
  let high = values.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (values[middle]! <= most) low = middle + 1;
    else high = middle;
  }
  return low === 0 ? 0 : shares[low - 1]!;
}

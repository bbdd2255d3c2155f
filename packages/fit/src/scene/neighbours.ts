import type { People } from '../bodies/people.js';
import type { Millimetres, Share } from '../units.js';
import type { Person } from '../stations/station.js';

/**
 * The share of pairs, one of each body, whose forearm breadths add up to no more than a length. The two know nothing of
 * each other.
 */
export function shareOfPairs(one: Person, other: Person, most: Millimetres): Share {
  const { people } = other;
  const sorted = sortedBreadths(people);
  const breadths = one.people.column('forearmForearmBreadth');
  let share = 0;
  for (let person = 0; person < one.people.count; person++) {
    share += one.people.weights[person]! * shareUpTo(sorted, most - breadths[person]!);
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

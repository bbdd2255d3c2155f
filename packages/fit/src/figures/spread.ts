import type { People } from '../bodies/people.js';
import type { Millimetres } from '../units.js';
import type { Spread } from './figures.js';

const BINS = 512;

/** A height with its 5th and 95th percentile over people, exact to a 512th part of all that occurs. */
export function spreadOf(height: Millimetres, people: People, each: Float64Array): Spread {
  let least = Infinity;
  let most = -Infinity;
  for (let person = 0; person < each.length; person++) {
    const value = each[person]!;
    if (value < least) least = value;
    if (value > most) most = value;
  }
  if (most - least < 1e-9) return { height, low: least, high: most };
  const step = (most - least) / BINS;
  const shares = new Float64Array(BINS);
  for (let person = 0; person < each.length; person++)
    shares[Math.min(BINS - 1, Math.floor((each[person]! - least) / step))]! += people.weights[person]!;
  const below = (share: number) => {
    let sum = 0;
    for (let bin = 0; bin < BINS; bin++) {
      if (sum + shares[bin]! >= share) return least + step * (bin + (share - sum) / shares[bin]!);
      sum += shares[bin]!;
    }
    return most;
  };
  return { height, low: below(0.05), high: below(0.95) };
}

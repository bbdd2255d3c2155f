import { buyingStep } from '../format.js';
import type { Scene } from '../scene/scene.js';
import { keyOfRules } from '../stations/rules.js';
import type { Millimetres, Range } from '../units.js';
import type { Choice, Place } from './choices.js';

/** What is best for some places, and from where to where values are as good. */
export interface Best {
  readonly value: Millimetres;
  readonly asGood: Range;
}

/**
 * The value, in steps that people buy and cut, that leaves the worst-off place most ease; where somebody is left out in
 * any case, the one that misses least, all in all, and then others may miss as little: what one check gains another loses. Both are concave in
 * the value, so narrowing brackets finds the best.
 */
export function bestOf(scene: Scene, choice: Choice, places: readonly Place[]): Best {
  const step = buyingStep(scene.booth.show);
  const key = JSON.stringify([choice.kind, choice.within, step, places.map((place) => keyOfPlace(choice, place))]);
  const known = remembered.get(key);
  if (known) return known;
  const best = search(choice, places, step);
  if (remembered.size >= REMEMBERED) remembered.clear();
  remembered.set(key, best);
  return best;
}

/** The value that is nearest to what the file says, of those as good as the best. */
export function nearestOfBest({ asGood: { min, max } }: Best, now: Millimetres): Millimetres {
  return Math.min(Math.max(now, min), max);
}

/** The same people at the same places have the same best value: a keystroke elsewhere costs nothing here. */
const remembered = new Map<string, Best>();
const REMEMBERED = 2000;

/** All that the merit of a place depends on, at the least value: whatever else it would be with another value differs there already. */
function keyOfPlace(choice: Choice, place: Place): readonly unknown[] {
  const { rules, heights } = choice.at(place, choice.within.min);
  return [place.person.bodyKey, heights.seat, heights.desk, keyOfRules(rules)];
}

function search(choice: Choice, places: readonly Place[], step: Millimetres): Best {
  const ease = (n: number) => leastOf(places, (place) => meritAt(choice, place, n * step).ease);
  const miss = (n: number) => -sumOf(places.map((place) => meritAt(choice, place, n * step).miss));
  const low = Math.ceil(choice.within.min / step);
  const high = Math.floor(choice.within.max / step);
  const easiest = highestStep(low, high, ease);
  if (ease(easiest) >= 0) return { value: easiest * step, asGood: { min: easiest * step, max: easiest * step } };
  const nearest = highestStep(low, high, miss);
  const enough = miss(nearest) - SAME_MISS;
  const isEnough = (n: number) => miss(n) >= enough;
  const asGood = { min: lastStep(nearest, low, isEnough) * step, max: lastStep(nearest, high, isEnough) * step };
  return { value: nearest * step, asGood };
}

/** A miss is found to so much, by `meritFor`. */
const SAME_MISS: Millimetres = 0.5;

/** The whole number farthest from the first, as far as the last, for which something holds that holds for the first. */
export function lastStep(first: number, last: number, holds: (n: number) => boolean): number {
  let good = first;
  let bad = last + Math.sign(last - first);
  while (Math.abs(bad - good) > 1) {
    const middle = Math.trunc((good + bad) / 2);
    if (holds(middle)) good = middle;
    else bad = middle;
  }
  return good;
}

function meritAt(choice: Choice, place: Place, value: Millimetres) {
  const { heights, merit } = choice.at(place, value);
  return merit(heights);
}

/** The same whatever the order: of two values that miss as much, the last digit decides. */
function sumOf(numbers: readonly number[]): number {
  return [...numbers].sort((a, b) => a - b).reduce((sum, each) => sum + each, 0);
}

function leastOf(places: readonly Place[], of: (place: Place) => number): number {
  return Math.min(...places.map(of));
}

/** The whole number with the greatest value of a concave function. */
function highestStep(from: number, to: number, value: (n: number) => number): number {
  let low = from;
  let high = to;
  while (high - low > 2) {
    const a = low + Math.floor((high - low) / 3);
    const b = high - Math.floor((high - low) / 3);
    if (value(a) < value(b)) low = a + 1;
    else high = b - 1;
  }
  let best = low;
  for (let n = low; n <= high; n++) if (value(n) > value(best)) best = n;
  return best;
}

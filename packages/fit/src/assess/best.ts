import { buyingStep } from '../format.js';
import type { Scene } from '../scene/scene.js';
import { keyOfRules } from '../stations/rules.js';
import type { Millimetres } from '../units.js';
import type { Choice, Place } from './choices.js';

/**
 * The value, in steps that people buy and cut, that leaves the worst-off place most ease; where somebody is left out in
 * any case, the one that misses least, all in all. Both are concave in the value, so narrowing brackets finds the best.
 */
export function bestValue(scene: Scene, choice: Choice, places: readonly Place[]): Millimetres {
  const step = buyingStep(scene.booth.show);
  const key = JSON.stringify([choice.kind, choice.within, step, places.map((place) => keyOfPlace(choice, place))]);
  const known = remembered.get(key);
  if (known !== undefined) return known;
  const best = search(choice, places, step);
  if (remembered.size >= REMEMBERED) remembered.clear();
  remembered.set(key, best);
  return best;
}

/** The same people at the same places have the same best value: a keystroke elsewhere costs nothing here. */
const remembered = new Map<string, Millimetres>();
const REMEMBERED = 2000;

/** All that the merit of a place depends on, at the least value: whatever else it would be with another value differs there already. */
function keyOfPlace(choice: Choice, place: Place): readonly unknown[] {
  const { rules, heights } = choice.at(place, choice.within.min);
  return [place.person.bodyKey, heights.seat, heights.desk, keyOfRules(rules)];
}

function search(choice: Choice, places: readonly Place[], step: Millimetres): Millimetres {
  const ease = (n: number) => leastOf(places, (place) => meritAt(choice, place, n * step).ease);
  const miss = (n: number) => -places.reduce((sum, place) => sum + meritAt(choice, place, n * step).miss, 0);
  const low = Math.ceil(choice.within.min / step);
  const high = Math.floor(choice.within.max / step);
  const easiest = highestStep(low, high, ease);
  return (ease(easiest) >= 0 ? easiest : highestStep(low, high, miss)) * step;
}

function meritAt(choice: Choice, place: Place, value: Millimetres) {
  const { heights, merit } = choice.at(place, value);
  return merit(heights);
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

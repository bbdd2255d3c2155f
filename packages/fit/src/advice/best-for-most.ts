import { bestOf, lastStep, nearestOfBest } from '../assess/best.js';
import type { Choice } from '../assess/choices.js';
import { buyingStep } from '../format.js';
import type { Scene } from '../scene/scene.js';
import type { Millimetres } from '../units.js';
import { exactBand } from './bands.js';

/**
 * The value that serves all with most ease; if none serves all, one that serves the most, and then misses least. Among values
 * that are as good, the one nearest to what the file says.
 */
export function bestForMost(scene: Scene, choice: Choice): Millimetres {
  const shared = nearestOfBest(bestOf(scene, choice, choice.places), choice.now);
  const bands = choice.places.map((place) => exactBand(choice, place));
  if (bands.every((band) => band && shared >= band.min && shared <= band.max)) {
    return nearestAsGood(scene, choice, shared);
  }
  const step = buyingStep(scene.booth.show);
  const count = (value: Millimetres) => bands.filter((band) => band && value >= band.min && value <= band.max).length;
  const first = Math.ceil(choice.within.min / step);
  const values = Array.from({ length: Math.floor(choice.within.max / step) - first + 1 }, (_, n) => (first + n) * step);
  const most = Math.max(...values.map(count));
  if (most === 0) return nearestAsGood(scene, choice, shared);
  const candidates = [choice.now, ...values].filter((value) => count(value) === most);
  return candidates.reduce((a, b) => (Math.abs(b - shared) < Math.abs(a - shared) ? b : a));
}

/** Eases closer than this are the same to a person. */
const SAME_EASE = 0.02;

/** Nobody should move a desk for nothing. Ease is concave in the value, so the values as good as the best are one stretch. */
function nearestAsGood(scene: Scene, choice: Choice, best: Millimetres): Millimetres {
  const ease = (value: Millimetres) =>
    Math.min(
      ...choice.places.map((place) => {
        const { heights, merit } = choice.at(place, value);
        return merit(heights).ease;
      }),
    );
  const enough = ease(best) - SAME_EASE;
  if (ease(choice.now) >= enough) return choice.now;
  const step = Math.sign(choice.now - best) * buyingStep(scene.booth.show);
  const steps = Math.ceil((choice.now - best) / step) - 1;
  return best + lastStep(0, steps, (n) => ease(best + n * step) >= enough) * step;
}

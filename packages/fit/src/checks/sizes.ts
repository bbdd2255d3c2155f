import { buyingStep } from '../format.js';
import type { DisplayUnit, Millimetres } from '../units.js';

/** The smallest size that people buy and cut, and that is no smaller: what 'at least' comes to in their unit. */
export function sizeUp(length: Millimetres, unit: DisplayUnit): Millimetres {
  const step = buyingStep(unit);
  return Math.ceil(length / step - 1e-9) * step;
}

/** The largest such size that is no larger: what 'at most' comes to. */
export function sizeDown(length: Millimetres, unit: DisplayUnit): Millimetres {
  const step = buyingStep(unit);
  return Math.floor(length / step + 1e-9) * step;
}

import type { DimensionName, Sex } from '../bodies/dimensions.js';
import type { Range, Share, Years } from '../units.js';
import type { Given, Named } from './given.js';

/** A person of whom something is known. */
export interface Operator extends Named {
  readonly sex?: Given<Sex>;
  /** Measured dimensions: millimetres, `weight` in kilograms. */
  readonly measured: Partial<Record<DimensionName, Given<number>>>;
  /** The stature is what the person says, not what a tape says. */
  readonly statureIsReported: boolean;
}

/** People who are not known yet. */
export interface Crowd extends Named {
  readonly women: Given<Share>;
  /** The share of the crowd that wants to be served. */
  readonly cover: Given<Share>;
  readonly stature?: Given<Range>;
  /** Completed years of age. */
  readonly ages?: Given<{ readonly min: Years; readonly max: Years }>;
}

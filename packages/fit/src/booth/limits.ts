import type { Millimetres } from '../units.js';
import type { Origin } from './given.js';

export type LimitProfile = 'us' | 'uk' | 'generic';

/** The file holds one check to a number of its own. */
export interface LimitOverride {
  readonly check: string;
  readonly value: Millimetres;
  readonly reason: string;
  readonly origin: Origin;
}

/** A finding that is tolerated on purpose. */
export interface Acceptance {
  readonly check: string;
  /** The subject's name, if the acceptance is for one subject only. */
  readonly subject?: string;
  readonly reason: string;
  readonly origin: Origin;
}

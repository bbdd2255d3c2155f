import type { Verdict } from '../assessment.js';
import type { Share } from '../units.js';

/** Fewer than this share inside the outer limit is a failure. */
const HALF = 0.5;

/**
 * Pass: enough people meet the preferred band. Fail: fewer than half meet the outer limit. Marginal: between. Where all
 * is known the shares are 0 or 1, and the rule reads: inside the preferred band passes, outside the outer limit fails.
 */
export function verdictOf(preferred: Share, outer: Share, wanted: Share): Verdict {
  if (preferred >= wanted - 1e-9) return 'pass';
  return outer < HALF ? 'fail' : 'marginal';
}

/** The verdict of a quantity that is known exactly. */
export function exactVerdict(meetsPreferred: boolean, meetsOuter: boolean): Verdict {
  return verdictOf(meetsPreferred ? 1 : 0, meetsOuter ? 1 : 0, 0.9);
}

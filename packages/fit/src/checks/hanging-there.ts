import { lowestBetween } from '../stations/station.js';
import type { Millimetres } from '../units.js';
import { said, say } from '../words/say.js';
import type { Reading } from './body-rule.js';

/**
 * A sentence on too little height under a desk, with how much more there is without what hangs there between two depths from the near
 * edge, if something does: that is easier to move than a top.
 */
export function withHangingThere(
  sentence: string,
  { station, length }: Reading,
  from: Millimetres,
  to: Millimetres,
): string {
  const lowest = lowestBetween(station.desk!, from, to);
  return lowest
    ? `${sentence} ${say`Without the ${said(lowest.kind)} they have ${length(lowest.relief)} more.`}`
    : sentence;
}

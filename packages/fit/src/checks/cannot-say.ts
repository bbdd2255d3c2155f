import type { Missing, Subject } from '../assessment.js';
import type { Origin, Posture } from '../booth.js';
import type { FindingDraft } from './check.js';

/** A finding that asks for the property to add; it is finished with how. `what` is a sentence: 'Cannot say whether the rack fits.' */
export function cannotSay(
  subject: Subject,
  what: string,
  missing: Missing,
  origin: Origin | undefined,
  posture?: Posture,
): FindingDraft {
  return {
    subject,
    ...(posture && { posture }),
    verdict: 'unknown',
    message: what,
    ...(origin && { origin }),
    missing,
  };
}

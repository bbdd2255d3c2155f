import type { Missing, Subject } from '../assessment.js';
import type { Origin, Posture } from '../booth.js';
import type { FindingDraft } from './check.js';

/** A finding that names the property to add. `what` completes 'Cannot say …'. */
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
    message: `Cannot say ${what}. Add \`${missing.property}\` to ${missing.of}, such as \`${missing.example}\`.`,
    ...(origin && { origin }),
    missing,
  };
}

import type { Missing, Subject } from '../assessment.js';
import type { Origin, Posture } from '../booth.js';
import type { FindingDraft } from './check.js';
import { say } from '../words/say.js';

/** A finding that names the property to add. `what` is a sentence: 'Cannot say whether the rack fits.' */
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
    message: `${what} ${say`Add \`${missing.property}\` to ${missing.of}, such as \`${missing.example}\`.`}`,
    ...(origin && { origin }),
    missing,
  };
}

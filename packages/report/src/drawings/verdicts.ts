import type { Assessment, Finding, PlacedPiece, Posture, Verdict } from '@boothwright/fit';
import { worst } from '../words.js';

/** Which findings a drawn thing stands for. What is left out is not asked. */
export interface About {
  readonly checks?: readonly string[];
  readonly kind?: Finding['subject']['kind'] | PlacedPiece['kind'];
  readonly subject?: string;
  readonly who?: string;
  readonly posture?: Posture;
}

/** The verdict that matters most of what was found about something; nothing if nothing was. An accepted finding counts as passed. */
export function verdictOn({ findings }: Assessment, about: About): Verdict | undefined {
  const found = findings.filter(
    (finding) =>
      (!about.checks || about.checks.includes(finding.check)) &&
      (!about.kind || finding.subject.kind === about.kind) &&
      (about.subject === undefined || finding.subject.name === about.subject) &&
      (about.who === undefined || finding.operator === about.who) &&
      (!about.posture || finding.posture === about.posture),
  );
  if (found.length === 0) return undefined;
  return worst(found.map(({ verdict, accepted }) => (accepted === undefined ? verdict : 'pass')));
}

/** The same, but only where something is not as it should be. */
export function troubleWith(assessment: Assessment, about: About): Verdict | undefined {
  const verdict = verdictOn(assessment, about);
  return verdict === 'pass' ? undefined : verdict;
}

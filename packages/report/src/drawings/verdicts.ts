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

/** What was found about something: the verdict that matters most, and whether the file accepts it. */
export interface Judged {
  readonly verdict: Verdict;
  readonly accepted: boolean;
}

/** What is open comes before what is accepted; nothing if nothing was found. */
export function judgedOn({ findings }: Assessment, about: About): Judged | undefined {
  const found = findings.filter(
    (finding) =>
      (!about.checks || about.checks.includes(finding.check)) &&
      (!about.kind || finding.subject.kind === about.kind) &&
      (about.subject === undefined || finding.subject.name === about.subject) &&
      (about.who === undefined || finding.operator === about.who) &&
      (!about.posture || finding.posture === about.posture),
  );
  if (found.length === 0) return undefined;
  const open = worst(found.filter(({ accepted }) => accepted === undefined).map(({ verdict }) => verdict));
  if (open !== 'pass') return { verdict: open, accepted: false };
  const verdict = worst(found.map((finding) => finding.verdict));
  return { verdict, accepted: verdict !== 'pass' };
}

export function verdictOn(assessment: Assessment, about: About): Verdict | undefined {
  return judgedOn(assessment, about)?.verdict;
}

/** The same, but only where something is not as it should be and nobody accepts it. */
export function troubleWith(assessment: Assessment, about: About): Verdict | undefined {
  const judged = judgedOn(assessment, about);
  return judged && !judged.accepted && judged.verdict !== 'pass' ? judged.verdict : undefined;
}

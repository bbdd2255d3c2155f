import type { VerdictParams } from '@boothwright/language/protocol';

/** What the language status says of a file. */
export interface StatusTold {
  readonly text: string;
  readonly detail: string;
  readonly severity: 'information' | 'warning' | 'error';
}

type Counts = NonNullable<VerdictParams['counts']>;

/**
 * The verdict in words, worst first; what is zero is left out. While the text has errors, the last verdict (`lastGood`) is told
 * as what was so before them.
 */
export function tellVerdict({ faults, counts, took }: VerdictParams, lastGood?: Counts): StatusTold {
  if (faults > 0) {
    const detail = lastGood ? `Before: ${tally(lastGood)}.` : 'Correct them to see what fits.';
    return { text: `${faults} ${faults === 1 ? 'error' : 'errors'} in the text`, detail, severity: 'error' };
  }
  if (!counts) return { text: 'No booth in this file', detail: 'Pieces for other files.', severity: 'information' };
  const detail = took === undefined ? '' : `Checked in ${duration(took)}.`;
  return { text: tally(counts), detail, severity: counts.fail > 0 ? 'warning' : 'information' };
}

function tally(counts: Counts): string {
  const words = { fail: 'fail', marginal: 'marginal', unknown: 'cannot say', pass: 'pass', accepted: 'accepted' };
  const parts = Object.entries(words)
    .map(([verdict, word]) => [counts[verdict as keyof Counts], word] as const)
    .filter(([count]) => count > 0);
  return parts.map(([count, word]) => `${count} ${word}`).join(', ') || 'Nothing to check yet';
}

function duration(milliseconds: number): string {
  if (milliseconds < 1) return 'less than 1 ms';
  return milliseconds < 1000 ? `${Math.round(milliseconds)} ms` : `${(milliseconds / 1000).toFixed(1)} s`;
}

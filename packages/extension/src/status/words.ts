import type { VerdictParams } from '@boothwright/language/protocol';

/** What the language status says of a file. */
export interface StatusTold {
  readonly text: string;
  readonly detail: string;
  readonly severity: 'information' | 'warning' | 'error';
}

type Counts = NonNullable<VerdictParams['counts']>;

/** What of the editor puts a sentence into its language. */
export interface Translator {
  readonly t: (message: string, ...args: (string | number)[]) => string;
}

/**
 * The verdict in words, worst first; what is zero is left out. While the text has errors, the last verdict (`lastGood`) is told
 * as what was so before them.
 */
export function tellVerdict(
  { faults, counts, took }: VerdictParams,
  lastGood: Counts | undefined,
  l10n: Translator,
): StatusTold {
  if (faults > 0) {
    const [text, todo] =
      faults === 1
        ? [l10n.t('1 error in the text'), l10n.t('Correct it to see what fits.')]
        : [l10n.t('{0} errors in the text', faults), l10n.t('Correct them to see what fits.')];
    return { text, detail: lastGood ? l10n.t('Before: {0}.', tally(lastGood, l10n)) : todo, severity: 'error' };
  }
  if (!counts)
    return {
      text: l10n.t('No booth in this file'),
      detail: l10n.t('Pieces for other files.'),
      severity: 'information',
    };
  const detail = took === undefined ? '' : l10n.t('Checked in {0}.', duration(took, l10n));
  return { text: tally(counts, l10n), detail, severity: counts.fail > 0 ? 'warning' : 'information' };
}

function tally({ fail, marginal, unknown, pass, accepted }: Counts, l10n: Translator): string {
  const parts = [
    ...(fail > 0 ? [l10n.t('{0} fail', fail)] : []),
    ...(marginal > 0 ? [l10n.t('{0} marginal', marginal)] : []),
    ...(unknown > 0 ? [l10n.t('{0} cannot say', unknown)] : []),
    ...(pass > 0 ? [l10n.t('{0} pass', pass)] : []),
    ...(accepted > 0 ? [l10n.t('{0} accepted', accepted)] : []),
  ];
  return parts.join(', ') || l10n.t('Nothing to check yet');
}

function duration(milliseconds: number, l10n: Translator): string {
  if (milliseconds < 1) return l10n.t('less than 1 ms');
  return milliseconds < 1000 ? `${Math.round(milliseconds)} ms` : `${(milliseconds / 1000).toFixed(1)} s`;
}

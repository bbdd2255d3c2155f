import {
  formatLength,
  formatRange,
  type DisplayUnit,
  type Finding,
  type Millimetres,
  type Posture,
  type Range,
  type Verdict,
} from '@boothwright/fit';

/** How the report writes lengths, in the booth's unit. */
export interface Units {
  readonly length: (millimetres: Millimetres) => string;
  /** One length, or '28 to 32 in' for an adjustable one. */
  readonly range: (range: Range) => string;
}

export function unitsOf(show: DisplayUnit): Units {
  const length = (millimetres: Millimetres) => formatLength(millimetres, show);
  return { length, range: (range) => formatRange(range, show) };
}

export const verdictWords: Record<Verdict, string> = {
  pass: 'Passes',
  marginal: 'Marginal',
  fail: 'Fails',
  unknown: 'Cannot say',
};

const severity: readonly Verdict[] = ['pass', 'unknown', 'marginal', 'fail'];

/** The verdict that matters most of several. */
export function worst(verdicts: readonly Verdict[]): Verdict {
  return verdicts.reduce((a, b) => (severity.indexOf(b) > severity.indexOf(a) ? b : a), 'pass');
}

/** Fails first, then marginal, cannot say, passes; otherwise the order of the assessment. */
export function bySeverity(a: Pick<Finding, 'verdict'>, b: Pick<Finding, 'verdict'>): number {
  return severity.indexOf(b.verdict) - severity.indexOf(a.verdict);
}

export function postureWord(posture: Posture): string {
  return posture === 'sit' ? 'sitting' : 'standing';
}

/** 'Noor, sitting', 'Noor', or nothing for a finding that concerns no person. */
export function personOf({ operator, posture }: Finding): string {
  return [operator, posture && postureWord(posture)].filter(Boolean).join(', ');
}

export function subjectOf({ subject }: Finding): string {
  return `${subject.kind.replaceAll('-', ' ')} ${subject.name}`;
}

/** `feetSupported` and `feet-supported` become 'feet supported'. */
export function spaced(identifier: string): string {
  return identifier
    .replace(/([a-z])([A-Z])/g, '$1-$2')
    .toLowerCase()
    .replaceAll('-', ' ');
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** '1 finding', '3 findings'. */
export function count(number: number, one: string, many = `${one}s`): string {
  return `${number} ${number === 1 ? one : many}`;
}

export { formatPercent as percent } from '@boothwright/fit';

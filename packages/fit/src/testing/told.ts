import type { Finding } from '../assessment.js';
import type { Booth } from '../booth.js';
import { findingsOf } from './findings.js';

/**
 * All that a reader is told by one check, for comparing whole: what is so, in words and figures, where it points, what it asks for and offers.
 * Places are paths into the booth, such as `desks.Left.height`.
 */
export function told(booth: Booth, check: string): string {
  return findingsOf(located(booth), check).map(inWords).join('\n\n');
}

function inWords(finding: Finding): string {
  const { subject, operator, posture, verdict, message, terms, origin, related, remedies, missing } = finding;
  const listed = (word: string, all: readonly string[]) => (all.length > 0 ? [`${word} ${all.join('; ')}`] : []);
  return [
    [verdict, `${subject.kind} ${subject.name}`, operator, posture].filter(Boolean).join(', '),
    message,
    ...(terms === undefined ? [] : [`= ${terms}`]),
    ...(finding.measured === undefined && finding.limit === undefined ? [] : [figuresOf(finding)]),
    `at ${origin?.uri}, by ${finding.source}`,
    ...listed(
      'see',
      related.map((one) => `${one.origin.uri}: ${one.message}`),
    ),
    ...remedies.map(({ title, changes, safe }) =>
      [`${safe ? 'do' : 'weigh'} ${title}`, ...changes.map((change) => `${change.origin.uri} := ${change.text}`)].join(
        ' | ',
      ),
    ),
    ...(missing ? [`ask ${missing.property} of ${missing.of}, as ${missing.example}, at ${missing.origin?.uri}`] : []),
    ...listed('granted', finding.assumptions),
    ...listed('default', finding.defaults),
  ].join('\n');
}

function figuresOf({ measured, limit, margin, unit, share, shareAtLimit }: Finding): string {
  const shares = share === undefined ? '' : `, shares ${rounded(share)} and ${rounded(shareAtLimit)}`;
  return `: ${rounded(measured)} against ${rounded(limit)} ${unit}, margin ${rounded(margin)}${shares}`;
}

function rounded(value: number | undefined): string {
  return value === undefined ? 'nothing' : String(Number(value.toFixed(2)));
}

/** The booth with every origin saying by its path where it is. */
function located(booth: Booth): Booth {
  return placed(booth, '') as Booth;
}

function placed(value: unknown, path: string): unknown {
  if (Array.isArray(value)) return value.map((one: unknown, index) => placed(one, `${path}.${nameOf(one) ?? index}`));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, part]: [string, unknown]) =>
      key === 'origin' ? [key, { ...(part as object), uri: path }] : [key, placed(part, path ? `${path}.${key}` : key)],
    ),
  );
}

function nameOf(value: unknown): string | undefined {
  return typeof value === 'object' && value !== null && 'name' in value ? String(value.name) : undefined;
}

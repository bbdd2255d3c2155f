import type { Assessment, Finding } from '@boothwright/fit';
import { matrixFindings, type Arrangement } from './arrange.js';
import { code, heading, inline, list, strong, table } from './markdown-text.js';
import { strengthWarning } from './strength.js';
import { columnsOf, concerns, isIn, rowsOf } from './telling/matrix.js';
import { titleOf } from './titles.js';
import { bySeverity, percent, personOf, postureWord, subjectOf, verdictWords, worst, type Units } from './words.js';

/** Each workstation: who passes what at a glance, then each finding in words. */
export function workstations(assessment: Assessment, arrangement: Arrangement): string[] {
  const { booth } = assessment;
  if (booth.workstations.length === 0) return [];
  return [
    heading(2, 'Workstations'),
    ...booth.workstations.flatMap(({ name }) => [
      heading(3, name),
      ...matrix(assessment, name),
      ...findingsList(arrangement.stations.get(name)!),
    ]),
  ];
}

export function walkways(assessment: Assessment, findings: readonly Finding[], units: Units): string[] {
  const rows = assessment.walkways.map(({ name, clear, terms }) => {
    const own = assessment.findings.filter(({ subject }) => subject.kind === 'walkway' && subject.name === name);
    const result = own.length > 0 ? verdictWords[worst(own.map(({ verdict }) => verdict))] : 'not checked';
    return [inline(name), clear === undefined ? 'cannot say' : units.length(clear), inline(terms ?? ''), result];
  });
  return [
    heading(2, 'Walkways'),
    ...(rows.length === 0
      ? ['The file names no walkway, so none was checked.']
      : table(['Walkway', 'Clear', 'How it comes about', 'Result'], rows)),
    ...findingsList(findings),
  ];
}

/** A section of findings; nothing without any. */
export function section(title: string, findings: readonly Finding[]): string[] {
  return findings.length === 0 ? [] : [heading(2, title), ...findingsList(findings)];
}

/** Findings that the file tolerates, each with its reason. */
export function accepted(findings: readonly Finding[]): string[] {
  if (findings.length === 0) return [];
  const items = findings.map((finding) => [
    ...lines(finding).slice(0, -1),
    `Accepted because: ${inline(finding.accepted ?? '')}`,
    sourceLine(finding),
  ]);
  return [heading(2, 'Accepted on purpose'), ...list(items)];
}

/** What could not be said, and what to add to the file. */
export function unsaid(findings: readonly Finding[]): string[] {
  if (findings.length === 0) return [];
  const items = findings.map((finding) => [
    ...lines(finding).slice(0, -1),
    ...(finding.missing ? [`Add ${code(finding.missing.example)} to ${inline(finding.missing.of)}`] : []),
    sourceLine(finding),
  ]);
  return [heading(2, 'What cannot be said yet'), ...list(items)];
}

function findingsList(findings: readonly Finding[]): string[] {
  return list([...findings].sort(bySeverity).map(lines));
}

function lines(finding: Finding): string[] {
  const { verdict, check, message, terms } = finding;
  const about = [titleOf(check), subjectOf(finding), personOf(finding)].filter(Boolean).map(inline).join(' · ');
  return [
    `${strong(verdictWords[verdict])} ${about}`,
    inline(message),
    ...(terms ? [inline(terms)] : []),
    sourceLine(finding),
  ];
}

function sourceLine({ source, strength }: Finding): string {
  const warning = strengthWarning(strength);
  return `Source: ${inline(source)}${warning ? ` (${warning})` : ''}`;
}

function matrix(assessment: Assessment, station: string): string[] {
  const served = assessment.workstations.find(({ name }) => name === station)?.served ?? [];
  const findings = matrixFindings(assessment, station);
  const columns = columnsOf(served, findings);
  if (columns.length === 0) return [];
  const joint = columns.map(({ who, posture }) => {
    const person = served.find((one) => one.who === who && one.posture === posture);
    return person ? `${verdictWords[person.verdict]}, ${percent(person.share)}` : '–';
  });
  const rows = rowsOf(findings).map((row) => {
    const own = findings.filter((finding) => isIn(row, finding));
    const title = [titleOf(row.check), row.subject].filter((part) => part !== undefined);
    return [
      inline(title.join(', ')),
      ...columns.map((column) => cell(own.filter((one) => one.operator === undefined || concerns(one, column)))),
    ];
  });
  const head = columns.map(({ who, posture }) =>
    inline([who, posture && postureWord(posture)].filter(Boolean).join(', ')),
  );
  return table(['Check', ...head], [...(served.length > 0 ? [['Everything at once', ...joint]] : []), ...rows]);
}

function cell(findings: readonly Finding[]): string {
  if (findings.length === 0) return '–';
  const word = verdictWords[worst(findings.map(({ verdict }) => verdict))];
  return findings.some((finding) => finding.accepted !== undefined) ? `${word}, accepted` : word;
}

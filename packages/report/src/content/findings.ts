import type { Assessment, Finding } from '@boothwright/fit';
import { matrixFindings, type Arrangement } from '../arrange.js';
import { strengthWarning } from '../strength.js';
import { columnsOf, concerns, isIn, rowsOf } from '../telling/matrix.js';
import { titleOf } from '../titles.js';
import { bySeverity, percent, personOf, postureWord, subjectOf, verdictWords, worst, type Units } from '../words.js';
import {
  code,
  heading,
  list,
  paragraph,
  soft,
  table,
  verdictSpan,
  type Block,
  type Item,
  type Span,
} from './blocks.js';

/** Each workstation: who passes what at a glance, then each finding in words. */
export function workstations(assessment: Assessment, arrangement: Arrangement): Block[] {
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

export function walkways(assessment: Assessment, findings: readonly Finding[], units: Units): Block[] {
  const rows = assessment.walkways.map(({ name, clear, terms }) => {
    const own = assessment.findings.filter(({ subject }) => subject.kind === 'walkway' && subject.name === name);
    const result = own.length > 0 ? verdictSpan(worst(own.map(({ verdict }) => verdict))) : 'not checked';
    return [name, clear === undefined ? 'cannot say' : units.length(clear), soft(terms ?? ''), result];
  });
  return [
    heading(2, 'Walkways'),
    ...(rows.length === 0
      ? [paragraph('The file names no walkway, so none was checked.')]
      : table(['Walkway', 'Clear', 'How it comes about', 'Result'], rows)),
    ...findingsList(findings),
  ];
}

/** A section of findings; nothing without any. */
export function section(title: string, findings: readonly Finding[]): Block[] {
  return findings.length === 0 ? [] : [heading(2, title), ...findingsList(findings)];
}

/** Findings that the file tolerates, each with its reason. */
export function accepted(findings: readonly Finding[]): Block[] {
  if (findings.length === 0) return [];
  const items = findings.map((finding) => [
    ...lines(finding).slice(0, -1),
    [`Accepted because: ${finding.accepted ?? ''}`],
    sourceLine(finding),
  ]);
  return [heading(2, 'Accepted on purpose'), ...list(items)];
}

/** What could not be said, and what to add to the file. */
export function unsaid(findings: readonly Finding[]): Block[] {
  if (findings.length === 0) return [];
  const items = findings.map((finding) => [
    ...lines(finding).slice(0, -1),
    ...(finding.missing ? [['Add', code(finding.missing.example), `to ${finding.missing.of}`]] : []),
    sourceLine(finding),
  ]);
  return [heading(2, 'What cannot be said yet'), ...list(items)];
}

function findingsList(findings: readonly Finding[]): Block[] {
  return list([...findings].sort(bySeverity).map(lines));
}

function lines(finding: Finding): Item {
  const { verdict, check, message, terms } = finding;
  const about = [titleOf(check), subjectOf(finding), personOf(finding)].filter(Boolean).join(' · ');
  return [[verdictSpan(verdict), about], [message], ...(terms ? [[soft(terms)]] : []), sourceLine(finding)];
}

function sourceLine({ source, strength }: Finding): Item[number] {
  const warning = strengthWarning(strength);
  return [soft(`Source: ${source}${warning ? ` (${warning})` : ''}`)];
}

function matrix(assessment: Assessment, station: string): Block[] {
  const served = assessment.workstations.find(({ name }) => name === station)?.served ?? [];
  const findings = matrixFindings(assessment, station);
  const columns = columnsOf(served, findings);
  if (columns.length === 0) return [];
  const joint = columns.map(({ who, posture }) => {
    const person = served.find((one) => one.who === who && one.posture === posture);
    if (!person) return '–';
    return verdictSpan(person.verdict, `${verdictWords[person.verdict]}, ${percent(person.share)}`);
  });
  const rows = rowsOf(findings).map((row) => {
    const own = findings.filter((finding) => isIn(row, finding));
    const title = [titleOf(row.check), row.subject].filter((part) => part !== undefined);
    return [
      title.join(', '),
      ...columns.map((column) => cell(own.filter((one) => one.operator === undefined || concerns(one, column)))),
    ];
  });
  const head = columns.map(({ who, posture }) => [who, posture && postureWord(posture)].filter(Boolean).join(', '));
  return table(['Check', ...head], [...(served.length > 0 ? [['Everything at once', ...joint]] : []), ...rows]);
}

function cell(findings: readonly Finding[]): Span {
  if (findings.length === 0) return '–';
  const verdict = worst(findings.map((finding) => finding.verdict));
  const isAccepted = findings.some((finding) => finding.accepted !== undefined);
  return verdictSpan(verdict, isAccepted ? `${verdictWords[verdict]}, accepted` : undefined);
}

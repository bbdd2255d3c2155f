import {
  type Assessment,
  type Booth,
  dimensionWords,
  type DimensionName,
  type DisplayUnit,
  type Finding,
  formatAges,
  formatAngle,
  formatLength,
  formatRange,
  formatShare,
  type MeasureUnit,
  POUND,
  seatedOrStanding,
  type Verdict,
  formatPercent,
  inPosture,
  said,
  say,
} from '@boothwright/fit';
import type { Position, Range } from 'vscode-languageserver-types';
import { plainly, withoutLinks } from './markup.js';

const marks: Record<Verdict, string> = { fail: '✗', marginal: '≈', unknown: '?', pass: '✓' };
const order: readonly Verdict[] = ['fail', 'marginal', 'unknown', 'pass'];

/** What an assessment says of one thing, for a hover: the figures behind it, then its findings, the worst first. */
export function figuresOf(kind: string, name: string, assessment: Assessment): [figures: string, findings: string] {
  const { booth } = assessment;
  if (kind === 'operator') return [dimensionTable(name, assessment), findingList(about(name, assessment), booth)];
  if (kind === 'crowd') return [crowdLine(name, booth), findingList(about(name, assessment), booth)];
  const subject = kind === 'stool' || kind === 'chair' ? 'seat' : kind;
  const findings = assessment.findings.filter(
    (finding) => finding.subject.kind === subject && finding.subject.name === name,
  );
  const own = ownFigures[kind]?.(name, assessment) ?? '';
  return [own, findingList(findings, booth)];
}

const ownFigures: Readonly<Record<string, (name: string, assessment: Assessment) => string>> = {
  workstation: servedTable,
  walkway: clearLine,
  monitor: distanceTable,
  desk: (name, assessment) => placedTable([name], assessment),
  rack: (name, assessment) => placedTable([name], assessment),
  platform: (name, assessment) => placedTable([name], assessment),
  column: (name, assessment) => placedTable([name], assessment),
};

/** Where pieces stand in the plan, as a table; empty if none of them is placed. */
export function placedTable(names: readonly string[], { layout, booth: { show } }: Assessment): string {
  const span = (values: readonly number[]) => formatRange({ min: Math.min(...values), max: Math.max(...values) }, show);
  const rows = names.flatMap((name) =>
    layout.pieces
      .filter((piece) => piece.name === name)
      .map(({ outline }) => `| ${name} | ${span(outline.map(({ x }) => x))} | ${span(outline.map(({ y }) => y))} |`),
  );
  if (rows.length === 0) return '';
  return [say`| In the plan | from the left wall | from the back wall |`, '| :-- | --: | --: |', ...rows].join('\n');
}

/** How many findings of each verdict a booth has. */
export function boothFigures({ booth, findings }: Assessment): string {
  const open = findings.filter(({ accepted }) => accepted === undefined);
  const rows = order.map((verdict) => {
    return `| ${marks[verdict]} ${wordFor(verdict)} | ${open.filter((finding) => finding.verdict === verdict).length} |`;
  });
  const accepted = findings.length - open.length;
  const more = accepted > 0 ? [say`| accepted with a reason | ${accepted} |`] : [];
  return [`**${plainly(booth.name)}**`, '', say`| Findings | |`, '| :-- | --: |', ...rows, ...more].join('\n');
}

function wordFor(verdict: Verdict): string {
  switch (verdict) {
    case 'fail':
      return say`failed`;
    case 'marginal':
      return say`marginal`;
    case 'unknown':
      return say`cannot be said`;
    case 'pass':
      return say`passed`;
  }
}

/** What a check found, of one thing or of all. */
export function findingsOfCheck(id: string, subject: string | undefined, { findings, booth }: Assessment): string {
  const own = findings.filter(({ check }) => check === id);
  const meant = own.filter((finding) => subject === undefined || isOf(finding, subject));
  return meant.length > 0 ? `${say`Here:`}\n\n${findingList(meant, booth)}` : '';
}

function isOf({ subject, operator }: Finding, name: string): boolean {
  return subject.name === name || operator === name;
}

/** What was found of the text in a range. */
export function findingsAt(uri: string, { start, end }: Range, { findings, booth }: Assessment): string {
  const isInside = ({ origin }: Finding) =>
    origin?.uri === uri && !isBefore(origin.start, start) && !isBefore(end, origin.end);
  return findingList(findings.filter(isInside), booth);
}

function isBefore(a: Position, b: Position): boolean {
  return a.line < b.line || (a.line === b.line && a.character < b.character);
}

function about(who: string, { findings }: Assessment): Finding[] {
  return findings.filter(({ operator, subject }) => operator === who || subject.name === who);
}

/** Predicted and measured dimensions, in the booth's unit. */
function dimensionTable(name: string, { operators, booth }: Assessment): string {
  const figures = operators.find((operator) => operator.name === name);
  if (!figures) return '';
  const rows = figures.dimensions.map(({ dimension, mean, p5, p95, measured }) => {
    const show = (value: number) =>
      dimension === 'weight' ? weight(value, booth.show) : formatLength(value, booth.show);
    const says = said(dimensionWords[dimension as DimensionName]);
    return measured
      ? `| **${says}** | **${show(mean)}** | ${say`measured`} |`
      : `| ${says} | ${show(mean)} | ${say`${show(p5)} to ${show(p95)}`} |`;
  });
  const likely =
    figures.female > 0.005 && figures.female < 0.995 ? [say`A woman's body: ${formatShare(figures.female)}.`] : [];
  return [...likely, '', say`| Dimension | Mean | 90 in 100 |`, '| :-- | --: | --: |', ...rows].join('\n');
}

function crowdLine(name: string, { crowds, show }: Booth): string {
  const crowd = crowds.find((each) => each.name === name);
  if (!crowd) return '';
  const { women, cover, stature, ages } = crowd;
  const [share, wanted] = [formatPercent(women.value), formatPercent(cover.value)];
  const parts = [
    women.isDefault ? say`${share} women (default)` : say`${share} women`,
    cover.isDefault ? say`${wanted} of them to be served (default)` : say`${wanted} of them to be served`,
    ...(stature
      ? [say`between ${formatLength(stature.value.min, show)} and ${formatLength(stature.value.max, show)} tall`]
      : []),
    ...(ages ? [formatAges(ages.value)] : []),
  ];
  return `${parts.join(', ')}.`;
}

function servedTable(name: string, { workstations }: Assessment): string {
  const served = workstations.find((each) => each.name === name)?.served ?? [];
  if (served.length === 0) return '';
  const rows = served.map(({ who, posture, share, verdict, cover }) => {
    const fits = formatPercent(share);
    const served = cover === undefined ? fits : say`${fits}, ${formatPercent(cover)} wanted`;
    return `| ${marks[verdict]} ${who} | ${seatedOrStanding(posture)} | ${served} |`;
  });
  return [say`| Everything fits | | |`, '| :-- | :-- | --: |', ...rows].join('\n');
}

/** How far a monitor is from the eyes, at each workstation where it stands. */
function distanceTable(name: string, { screens = [], booth: { show } }: Assessment): string {
  const rows = screens
    .filter(({ monitor }) => monitor === name)
    .flatMap(({ workstation, distances }) =>
      distances.map(
        ({ who, posture, distance }) =>
          `| ${workstation}: ${inPosture(who, posture)} | ${formatLength(distance, show)} |`,
      ),
    );
  return rows.length > 0 ? [say`| From the eye to its middle | |`, '| :-- | --: |', ...rows].join('\n') : '';
}

function clearLine(name: string, { walkways, booth }: Assessment): string {
  const walkway = walkways.find((each) => each.name === name);
  if (walkway?.clear === undefined) return '';
  const clear = formatLength(walkway.clear, booth.show);
  return walkway.terms ? say`Clear width ${clear}: ${walkway.terms}.` : say`Clear width ${clear}.`;
}

function findingList(findings: readonly Finding[], { show }: Booth): string {
  return [...findings]
    .sort((a, b) => order.indexOf(a.verdict) - order.indexOf(b.verdict))
    .map((finding) => `- ${marks[finding.verdict]} ${withoutLinks(finding.message)}${figures(finding, show)}`)
    .join('\n');
}

function figures(
  { check, measured, limit, margin, unit, source, strength, accepted, defaults }: Finding,
  show: DisplayUnit,
): string {
  const parts = [
    measured !== undefined && unit && say`measured ${measure(measured, unit, show)}`,
    limit !== undefined && unit && say`limit ${measure(limit, unit, show)}`,
    margin !== undefined && unit && say`margin ${measure(margin, unit, show)}`,
    withoutLinks(strength === 'strong' || strength === 'medium' ? source : `${source} (${said(strength)})`),
    defaults.length > 0 && say`by default ${plainly(defaults.join('; '))}`,
    accepted !== undefined && say`accepted: ${plainly(accepted)}`,
  ];
  return ` *${[`\`${check}\``, ...parts.filter(Boolean)].join(', ')}.*`;
}

function measure(value: number, unit: MeasureUnit, show: DisplayUnit): string {
  switch (unit) {
    case 'mm':
      return formatLength(value, show);
    case 'deg':
      return formatAngle(value);
    case 'arcmin':
      return say`${value.toFixed(1)} arcminutes`;
    case 'kg':
      return weight(value, show);
    case 'count':
      return String(Math.round(value));
    case 'ratio':
      return formatPercent(value).replace('-', '−');
  }
}

function weight(kilograms: number, show: DisplayUnit): string {
  const isInches = show === 'in' || show === 'ft';
  return isInches ? `${Math.round(kilograms / POUND)} lb` : `${Math.round(kilograms)} kg`;
}

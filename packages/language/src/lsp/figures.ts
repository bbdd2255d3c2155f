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
  formatShare,
  type MeasureUnit,
  POUND,
  type Verdict,
  formatPercent,
} from '@boothwright/fit';

const marks: Record<Verdict, string> = { fail: '✗', marginal: '≈', unknown: '?', pass: '✓' };
const order: readonly Verdict[] = ['fail', 'marginal', 'unknown', 'pass'];

/** What an assessment says of one thing, for a hover: the figures behind it, then its findings, the worst first. */
export function figuresOf(kind: string, name: string, assessment: Assessment): string[] {
  const { booth } = assessment;
  if (kind === 'operator') return [dimensionTable(name, assessment), findingList(about(name, assessment), booth)];
  if (kind === 'crowd') return [crowdLine(name, booth), findingList(about(name, assessment), booth)];
  const subject = kind === 'stool' || kind === 'chair' ? 'seat' : kind;
  const findings = assessment.findings.filter(
    (finding) => finding.subject.kind === subject && finding.subject.name === name,
  );
  const own =
    kind === 'workstation' ? servedLines(name, assessment) : kind === 'walkway' ? clearLine(name, assessment) : '';
  return [own, findingList(findings, booth)];
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
    const says = dimensionWords[dimension as DimensionName];
    return measured
      ? `| **${says}** | **${show(mean)}** | measured |`
      : `| ${says} | ${show(mean)} | ${show(p5)} to ${show(p95)} |`;
  });
  const likely =
    figures.female > 0.005 && figures.female < 0.995 ? [`A woman's body: ${formatShare(figures.female)}.`] : [];
  return [...likely, '', '| Dimension | Mean | 90 in 100 |', '| :-- | --: | --: |', ...rows].join('\n');
}

function crowdLine(name: string, { crowds, show }: Booth): string {
  const crowd = crowds.find((each) => each.name === name);
  if (!crowd) return '';
  const { women, cover, stature, ages } = crowd;
  const mark = ({ isDefault }: { isDefault: boolean }) => (isDefault ? ' (default)' : '');
  const between = stature
    ? `, between ${formatLength(stature.value.min, show)} and ${formatLength(stature.value.max, show)} tall`
    : '';
  const aged = ages ? `, ${formatAges(ages.value)}` : '';
  return `${formatPercent(women.value)} women${mark(women)}, ${formatPercent(cover.value)} of them to be served${mark(cover)}${between}${aged}.`;
}

function servedLines(name: string, { workstations }: Assessment): string {
  const station = workstations.find((each) => each.name === name);
  return (station?.served ?? [])
    .map(({ who, posture, share, verdict, cover }) => {
      const wanted = cover === undefined ? '' : `, ${formatPercent(cover)} wanted`;
      return `- ${marks[verdict]} ${who}, ${posture === 'sit' ? 'sitting' : 'standing'}: everything fits ${formatPercent(share)}${wanted}`;
    })
    .join('\n');
}

function clearLine(name: string, { walkways, booth }: Assessment): string {
  const walkway = walkways.find((each) => each.name === name);
  if (walkway?.clear === undefined) return '';
  return `Clear width ${formatLength(walkway.clear, booth.show)}${walkway.terms ? `: ${walkway.terms}` : ''}.`;
}

function findingList(findings: readonly Finding[], { show }: Booth): string {
  return [...findings]
    .sort((a, b) => order.indexOf(a.verdict) - order.indexOf(b.verdict))
    .map((finding) => `- ${marks[finding.verdict]} ${finding.message}${figures(finding, show)}`)
    .join('\n');
}

function figures(
  { check, measured, limit, margin, unit, source, strength, accepted }: Finding,
  show: DisplayUnit,
): string {
  const parts = [
    measured !== undefined && unit && `measured ${measure(measured, unit, show)}`,
    limit !== undefined && unit && `limit ${measure(limit, unit, show)}`,
    margin !== undefined && unit && `margin ${measure(margin, unit, show)}`,
    strength === 'strong' || strength === 'medium' ? source : `${source} (${strength})`,
    accepted !== undefined && `accepted: ${accepted}`,
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
      return `${value.toFixed(1)} arcminutes`;
    case 'kg':
      return weight(value, show);
    case 'count':
      return String(Math.round(value));
    case 'ratio':
      return value.toFixed(2);
  }
}

function weight(kilograms: number, show: DisplayUnit): string {
  const isInches = show === 'in' || show === 'ft';
  return isInches ? `${Math.round(kilograms / POUND)} lb` : `${Math.round(kilograms)} kg`;
}

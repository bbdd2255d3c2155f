import { listOf, type Advice, type Assessment } from '@boothwright/fit';
import { namesMean } from '../names.js';
import type { ReportOptions } from '../options.js';
import { tellStations } from '../telling/advice.js';
import { tellAnswer } from '../telling/answer.js';
import { generalCautions } from '../telling/cautions.js';
import { tellChanges } from '../telling/changes.js';
import { walkwayVerdict } from '../telling/walkways.js';
import { bySeverity, percent, postureWord, type Units } from '../words.js';
import { group, heading, list, paragraph, section, soft, strong, table, verdictSpan, type Block } from './blocks.js';

/** So many of each thing stand on the first page; the rest is counted. */
const MOST = { people: 6, plans: 4, changes: 6, walkways: 4, missing: 3 } as const;
/** Characters of a name and of a line on the first page. */
const LONGEST = { name: 32, line: 120 } as const;

/** All that somebody has to know who reads one page. */
export function summary(
  assessment: Assessment,
  advice: Advice | undefined,
  options: ReportOptions,
  units: Units,
): Block[] {
  const { booth } = assessment;
  const { headline, sentences, tally } = tellAnswer(assessment);
  const names = namesMean(options.names, booth);
  return group('page', [
    heading(1, `${booth.name}: fit report`),
    paragraph(soft([options.date, `made with ${options.generatedBy}`].filter(Boolean).join(' · '))),
    ...(names === undefined ? [] : [paragraph(soft(names))]),
    heading(2, 'Does it fit?'),
    paragraph(strong(headline), sentences.join(' ')),
    ...table(
      'Results',
      tally.map(({ verdict, word }) => verdictSpan(verdict, word)),
      [tally.map(({ count }) => `${count}`)],
    ),
    ...people(assessment),
    ...firstChanges(assessment, advice),
    ...widths(assessment, units),
    ...missing(assessment),
    paragraph(soft(generalCautions[0]!)),
  ]);
}

function people({ workstations }: Assessment): Block[] {
  const served = workstations
    .flatMap(({ name, served }) => served.map((person) => ({ station: name, ...person })))
    .sort(bySeverity);
  const rows = served
    .slice(0, MOST.people)
    .map(({ who, posture, station, verdict, share }) => [
      `${brief(who, LONGEST.name)}, ${postureWord(posture)}`,
      brief(station, LONGEST.name),
      verdictSpan(verdict),
      percent(share),
    ]);
  return [
    ...table('Everything at once', ['Who', 'Where', 'Result', 'Share of such people whom it suits'], rows),
    ...rest(served.length - rows.length, 'Workstations'),
  ];
}

function firstChanges(assessment: Assessment, advice: Advice | undefined): Block[] {
  const plans = advice
    ? tellStations(advice, assessment).flatMap(({ workstation, plans: [best] }) =>
        best ? [{ workstation, best }] : [],
      )
    : [];
  const single = tellChanges(assessment.findings);
  const items = [
    ...plans
      .slice(0, MOST.plans)
      .map(({ workstation, best }) => [[strong(`${brief(workstation, LONGEST.name)}:`), brief(best.title)]]),
    ...single.slice(0, MOST.changes).map(({ title }) => [[brief(title)]]),
  ];
  return section(
    'First changes',
    [...list(items), ...rest(plans.length + single.length - items.length, 'What to change')].slice(0, 2),
    3,
  );
}

function widths(assessment: Assessment, units: Units): Block[] {
  const ways = assessment.walkways
    .map((walkway) => ({ ...walkway, verdict: walkwayVerdict(assessment, walkway.name) }))
    .sort((a, b) => bySeverity({ verdict: a.verdict ?? 'pass' }, { verdict: b.verdict ?? 'pass' }));
  const rows = ways
    .slice(0, MOST.walkways)
    .map(({ name, clear, verdict }) => [
      brief(name, LONGEST.name),
      clear === undefined ? 'cannot say' : units.length(clear),
      verdict ? verdictSpan(verdict) : 'not checked',
    ]);
  return [
    ...table('Clear widths', ['Walkway', 'Clear', 'Result'], rows),
    ...rest(ways.length - rows.length, 'Walkways'),
  ];
}

function missing({ findings }: Assessment): Block[] {
  const wanted = [
    ...new Set(findings.flatMap((finding) => finding.missing ?? []).map(({ property, of }) => `${property} of ${of}`)),
  ];
  if (wanted.length === 0) return [];
  const more = wanted.length - MOST.missing;
  const named = [...wanted.slice(0, MOST.missing).map((one) => brief(one)), ...(more > 0 ? [`${more} more`] : [])];
  return [paragraph('Not said yet:', `${listOf(named)}. What to add stands under ‘What to measure next’.`)];
}

function rest(count: number, where: string): Block[] {
  return count > 0 ? [paragraph(soft(`${count} more under ‘${where}’.`))] : [];
}

function brief(text: string, longest: number = LONGEST.line): string {
  return text.length <= longest ? text : `${text.slice(0, longest - 1).trimEnd()}…`;
}

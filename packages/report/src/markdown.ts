import type { Advice, Assessment, Booth, Finding, OperatorFigures } from '@boothwright/fit';
import { arrange } from './arrange.js';
import { defaultsOf } from './defaults.js';
import { furnitureOf } from './furniture.js';
import { accepted, section, unsaid, walkways, workstations } from './markdown-findings.js';
import { heading, inline, list, strong, table } from './markdown-text.js';
import { named, type ReportOptions } from './options.js';
import { readingMeanings, strengthMeanings } from './strength.js';
import { advisedMean, bandsMean, tellMeasure, tellStations } from './telling/advice.js';
import { tellAnswer } from './telling/answer.js';
import { tellPeople, tellRoom } from './telling/asked.js';
import { bodiesMean, tellBodies } from './telling/bodies.js';
import { generalCautions, ownCautions } from './telling/cautions.js';
import { changesMean, tellChanges } from './telling/changes.js';
import { chartsMean, tellCharts } from './telling/curves.js';
import { usesOf } from './telling/sources.js';
import { titleOf } from './titles.js';
import { capital, unitsOf, type Units } from './words.js';

/** The fit report as Markdown: what the HTML report says, but for its drawings. */
export function renderMarkdown(assessment: Assessment, options: ReportOptions): string {
  const [shown, advice] = named(assessment, options);
  const { booth, findings } = shown;
  const units = unitsOf(booth.show);
  const arrangement = arrange(shown);
  const blocks = [
    `<!-- ${options.generatedBy} -->`,
    heading(1, `${booth.name}: fit report`),
    inline([options.date, `made with ${options.generatedBy}`].filter(Boolean).join(' · ')),
    ...answer(shown),
    ...asked(booth, units),
    ...workstations(shown, arrangement),
    ...changes(findings),
    ...(advice ? advised(advice, shown) : []),
    ...walkways(shown, arrangement.walkways, units),
    ...section('Skirt', arrangement.skirts),
    ...section('Other results', arrangement.others),
    ...accepted(arrangement.accepted),
    ...unsaid(arrangement.unsaid),
    ...assumptions(booth, findings, units),
    ...bodies(shown.operators, units),
    ...sources(findings),
    heading(2, 'Cautions'),
    ...[...generalCautions, ...ownCautions(findings)].map(inline),
  ];
  return `${blocks.join('\n\n')}\n`;
}

function answer(assessment: Assessment): string[] {
  const { headline, sentences, tally } = tellAnswer(assessment);
  return [
    heading(2, 'Does it fit?'),
    `${strong(headline)} ${inline(sentences.join(' '))}`,
    ...table(
      tally.map(({ word }) => word),
      [tally.map(({ count }) => `${count}`)],
    ),
  ];
}

function asked(booth: Booth, units: Units): string[] {
  const furniture = furnitureOf(booth, units).map(({ kind, name, facts }) => [
    inline(`${name} (${kind})`),
    inline(facts.join(', ') || 'no size said'),
  ]);
  const people = tellPeople(booth, units).map(({ name, known, where }) => [name, known, where].map(inline));
  return [
    heading(2, 'What was asked'),
    ...list(tellRoom(booth, units).map(([name, value]) => [`${strong(name)}: ${inline(value)}`])),
    ...table(['Piece', 'As described'], furniture),
    ...table(['Who', 'What is known', 'Where'], people),
  ];
}

function changes(findings: readonly Finding[]): string[] {
  const told = tellChanges(findings);
  if (told.length === 0) return [];
  return [
    heading(2, 'What to change'),
    changesMean,
    ...list(told.map(({ title, purpose }) => [strong(title), inline(purpose)])),
  ];
}

function advised(advice: Advice, assessment: Assessment): string[] {
  const stations = tellStations(advice, assessment);
  return [
    ...(stations.length > 0 ? [heading(2, 'What would fit'), advisedMean, bandsMean, chartsMean] : []),
    ...stations.flatMap(({ workstation, plans, noPlan, notes, bands }) => [
      heading(3, `Plans for ${workstation}`),
      ...(noPlan === undefined ? [] : [noPlan]),
      ...list(
        plans.map(({ title, facts }) => [
          strong(title),
          ...facts.map(({ label, text }) => inline(`${label}: ${text}.`)),
        ]),
        '1.',
      ),
      ...notes.map(inline),
      ...bands.flatMap(({ part, now, rows }) =>
        table(
          [inline(`${part}, now ${now}`), 'Suits at'],
          rows.map(({ who, height }) => [inline(who), inline(height)]),
        ),
      ),
      ...tellCharts(advice, workstation, assessment.booth).flatMap(({ title, lines, rows }) => [
        `${inline(title)}:`,
        ...table(
          ['Height', ...lines.map(({ who }) => inline(who))],
          rows.map(({ height, shares }) => [height, ...shares]),
        ),
      ]),
    ]),
    ...(advice.measure.length > 0 ? [heading(2, 'What to measure next')] : []),
    ...list(advice.measure.map(tellMeasure).map(({ title, text }) => [strong(title), inline(text)])),
    ...(advice.shopping.length > 0 ? [heading(2, 'What to ask for in a shop')] : []),
    ...list(advice.shopping.map(({ item, wants }) => [`${strong(item)}: ${inline(wants.join('; '))}`])),
  ];
}

function assumptions(booth: Booth, findings: readonly Finding[], units: Units): string[] {
  const defaults = defaultsOf(booth, units);
  const assumed = [...new Set(findings.flatMap((finding) => finding.assumptions))];
  if (defaults.length === 0 && assumed.length === 0) return [];
  return [
    heading(2, 'Assumptions and defaults'),
    ...(assumed.length > 0 ? [`Results rest on: ${inline(assumed.join('; '))}.`] : []),
    ...table(
      ['Of', 'Taken as'],
      defaults.map(({ of, values }) => [inline(capital(of)), inline(values.join('; '))]),
    ),
  ];
}

function bodies(operators: readonly OperatorFigures[], units: Units): string[] {
  if (operators.length === 0) return [];
  const rows = tellBodies(operators, units).map(({ dimension, figures }) => [
    dimension,
    ...figures.map((figure) => (figure ? `${figure.value} (${figure.certainty})` : '–')),
  ]);
  return [
    heading(2, 'Body figures'),
    inline(bodiesMean),
    ...table(['Dimension', ...operators.map(({ name }) => inline(name))], rows),
  ];
}

function sources(findings: readonly Finding[]): string[] {
  const uses = usesOf(findings);
  if (uses.length === 0) return [];
  const items = uses.map(({ check, strength, sources: cited }) => [
    `${strong(titleOf(check))}, ${inline(strengthMeanings[strength])}`,
    ...cited.map(({ name, says, read }) =>
      inline(`${name}${says ? `: ${says}` : ''}${read ? ` (${readingMeanings[read]})` : ''}`),
    ),
  ]);
  return [heading(2, 'Sources'), ...list(items)];
}

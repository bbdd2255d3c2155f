import type { Advice, Assessment, Booth, Finding, OperatorFigures } from '@boothwright/fit';
import { arrange } from '../arrange.js';
import { defaultsOf } from '../defaults.js';
import { furnitureOf } from '../furniture.js';
import { namesMean } from '../names.js';
import { named, type ReportOptions } from '../options.js';
import { readingMeanings, strengthMeanings } from '../strength.js';
import { advisedMean, bandsMean, tellMeasure, tellStations } from '../telling/advice.js';
import { tellAnswer } from '../telling/answer.js';
import { tellPeople, tellRoom } from '../telling/asked.js';
import { bodiesMean, tellBodies } from '../telling/bodies.js';
import { generalCautions, ownCautions } from '../telling/cautions.js';
import { changesMean, tellChanges } from '../telling/changes.js';
import { chartsMean, tellCharts } from '../telling/curves.js';
import { usesOf } from '../telling/sources.js';
import { titleOf } from '../titles.js';
import { capital, unitsOf, type Units } from '../words.js';
import { heading, list, paragraph, soft, strong, table, verdictSpan, type Block } from './blocks.js';
import { accepted, section, unsaid, walkways, workstations } from './findings.js';

/** The whole fit report as blocks, in the order of a reader's questions; `draw` gives its drawings, if it is to have any. */
export function contentOf(
  assessment: Assessment,
  options: ReportOptions,
  draw: (shown: Assessment) => readonly Block[] = () => [],
): Block[] {
  const [shown, advice] = named(assessment, options);
  const { booth, findings } = shown;
  const units = unitsOf(booth.show);
  const arrangement = arrange(shown);
  return [
    heading(1, `${booth.name}: fit report`),
    paragraph(soft([options.date, `made with ${options.generatedBy}`].filter(Boolean).join(' · '))),
    ...[namesMean(options.names, booth) ?? []].flat().map((said) => paragraph(soft(said))),
    ...answer(shown),
    ...asked(booth, units),
    ...draw(shown),
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
    ...[...generalCautions, ...ownCautions(findings)].map((caution) => paragraph(caution)),
  ];
}

function answer(assessment: Assessment): Block[] {
  const { headline, sentences, tally } = tellAnswer(assessment);
  return [
    heading(2, 'Does it fit?'),
    paragraph(strong(headline), sentences.join(' ')),
    ...table(
      tally.map(({ verdict, word }) => verdictSpan(verdict, word)),
      [tally.map(({ count }) => `${count}`)],
    ),
  ];
}

function asked(booth: Booth, units: Units): Block[] {
  const furniture = furnitureOf(booth, units).map(({ kind, name, facts }) => [
    `${name} (${kind})`,
    facts.join(', ') || 'no size said',
  ]);
  const people = tellPeople(booth, units).map(({ name, known, where }) => [name, known, where]);
  return [
    heading(2, 'What was asked'),
    ...list(tellRoom(booth, units).map(([name, value]) => [[strong(`${name}:`), value]])),
    ...table(['Piece', 'As described'], furniture),
    ...table(['Who', 'What is known', 'Where'], people),
  ];
}

function changes(findings: readonly Finding[]): Block[] {
  const told = tellChanges(findings);
  if (told.length === 0) return [];
  return [
    heading(2, 'What to change'),
    paragraph(changesMean),
    ...list(told.map(({ title, purpose }) => [[strong(title)], [soft(purpose)]])),
  ];
}

function advised(advice: Advice, assessment: Assessment): Block[] {
  const stations = tellStations(advice, assessment);
  return [
    ...(stations.length > 0
      ? [heading(2, 'What would fit'), ...[advisedMean, bandsMean, chartsMean].map((text) => paragraph(text))]
      : []),
    ...stations.flatMap(({ workstation, plans, noPlan, notes, bands }) => [
      heading(3, `Plans for ${workstation}`),
      ...(noPlan === undefined ? [] : [paragraph(noPlan)]),
      ...list(
        plans.map(({ title, facts }) => [
          [strong(title)],
          ...facts.map(({ label, text }) => [soft(`${label}: ${text}.`)]),
        ]),
        true,
      ),
      ...notes.map((note) => paragraph(note)),
      ...bands.flatMap(({ part, now, rows }) =>
        table(
          [`${part}, now ${now}`, 'Suits at'],
          rows.map(({ who, height }) => [who, height]),
        ),
      ),
      ...tellCharts(advice, workstation, assessment.booth).map((chart): Block => ({ kind: 'chart', chart })),
    ]),
    ...(advice.measure.length > 0 ? [heading(2, 'What to measure next')] : []),
    ...list(advice.measure.map(tellMeasure).map(({ title, text }) => [[strong(title)], [soft(text)]])),
    ...(advice.shopping.length > 0 ? [heading(2, 'What to ask for in a shop')] : []),
    ...list(advice.shopping.map(({ item, wants }) => [[strong(`${item}:`), wants.join('; ')]])),
  ];
}

function assumptions(booth: Booth, findings: readonly Finding[], units: Units): Block[] {
  const defaults = defaultsOf(booth, units);
  const assumed = [...new Set(findings.flatMap((finding) => finding.assumptions))];
  if (defaults.length === 0 && assumed.length === 0) return [];
  return [
    heading(2, 'Assumptions and defaults'),
    ...(assumed.length > 0 ? [paragraph(`Results rest on: ${assumed.join('; ')}.`)] : []),
    ...table(
      ['Of', 'Taken as'],
      defaults.map(({ of, values }) => [capital(of), values.join('; ')]),
    ),
  ];
}

function bodies(operators: readonly OperatorFigures[], units: Units): Block[] {
  if (operators.length === 0) return [];
  const rows = tellBodies(operators, units).map(({ dimension, figures }) => [
    dimension,
    ...figures.map((figure) => (figure ? `${figure.value} (${figure.certainty})` : '–')),
  ]);
  return [
    heading(2, 'Body figures'),
    paragraph(bodiesMean),
    ...table(['Dimension', ...operators.map(({ name }) => name)], rows),
  ];
}

function sources(findings: readonly Finding[]): Block[] {
  const uses = usesOf(findings);
  if (uses.length === 0) return [];
  const items = uses.map(({ check, strength, sources: cited }) => [
    [strong(`${titleOf(check)},`), strengthMeanings[strength]],
    ...cited.map(({ name, says, read }) => [
      soft(`${name}${says ? `: ${says}` : ''}${read ? ` (${readingMeanings[read]})` : ''}`),
    ]),
  ]);
  return [heading(2, 'Sources'), ...list(items)];
}

import type { Assessment, Booth, OperatorFigures } from '@boothwright/fit';
import { defaultsOf } from '../defaults.js';
import { tellPeople, tellRoom } from '../telling/asked.js';
import { bodiesMean, tellBodies } from '../telling/bodies.js';
import { capital, type Units } from '../words.js';
import { list, more, paragraph, section, soft, strong, table, type Block } from './blocks.js';

/** More people than this in one table would not fit across a page. */
const PEOPLE_PER_TABLE = 4;

/** What the results rest on: room and people as the file says, what was assumed, the defaults, and the bodies where there is room. */
export function assumptions({ booth, findings, operators }: Assessment, units: Units): Block[] {
  const assumed = [...new Set(findings.flatMap((finding) => finding.assumptions))];
  return section('Assumptions and defaults', [
    ...list(tellRoom(booth, units).map(([name, value]) => [[strong(`${name}:`), value]])),
    ...people(booth, units),
    ...(assumed.length > 0 ? [paragraph(`Results rest on: ${assumed.join('; ')}.`)] : []),
    ...defaults(booth, units),
    ...bodies(operators, units),
  ]);
}

function defaults(booth: Booth, units: Units): Block[] {
  const taken = defaultsOf(booth, units);
  if (taken.length === 0) return [];
  const each = taken.flatMap(({ of, values }) => [strong(`${capital(of)}:`), `${values.join('; ')}.`]);
  return [paragraph('The file does not say, so this was taken.', ...each)];
}

function people(booth: Booth, units: Units): Block[] {
  const rows = tellPeople(booth, units).map(({ name, known, where }) => [name, known, where]);
  return table('People, as the file says', ['Who', 'What is known', 'Where'], rows);
}

function bodies(operators: readonly OperatorFigures[], units: Units): Block[] {
  const tables = chunks(operators).flatMap((some) =>
    table(
      `Body figures of ${some.map(({ name }) => name).join(', ')}`,
      ['Dimension', ...some.map(({ name }) => name)],
      tellBodies(some, units).map(({ dimension, figures }) => [
        dimension,
        ...figures.map((figure) =>
          figure ? [figure.measured ? strong(figure.value) : figure.value, soft(`(${figure.certainty})`)] : '–',
        ),
      ]),
    ),
  );
  return more('What each person’s body was taken to be', tables.length > 0 ? [paragraph(bodiesMean), ...tables] : []);
}

function chunks(operators: readonly OperatorFigures[]): readonly (readonly OperatorFigures[])[] {
  const starts = operators.flatMap((_, index) => (index % PEOPLE_PER_TABLE === 0 ? [index] : []));
  return starts.map((start) => operators.slice(start, start + PEOPLE_PER_TABLE));
}

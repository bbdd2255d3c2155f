import { listOf, type Advice, type Assessment } from '@boothwright/fit';
import { bandsMean, tellStations, type BandsTold } from '../telling/advice.js';
import { chartsMean, tellCharts, type ChartTold } from '../telling/curves.js';
import { more, paragraph, section, soft, strong, table, type Block } from './blocks.js';

/** Which heights suit whom, and how many people each serves. */
export function heights(assessment: Assessment, advice: Advice | undefined): Block[] {
  if (!advice) return [];
  const { booth } = assessment;
  const charts = booth.workstations.flatMap(({ name }) => tellCharts(advice, name, booth));
  const stations = tellStations(advice, assessment);
  return section('Heights and shares served', [...suitable(stations.flatMap(({ bands }) => bands)), ...curves(charts)]);
}

function curves(charts: readonly ChartTold[]): Block[] {
  if (charts.length === 0) return [];
  return [
    paragraph(chartsMean),
    { kind: 'charts', charts },
    ...more(
      'The curves in figures',
      charts.flatMap(({ title, lines, rows }) =>
        table(
          title,
          ['Height', ...lines.map(({ who }) => who)],
          rows.map((row) => [row.height, ...row.shares]),
        ),
      ),
    ),
  ];
}

function suitable(bands: readonly BandsTold[]): Block[] {
  if (bands.length === 0) return [];
  return [
    paragraph(bandsMean),
    ...table(
      'Which heights suit whom',
      ['Height of', 'Suits at'],
      bands.map(({ part, now, rows }) => [
        [strong(part), soft(`now ${now}`)],
        sameHeights(rows)
          .map(({ who, height }) => `${who}: ${height}`)
          .join('; '),
      ]),
    ),
  ];
}

/** One entry for all of whom the same is said. */
function sameHeights(rows: BandsTold['rows']): BandsTold['rows'] {
  const by = new Map<string, string[]>();
  for (const { who, height } of rows) by.set(height, [...(by.get(height) ?? []), who]);
  return [...by].map(([height, who]) => ({ who: listOf(who), height }));
}

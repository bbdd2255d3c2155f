import type { Assessment, Finding } from '@boothwright/fit';
import type { Arrangement } from '../arrange.js';
import { columnsOf, type Column } from '../telling/matrix.js';
import { titleOf } from '../titles.js';
import { percent, postureWord, verdictWords, worst } from '../words.js';
import { section, soft, table, verdictSpan, type Block, type Span } from './blocks.js';
import { openFindings } from './findings.js';

/** Who passes what at a glance, then what does not pass at each workstation in words. */
export function workstations(assessment: Assessment, arrangement: Arrangement): Block[] {
  return section('Workstations', [
    ...matrix(assessment),
    ...assessment.booth.workstations.flatMap(({ name }) =>
      section(name, openFindings(arrangement.stations.get(name)!), 3),
    ),
  ]);
}

/** More columns than these would not fit across a page. */
const COLUMNS_PER_TABLE = 6;

function matrix(assessment: Assessment): Block[] {
  const columns = columnsOf(assessment);
  const parts = columns.flatMap((_, at) =>
    at % COLUMNS_PER_TABLE === 0 ? [columns.slice(at, at + COLUMNS_PER_TABLE)] : [],
  );
  return parts.flatMap((part) => {
    const checks = [...new Set(part.flatMap(({ findings }) => findings.map(({ check }) => check)))];
    return table(
      `Who passes what${parts.length > 1 ? `: ${[...new Set(part.map(({ station }) => station))].join(', ')}` : ''}`,
      [
        'Check',
        ...part.map(({ station, who, posture }) => [
          [who, posture && postureWord(posture)].filter(Boolean).join(', '),
          soft(station),
        ]),
      ],
      [
        ...(part.some(({ served }) => served) ? [['Everything at once', ...part.map(jointCell)]] : []),
        ...checks.map((check) => [
          titleOf(check),
          ...part.map(({ findings }) => cell(findings.filter((finding) => finding.check === check))),
        ]),
      ],
    );
  });
}

function jointCell({ served }: Column): Span {
  if (!served) return '–';
  const asked = served.cover === undefined ? '' : ` of ${percent(served.cover)} asked`;
  return verdictSpan(served.verdict, `${verdictWords[served.verdict]}, ${percent(served.share)}${asked}`);
}

function cell(findings: readonly Finding[]): Span {
  if (findings.length === 0) return '–';
  const verdict = worst(findings.map((finding) => finding.verdict));
  const isAccepted = findings.some((finding) => finding.accepted !== undefined);
  return verdictSpan(verdict, isAccepted ? `${verdictWords[verdict]}, accepted` : undefined);
}

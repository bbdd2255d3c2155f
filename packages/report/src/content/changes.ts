import type { Advice, Assessment } from '@boothwright/fit';
import { advisedMean, tellStations, type StationTold } from '../telling/advice.js';
import { changesMean, tellChanges } from '../telling/changes.js';
import { list, paragraph, section, soft, strong, table, type Block } from './blocks.js';

/** Plans that were tried as a whole, then each single change. */
export function changes(assessment: Assessment, advice: Advice | undefined): Block[] {
  const stations = advice ? tellStations(advice, assessment) : [];
  const single = tellChanges(assessment.findings);
  return section('What to change', [
    ...(stations.length > 0 ? [paragraph(advisedMean)] : []),
    ...stations.flatMap(plans),
    ...section(
      'Single changes',
      single.length === 0
        ? []
        : [
            paragraph(changesMean),
            ...table(
              'Computed one by one',
              ['Change', 'For', 'Elsewhere'],
              single.map(({ title, purpose, safe }) => [strong(title), purpose, safe ? 'no harm seen' : 'may harm']),
            ),
          ],
      3,
    ),
  ]);
}

function plans({ workstation, plans, noPlan, notes }: StationTold): Block[] {
  return section(
    `Plans for ${workstation}`,
    [
      ...(noPlan === undefined ? [] : [paragraph(noPlan)]),
      ...list(
        plans.map(({ title, facts }) => [
          [strong(title)],
          ...facts.map(({ label, text }) => [soft(`${label}: ${text}.`)]),
        ]),
        true,
      ),
      ...notes.map((note) => paragraph(note)),
    ],
    3,
  );
}

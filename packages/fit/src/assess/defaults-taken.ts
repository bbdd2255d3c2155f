import type { Booth, Given, Workstation } from '../booth.js';
import type { DefaultName, FindingDraft } from '../checks/check.js';
import { formatAngle, formatLength, formatPercent } from '../format.js';
import { grouping, withName } from '../lookup.js';
import { say } from '../words/say.js';
import type { Millimetres } from '../units.js';

/** What a finding rests on that the file does not say, in words: 'shoes of 1 in'. */
export function defaultsTaken(
  names: readonly DefaultName[] | undefined,
  draft: FindingDraft,
  booth: Booth,
): readonly string[] {
  if (!names || draft.verdict === 'unknown') return [];
  const station = stationOf(draft, booth);
  const length = (value: Millimetres) => formatLength(value, booth.show);
  const taken = <T>(given: Given<T> | undefined, words: (value: T) => string) =>
    given?.isDefault ? [words(given.value)] : [];
  return names.flatMap((name): readonly string[] => {
    switch (name) {
      case 'shoe':
        return taken(booth.shoe, (value) => say`shoes of ${length(value)}`);
      case 'slump':
        return draft.posture === 'stand'
          ? []
          : taken(booth.slump, (value) => say`people sit ${length(value)} lower than upright`);
      case 'task':
        return taken(station?.task, (value) => say`the task is ${value}`);
      case 'working':
        return taken(station?.working, (value) => say`hands ${length(value)} above the desk`);
      case 'lean':
        return taken(station?.lean, (value) => say`eyes and shoulders ${length(value)} over the desk’s edge`);
      case 'top': {
        const desk = draft.subject.kind === 'desk' ? draft.subject.name : station?.desk?.name;
        return taken(withName(booth.desks, desk)?.top, (value) => say`a top of ${length(value)}`);
      }
      case 'tilt': {
        const use = station?.screens.find(({ monitor }) => monitor.name === draft.subject.name);
        return taken(use?.tilt, (value) => say`a screen that leans back ${formatAngle(value)}`);
      }
      case 'aspect':
        return taken(
          withName(booth.monitors, draft.subject.name)?.aspect,
          ({ across, down }) => say`a picture of ${across}:${down}`,
        );
      case 'crowd': {
        const crowd = withName(booth.crowds, draft.operator);
        return [
          ...taken(crowd?.women, (value) => say`${formatPercent(value)} women`),
          ...taken(crowd?.cover, (value) => say`${formatPercent(value)} to be served`),
        ];
      }
    }
  });
}

/** The workstation that a finding is about: of a screen or control, the one where this person meets it. */
function stationOf({ subject, operator }: FindingDraft, { workstations }: Booth): Workstation | undefined {
  if (subject.kind === 'workstation') return withName(workstations, subject.name);
  return showing(workstations, subject.name).find(
    ({ people }) => operator === undefined || people.some(({ name }) => name === operator),
  );
}

/** The workstations that have a screen or a control of a name. */
const showing = grouping<Workstation>(({ screens, controls }) => [
  ...screens.map(({ monitor }) => monitor.name),
  ...controls.map(({ name }) => name),
]);

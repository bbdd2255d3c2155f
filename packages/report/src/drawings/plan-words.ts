import type { Assessment } from '@boothwright/fit';
import { formatAngle, type PlanScreen } from '@boothwright/fit';
import type { Units } from '../words.js';
import type { Label } from './labels.js';
import { shortened } from './text-width.js';
import { judgedOn, verdictOn, type About } from './verdicts.js';

/** Names that are wider are cut in the drawing; the list of figures has them whole. */
const NAME_WIDTH = 150;
const STRAIGHT_AHEAD = 1;

/** A name as a label, with a mark if something is wrong with what it names. */
export function nameLabel(
  assessment: Assessment,
  name: string,
  about: About,
  looks: Pick<Label, 'strong' | 'soft'> = {},
): Label {
  const judged = judgedOn(assessment, about);
  const accepted = judged?.accepted ? ' (accepted)' : '';
  const mark = judged && judged.verdict !== 'pass' ? judged.verdict : undefined;
  return { lines: [shortened(name, NAME_WIDTH, looks.strong) + accepted], ...looks, ...(mark && { mark }) };
}

export function bearingWords({ bearing }: PlanScreen): string {
  if (Math.abs(bearing) < STRAIGHT_AHEAD) return 'straight ahead';
  return `${formatAngle(Math.abs(bearing))} to the ${bearing > 0 ? 'right' : 'left'}`;
}

/** '31 in clear', and what is the least where that is not kept. */
export function clearWords(assessment: Assessment, walkway: string, { length }: Units): string {
  const clear = assessment.walkways.find(({ name }) => name === walkway)?.clear;
  if (clear === undefined) return 'width not known';
  const short = assessment.findings.find(
    ({ check, subject, verdict }) => check === 'walkway-width' && subject.name === walkway && verdict === 'fail',
  );
  const least = short?.limit === undefined ? '' : `, least ${length(short.limit)}`;
  return `${length(clear)} clear${least}`;
}

export function walkwayLabel(assessment: Assessment, name: string, units: Units): Label {
  const mark = verdictOn(assessment, { kind: 'walkway', subject: name });
  return {
    lines: [shortened(name, NAME_WIDTH, true), clearWords(assessment, name, units)],
    strong: true,
    ...(mark && { mark }),
  };
}

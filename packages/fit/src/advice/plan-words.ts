import type { LeftOut, Plan } from '../assessment.js';
import { formatRange, formatShare, listOf, seatedOrStanding } from '../format.js';
import type { Scene } from '../scene/scene.js';

/** More names than this are a crowd to read: they are counted. */
const NAMES = 4;

/** What to do, then whom it suits: 'Set the desk Left to 41 1/4 in: suits Tobias, most likely Noor, not Priya'. */
export function titleOf(scene: Scene, plan: Outlook, sitsAndStands: SitsAndStands): string {
  const things = listOf(plan.settings.map((setting, index) => deed(scene, setting, plan.settings[index - 1])));
  return `${things.charAt(0).toUpperCase()}${things.slice(1)}: ${effect(plan, sitsAndStands)}`;
}

/** Whether the person works in both postures. */
type SitsAndStands = (who: string) => boolean;
type Outlook = Pick<Plan, 'settings' | 'serves' | 'likely' | 'leftOut'>;

function deed(scene: Scene, { part, of, value }: Plan['settings'][number], before?: Plan['settings'][number]): string {
  const height = formatRange(value, scene.booth.show);
  if (part === 'ring') {
    const whose = before?.part === 'seat' ? 'its foot ring' : `the foot ring of ${of}`;
    return `hang ${whose} ${height} below the seat`;
  }
  const what = part === 'desk' ? `the desk ${of}` : `the seat of ${of}`;
  return value.min === value.max ? `set ${what} to ${height}` : `make ${what} adjustable from ${height}`;
}

function effect({ serves, likely, leftOut }: Outlook, sitsAndStands: SitsAndStands): string {
  const out = [...new Set(leftOut.map(({ who }) => who))].map((who) => leftOut.filter((one) => one.who === who));
  const inPart = out.filter(isInPart).map(([one]) => `${formatShare(one!.share!)} of ${one!.who}`);
  const not = out.filter((of) => !isInPart(of)).map((of) => outcome(of, sitsAndStands));
  const suited = [...(serves.length <= NAMES ? serves : [`${serves.length} people`]), ...inPart];
  const parts = [
    ...(suited.length > 0 ? [`suits ${listOf(suited)}`] : []),
    ...(likely.length > 0 ? [`${suited.length > 0 ? 'most likely' : 'most likely suits'} ${named(likely)}`] : []),
    ...(not.length > 0 ? [`not ${named(not)}`] : []),
  ];
  const inOnePosture = out.filter((of) => !isInPart(of) && isInOnePosture(of, sitsAndStands));
  if (suited.length + likely.length > 0 || inOnePosture.length === 0) return parts.join(', ');
  return `most likely suits ${named(inOnePosture.map(([one]) => `${one!.who} only ${one!.posture === 'sit' ? 'standing' : 'seated'}`))}`;
}

/** A crowd of which some are served; if almost nobody is, it is left out like a person. */
function isInPart(of: readonly LeftOut[]): boolean {
  return of.every(({ share = 0 }) => share > 0.005);
}

/** Whom a plan leaves out, and in which posture if they are served in the other. */
function outcome(of: readonly LeftOut[], sitsAndStands: SitsAndStands): string {
  const { who, posture } = of[0]!;
  return isInOnePosture(of, sitsAndStands) ? `${who} ${seatedOrStanding(posture)}` : who;
}

function isInOnePosture(of: readonly LeftOut[], sitsAndStands: SitsAndStands): boolean {
  const { who, posture } = of[0]!;
  return sitsAndStands(who) && of.every((one) => one.posture === posture);
}

function named(names: readonly string[]): string {
  return names.length <= NAMES ? listOf(names) : `${names.length} people`;
}

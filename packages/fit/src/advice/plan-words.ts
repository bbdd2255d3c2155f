import type { LeftOut, Plan } from '../assessment.js';
import { formatRange, formatShare, inPosture, listOf, named } from '../format.js';
import type { Scene } from '../scene/scene.js';
import { say } from '../words/say.js';

/** What to do, then whom it serves: 'Set the desk Left to 41 1/4 in: serves 1 of 3, most likely Noor too, not Priya'. */
export function titleOf(scene: Scene, plan: Outlook, sitsAndStands: SitsAndStands): string {
  const things = listOf(plan.settings.map((setting, index) => deed(scene, setting, plan.settings[index - 1])));
  return `${things.charAt(0).toUpperCase()}${things.slice(1)}: ${effect(plan, sitsAndStands)}`;
}

/** Whether the person works in both postures. */
type SitsAndStands = (who: string) => boolean;
type Outlook = Pick<Plan, 'settings' | 'serves' | 'likely' | 'leftOut'> & {
  /** How many people and crowds work at the desk. */
  readonly people: number;
};

function deed(scene: Scene, { part, of, value }: Plan['settings'][number], before?: Plan['settings'][number]): string {
  const height = formatRange(value, scene.booth.show);
  if (part === 'ring') {
    return before?.part === 'seat'
      ? say`hang its foot ring ${height} below the seat`
      : say`hang the foot ring of ${of} ${height} below the seat`;
  }
  const what = part === 'desk' ? say`the desk ${of}` : say`the seat of ${of}`;
  return value.min === value.max ? say`set ${what} to ${height}` : say`make ${what} adjustable from ${height}`;
}

function effect({ serves, likely, leftOut, people }: Outlook, sitsAndStands: SitsAndStands): string {
  const out = [...new Set(leftOut.map(({ who }) => who))].map((who) => leftOut.filter((one) => one.who === who));
  const inPart = out.filter(isInPart).map(([one]) => say`${formatShare(one!.share!)} of ${one!.who}`);
  const not = out.filter((of) => !isInPart(of)).map((of) => outcome(of, sitsAndStands));
  const served = [...(serves.length > 0 ? [say`${serves.length} of ${people}`] : []), ...inPart];
  const parts = [
    ...(served.length > 0 ? [say`serves ${listOf(served)}`] : []),
    ...(likely.length > 0
      ? [served.length > 0 ? say`most likely ${named(likely)} too` : say`most likely serves ${named(likely)}`]
      : []),
    ...(not.length > 0 ? [say`not ${named(not)}`] : []),
  ];
  const inOnePosture = out.filter((of) => !isInPart(of) && isInOnePosture(of, sitsAndStands));
  if (served.length + likely.length > 0 || inOnePosture.length === 0) return parts.join(', ');
  return say`most likely serves ${named(inOnePosture.map(([one]) => (one!.posture === 'sit' ? say`${one!.who} only standing` : say`${one!.who} only seated`)))}`;
}

/** A crowd of which some are served; if almost nobody is, it is left out like a person. */
function isInPart(of: readonly LeftOut[]): boolean {
  return of.every(({ share = 0 }) => share > 0.005);
}

/** Whom a plan leaves out, and in which posture if they are served in the other. */
function outcome(of: readonly LeftOut[], sitsAndStands: SitsAndStands): string {
  const { who, posture } = of[0]!;
  return isInOnePosture(of, sitsAndStands) ? inPosture(who, posture) : who;
}

function isInOnePosture(of: readonly LeftOut[], sitsAndStands: SitsAndStands): boolean {
  const { who, posture } = of[0]!;
  return sitsAndStands(who) && of.every((one) => one.posture === posture);
}

import type { ScreenHeight } from '../../booth.js';
import type { Remedy } from '../../assessment.js';
import { buyingStep, formatAngle, listOf, typeLength, effectOf } from '../../format.js';
import { verdictOf } from '../../scene/verdict.js';
import { anglesOf, bearableRises, goodRises, shiftsFor, SLACK, type Angles } from '../../scene/screen-angles.js';
import { eyesAt, shareOver, type Eyes, type View } from '../../scene/viewing.js';
import type { Scene } from '../../scene/scene.js';
import type { Station } from '../../stations/station.js';
import type { Check } from '../check.js';
import { aboutView, eachView, whoLooks } from './each-view.js';
import { say } from '../../words/say.js';

export const screenHeight: Check = {
  id: 'screen-height',
  group: 'screen',
  title: 'Screen height',
  question: 'Is the screen at a good height for the eye?',
  computes: 'Elevation of the screen’s top edge, middle and bottom edge, seen from the eye.',
  limits:
    'Preferred: top edge at or below eye level, middle 0 to 30° below (best 15° seated, 10° standing), bottom at most 33° below. ' +
    'Outer: top at most 20° above, bottom at most 60° below.',
  sources: [
    {
      name: 'Panero & Zelnik 1979, 9.1 and 9.2',
      says: 'Normal line of sight 10° below level standing, 15° sitting; top at eye height; bottom at most 30°, 33° when sitting long.',
      read: 'in the source',
    },
    {
      name: 'CCOHS, monitor positioning',
      says: 'Middle about 15° below level, good within 15° of that.',
      read: 'in the source',
    },
    {
      name: 'NUREG-0700 Rev. 2, 11.1.2-6',
      says: 'Displays watched often: at most 20° above level.',
      read: 'in the source',
    },
    { name: 'ANSI/HFS 100-1988', says: 'Screen within 60° below level.', read: 'in a secondary source' },
  ],
  strength: 'strong',
  restsOn: ['shoe', 'slump', 'lean', 'aspect', 'tilt'],
  chooses: ['screen bottom', 'screen centre', 'screen top'],
  unit: 'deg',
  example: {
    fires: `desk Left { width 60in  depth 30in  height 29in }
chair Low { seat 17in }
operator Noor { stature 5'3" }
monitor Cues { diagonal 24in }
workstation Sound { desk Left  chair Low  operators Noor  monitor Cues { setback 24in  bottom 16in above desk } }
`,
    passes: `desk Left { width 60in  depth 30in  height 29in }
chair Low { seat 17in }
operator Noor { stature 5'3"  sitting-eye 29in }
monitor Cues { diagonal 24in }
workstation Sound { desk Left  chair Low  operators Noor  monitor Cues { setback 24in  bottom 2in above desk } }
`,
  },
  ofEachStation: true,
  find: (scene) =>
    eachView(
      scene,
      (what) => say`Cannot say how high the eye looks at ${what}.`,
      (eyes, view) => {
        const angles = anglesOf(view, eyes.desk, eyes.eye);
        const share = shareOver(eyes, view, [goodRises(view)]);
        const shareAtLimit = shareOver(eyes, view, [bearableRises(view)]);
        const verdict = verdictOf(share, shareAtLimit, eyes.person.wanted);
        const decides = decisive(angles, verdict === 'fail');
        const heights = view.use.height!;
        const remedies = verdict === 'pass' ? [] : changesFor(scene, eyes, view);
        return {
          ...aboutView(eyes, view),
          verdict,
          measured: decides.value,
          limit: decides.limit,
          margin: decides.margin,
          share,
          shareAtLimit,
          message:
            verdict === 'pass'
              ? say`${view.name} is at a good height for ${whoLooks(eyes)}: its middle is ${below(angles.centre)}.`
              : [sentence(view, eyes, angles), ...remedies.map(({ title }) => `${title}.`)].join(' '),
          terms: say`top ${formatAngle(angles.top)}, middle ${formatAngle(angles.centre)}, bottom ${formatAngle(angles.bottom)} from eye level`,
          origin: heights.distance.origin ?? view.use.monitor.origin,
          remedies,
        };
      },
    ),
};

/** The line of the screen that has the least room to its bound. */
function decisive(angles: Angles, outer: boolean): { value: number; limit: number; margin: number } {
  const highest = outer ? 20 : 0;
  const lowest = outer ? -60 : -33;
  const bounds = [
    { value: angles.top, limit: highest, margin: highest - angles.top },
    { value: angles.bottom, limit: lowest, margin: angles.bottom - lowest },
    ...(outer ? [] : [{ value: angles.centre, limit: -30, margin: angles.centre + 30 }]),
  ];
  return bounds.reduce((worst, bound) => (bound.margin < worst.margin ? bound : worst));
}

/** An arm, where no one height suits everyone: then no height is offered by which somebody loses. */
function changesFor(scene: Scene, eyes: Eyes, view: View): Remedy[] {
  const arm = armFor(scene, eyes.station, view);
  const heights = remediesOf(scene, eyes, view);
  return arm ? [arm, ...heights.filter(({ safe }) => safe)] : heights;
}

/** One height for everyone who looks at the screen there; if there is none, the height for these eyes, and who loses by it. */
function remediesOf(scene: Scene, eyes: Eyes, view: View): Remedy[] {
  const { line, over, distance } = view.use.height!;
  const everyone = eyesAt(scene, eyes.station);
  const fits = (one: Eyes, height: number) => {
    const { lowest, highest } = shiftsFor(view, one);
    const shift = height - distance.value;
    return shift >= lowest - 1 && shift <= highest + 1;
  };
  const step = buyingStep(scene.booth.show);
  const within = (all: readonly Eyes[]) => {
    const shifts = all.map((one) => shiftsFor(view, one));
    const low = Math.max(...shifts.map(({ lowest }) => lowest));
    const high = Math.min(...shifts.map(({ highest }) => highest));
    const ideal = shifts.reduce((sum, one) => sum + one.ideal, 0) / shifts.length;
    if (low > high) return undefined;
    const height = Math.round((distance.value + Math.min(high, Math.max(low, ideal))) / step) * step;
    return all.every((one) => fits(one, height)) ? height : undefined;
  };
  const height = within(everyone) ?? within([eyes]);
  if (height === undefined || !distance.origin || Math.abs(height - distance.value) < 1) return [];
  const suited = everyone.filter((one) => fits(one, height));
  const lost = everyone.filter((one) => fits(one, distance.value) && !suited.includes(one));
  const place = placeOf(line, over, scene.length(height));
  const effect = effectOf(suited.map(whoLooks), lost.map(whoLooks));
  return [
    {
      title:
        height < distance.value
          ? say`Lower ${view.name} to ${place}: ${effect}`
          : say`Raise ${view.name} to ${place}: ${effect}`,
      changes: [{ origin: distance.origin, text: typeLength(height, scene.booth.show) }],
      safe: lost.length === 0,
    },
  ];
}

/** Where no one height suits all who look at the screen there: between what heights they would set it on an arm. The file cannot say that yet. */
function armFor(scene: Scene, station: Station, view: View): Remedy | undefined {
  const { line, over, distance } = view.use.height!;
  const everyone = eyesAt(scene, station);
  // Of a crowd only the mean body is known here, which says nothing of how far its tall and short reach.
  if (everyone.some(({ person }) => person.kind === 'crowd')) return undefined;
  const shifts = everyone.map((eyes) => shiftsFor(view, eyes));
  if (shifts.some(({ lowest, highest }) => lowest > highest)) return undefined;
  if (Math.max(...shifts.map(({ lowest }) => lowest)) <= Math.min(...shifts.map(({ highest }) => highest)) + 1)
    return undefined;
  const step = buyingStep(scene.booth.show);
  const heights = shifts.map(({ lowest, highest, ideal }) => {
    return Math.round((distance.value + Math.min(highest, Math.max(lowest, ideal))) / step) * step;
  });
  const [least, most] = [Math.min(...heights), Math.max(...heights)];
  if (least < 0) return undefined;
  const place = placeOf(line, over, say`${scene.length(least)} to ${scene.length(most)}`);
  const title = say`Put ${view.name} on an arm that each sets to ${place}: suits everyone who looks at it`;
  return { title, changes: [], safe: false };
}

function sentence(view: View, eyes: Eyes, angles: Angles): string {
  const faults = [
    ...(angles.top > SLACK ? [say`its top edge is ${formatAngle(angles.top)} above eye level`] : []),
    ...(angles.centre < -30 - SLACK ? [say`its middle is ${below(angles.centre)}`] : []),
    ...(angles.bottom < -33 - SLACK ? [say`its bottom edge is ${below(angles.bottom)}`] : []),
  ];
  const what = faults.length > 0 ? listOf(faults) : say`its top edge is ${below(angles.top)}, close to the limit`;
  const who = whoLooks(eyes);
  if (angles.top > SLACK) return say`For ${who}, ${view.name} stands badly: ${what}, so the head tips back.`;
  return faults.length > 0
    ? say`For ${who}, ${view.name} stands badly: ${what}, so the neck bends.`
    : say`For ${who}, ${view.name} stands badly: ${what}, and eye heights differ.`;
}

function placeOf(line: ScreenHeight['line'], over: ScreenHeight['over'], height: string): string {
  switch (line) {
    case 'bottom':
      return over === 'desk' ? say`bottom ${height} above the desk` : say`bottom ${height} above the floor`;
    case 'centre':
      return over === 'desk' ? say`centre ${height} above the desk` : say`centre ${height} above the floor`;
    case 'top':
      return over === 'desk' ? say`top ${height} above the desk` : say`top ${height} above the floor`;
  }
}

function below(angle: number): string {
  return angle <= 0 ? say`${formatAngle(-angle)} below eye level` : say`${formatAngle(angle)} above eye level`;
}

import type { Remedy } from '../../assessment.js';
import { buyingStep, formatAngle, formatRange, listOf, typeLength, typeRange, effectOf } from '../../format.js';
import { verdictOf } from '../../scene/verdict.js';
import { bearableRises, goodRises, heightsFor, SLACK } from '../../scene/screen-angles.js';
import { quantileOf } from '../../bodies/people.js';
import { anglesOf, shareOver, type Angles } from '../../scene/screen-lines.js';
import { placeOfScreen } from '../../scene/screen-place.js';
import { eyeOver, eyesAt, eyesOver, isAdjustable, type Eyes, type View } from '../../scene/viewing.js';
import type { Scene } from '../../scene/scene.js';
import type { Person, Station } from '../../stations/station.js';
import type { Millimetres, Share } from '../../units.js';
import type { Check } from '../check.js';
import { aboutView, eachView, whoLooks } from './each-view.js';
import { say } from '../../words/say.js';

export const screenHeight: Check = {
  id: 'screen-height',
  group: 'screen',
  title: 'Screen height',
  question: 'Is the screen at a good height for the eye?',
  computes:
    'Elevation of the screen’s top edge, middle and bottom edge, seen from the eye. ' +
    'A screen on an arm is where each sets it, as near to the best angle as the arm reaches.',
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
        const angles = anglesOf(view, eyes);
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
  if (isAdjustable(view)) return arm ? [arm] : [];
  const heights = remediesOf(scene, eyes, view);
  return arm ? [arm, ...heights.filter(({ safe }) => safe)] : heights;
}

/** One height for everyone who looks at the screen there; if there is none, the height for these eyes, and who loses by it. */
function remediesOf(scene: Scene, eyes: Eyes, view: View): Remedy[] {
  const { line, over, distance } = view.use.height!;
  const now = distance.value.max;
  const everyone = eyesAt(scene, eyes.station);
  const fits = (one: Eyes, height: number) => {
    const { lowest, highest } = heightsFor(view, one);
    return height >= lowest - 1 && height <= highest + 1;
  };
  const step = buyingStep(scene.booth.show);
  const within = (all: readonly Eyes[]) => {
    const heights = all.map((one) => heightsFor(view, one));
    const low = Math.max(...heights.map(({ lowest }) => lowest));
    const high = Math.min(...heights.map(({ highest }) => highest));
    const ideal = heights.reduce((sum, one) => sum + one.ideal, 0) / heights.length;
    if (low > high) return undefined;
    const height = Math.round(Math.min(high, Math.max(low, ideal)) / step) * step;
    return all.every((one) => fits(one, height)) ? height : undefined;
  };
  const height = within(everyone) ?? within([eyes]);
  if (height === undefined || !distance.origin || Math.abs(height - now) < 1) return [];
  const suited = everyone.filter((one) => fits(one, height));
  const lost = everyone.filter((one) => fits(one, now) && !suited.includes(one));
  const place = placeOfScreen(line, over, scene.length(height));
  const effect = effectOf(suited.map(whoLooks), lost.map(whoLooks));
  return [
    {
      title:
        height < now ? say`Lower ${view.name} to ${place}: ${effect}` : say`Raise ${view.name} to ${place}: ${effect}`,
      changes: [{ origin: distance.origin, text: typeLength(height, scene.booth.show) }],
      safe: lost.length === 0,
    },
  ];
}

/** Where no one height suits all who look at the screen there, or the arm does not reach so far: between what heights they would set it. */
function armFor(scene: Scene, station: Station, view: View): Remedy | undefined {
  const { line, over, distance } = view.use.height!;
  const everyone = eyesAt(scene, station);
  const isOnArm = isAdjustable(view);
  if (everyone.map((eyes) => heightsFor(view, eyes)).some(({ lowest, highest }) => lowest > highest)) return undefined;
  if (!isOnArm && oneSuits(view, everyone)) return undefined;
  const step = buyingStep(scene.booth.show);
  const set = everyone.flatMap((eyes) => idealEnds(view, eyes));
  const reach = isOnArm ? distance.value : { min: Infinity, max: -Infinity };
  const least = Math.min(reach.min, Math.floor(Math.min(...set) / step + 1e-6) * step);
  const most = Math.max(reach.max, Math.ceil(Math.max(...set) / step - 1e-6) * step);
  if (least < 0) return undefined;
  const { show } = scene.booth;
  const told = { min: least, max: most };
  const place = placeOfScreen(line, over, formatRange(told, show));
  return {
    title: isOnArm
      ? say`Take an arm for ${view.name} that each sets to ${place}: suits everyone who looks at it`
      : say`Put ${view.name} on an arm that each sets to ${place}: suits everyone who looks at it`,
    changes: distance.origin ? [{ origin: distance.origin, text: typeRange(told, show) }] : [],
    safe: false,
  };
}

/** Whether one height suits all who are known: of a crowd the mean body does not tell. */
function oneSuits(view: View, everyone: readonly Eyes[]): boolean {
  const known = everyone.filter(({ person }) => person.kind === 'operator').map((eyes) => heightsFor(view, eyes));
  return Math.max(...known.map(({ lowest }) => lowest)) <= Math.min(...known.map(({ highest }) => highest)) + 1;
}

/** The lowest and the highest of the heights that as many set as must be served, of all that one body may be. */
function idealEnds(view: View, eyes: Eyes): readonly Millimetres[] {
  const below = heightsFor(view, eyes).ideal - eyeOver(view, eyes.eye, eyes.desk);
  return spread(eyes.person, eyesOver(view, eyes)).map((height) => height + below);
}

/** Between what heights as many eyes are as must be served, the lowest and the highest left out; the same for every screen there. */
function spread({ people, wanted }: Person, heights: Float64Array): readonly Millimetres[] {
  const known = spreads.get(heights);
  if (known?.wanted === wanted) return known.ends;
  const left = (1 - wanted) / 2;
  const ends = [left, 1 - left].map((share) => quantileOf(people, heights, share));
  spreads.set(heights, { wanted, ends });
  return ends;
}

const spreads = new WeakMap<Float64Array, { readonly wanted: Share; readonly ends: readonly Millimetres[] }>();

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

function below(angle: number): string {
  return angle <= 0 ? say`${formatAngle(-angle)} below eye level` : say`${formatAngle(angle)} above eye level`;
}

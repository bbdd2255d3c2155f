import { typeLength } from '../../format.js';
import { verdictOf } from '../../scene/verdict.js';
import type { Scene } from '../../scene/scene.js';
import { risesAt } from '../../scene/screen-angles.js';
import { linesFor, shareOver } from '../../scene/screen-lines.js';
import { distanceTo, type Eyes, type View } from '../../scene/viewing.js';
import { TOLERANCE, type Millimetres } from '../../units.js';
import type { Check, FindingDraft } from '../check.js';
import { sizeDown, sizeUp } from '../sizes.js';
import { aboutView, eachView, whoLooks } from './each-view.js';
import { say } from '../../words/say.js';

const NEAREST = 500;
const FARTHEST = 1000;
const TOO_NEAR = 400;
/** How far inside the band a remedy aims, so that people of the same stature are inside too. */
const SPARE = 20;

export const screenDistance: Check = {
  id: 'screen-distance',
  group: 'screen',
  title: 'Viewing distance',
  question: 'Is the screen at a good distance from the eye?',
  computes: 'Straight line from the eye, over the near edge, to the middle of the screen.',
  limits: 'Preferred: 500 to 1000 mm. Outer: at least 400 mm.',
  sources: [
    {
      name: 'OSHA Computer Workstations, monitors',
      says: '20 to 40 in (500 to 1000 mm).',
      read: 'in a secondary source',
    },
    { name: 'ISO 9241-5:1998', says: 'At least 400 mm.', read: 'from memory' },
  ],
  strength: 'medium',
  restsOn: ['shoe', 'slump', 'lean', 'aspect'],
  chooses: ['screen setback'],
  unit: 'mm',
  example: {
    fires: `desk Left { width 60in  depth 30in  height 29in }
chair Low { seat 16in..20in }
operator Noor { stature 5'3" }
monitor Cues { diagonal 22in }
workstation Sound { desk Left  chair Low  operators Noor  monitor Cues { setback 13in  bottom 4in above desk } }
`,
    passes: `desk Left { width 60in  depth 30in  height 29in }
chair Low { seat 16in..20in }
operator Noor { stature 5'3" }
monitor Cues { diagonal 22in }
workstation Sound { desk Left  chair Low  operators Noor  monitor Cues { setback 24in  bottom 4in above desk } }
`,
  },
  ofEachStation: true,
  find: (scene) =>
    eachView(
      scene,
      (what) => say`Cannot say how far the eye is from ${what}.`,
      (eyes, view) => {
        const distance = distanceTo(view, linesFor(view, eyes).centre, eyes.eye);
        const within = (least: Millimetres, most: Millimetres) =>
          shareOver(eyes, view, risesAt(view, { min: least - TOLERANCE, max: most + TOLERANCE }));
        const share = within(NEAREST, FARTHEST);
        const shareAtLimit = within(TOO_NEAR, Infinity);
        const verdict = verdictOf(share, shareAtLimit, eyes.person.wanted);
        const limit = verdict === 'fail' ? TOO_NEAR : isFar(distance) ? FARTHEST : NEAREST;
        return {
          ...aboutView(eyes, view),
          verdict,
          measured: distance,
          limit,
          margin: limit === FARTHEST ? FARTHEST - distance : distance - limit,
          share,
          shareAtLimit,
          origin: view.use.setback!.origin ?? view.use.monitor.origin,
          ...(verdict === 'pass'
            ? {
                message: say`${view.name} is ${scene.length(distance)} from the eyes of ${whoLooks(eyes)}: a good viewing distance.`,
              }
            : advised(scene, eyes, view, distance)),
        };
      },
    ),
};

/** Which end of the band is the nearer: there somebody is outside, if anybody is. */
function isFar(distance: Millimetres): boolean {
  return distance > (NEAREST + FARTHEST) / 2;
}

/** What is so, and the setback that brings these eyes inside the band, if one does. */
function advised(
  scene: Scene,
  eyes: Eyes,
  view: View,
  distance: Millimetres,
): Pick<FindingDraft, 'message' | 'remedies'> {
  const reason = reasonOf(view.name, whoLooks(eyes), distance, scene.length);
  const far = isFar(distance);
  const setback = setbackFor(scene, eyes, view, distance);
  if (setback === undefined) {
    const within = scene.length(FARTHEST);
    const isAside = view.use.at !== undefined && view.aside ** 2 > distance ** 2 - view.level ** 2;
    const instead = isAside
      ? say`Move it along the desk to the operator: no setback brings it within ${within}.`
      : say`Bring it nearer to the height of the eye: no setback brings it within ${within}.`;
    return { message: `${reason} ${instead}`, remedies: [] };
  }
  const [to, text] = [scene.length(setback), typeLength(setback, scene.booth.show)];
  const advice = far ? say`Bring it nearer: set its setback to ${to}.` : say`Move it back: set its setback to ${to}.`;
  const title = far ? say`Bring it nearer: setback ${text}` : say`Move it back: setback ${text}`;
  const origin = view.use.setback!.origin;
  return {
    message: `${reason} ${advice}`,
    remedies: origin ? [{ title, changes: [{ origin, text }], safe: false }] : [],
  };
}

/**
 * The setback at which the eye is a little inside the band. With a place along the desk the screen moves straight ahead; without one,
 * along the line from the eye.
 */
function setbackFor(scene: Scene, eyes: Eyes, { use, aside, level }: View, distance: Millimetres) {
  const far = isFar(distance);
  const wanted = far ? Math.min(FARTHEST, distance) - SPARE : Math.max(NEAREST, distance) + SPARE;
  const lean = eyes.station.workstation.lean.value;
  const onTheLevel = wanted ** 2 - (distance ** 2 - level ** 2);
  const square = use.at ? onTheLevel - aside ** 2 : onTheLevel;
  if (square < 0) return undefined;
  const slant = use.at || level === 0 ? 1 : Math.abs(use.setback!.value - lean) / level;
  const setback = lean + slant * Math.sqrt(square);
  const snapped = (far ? sizeDown : sizeUp)(setback, scene.booth.show);
  return snapped < 0 ? undefined : snapped;
}

function reasonOf(name: string, who: string, distance: number, length: (value: number) => string): string {
  const away = length(distance);
  if (distance > FARTHEST)
    return say`${name} is ${away} from the eyes of ${who}; beyond ${length(FARTHEST)} text must grow.`;
  if (distance < NEAREST)
    return say`${name} is ${away} from the eyes of ${who}; nearer than ${length(NEAREST)} tires the eyes.`;
  if (isFar(distance))
    return say`${name} is ${away} from the eyes of ${who}; so near the most of ${length(FARTHEST)} that others of the same stature are farther.`;
  return say`${name} is ${away} from the eyes of ${who}; so near the least of ${length(NEAREST)} that others of the same stature are nearer.`;
}

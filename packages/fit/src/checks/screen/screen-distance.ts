import { buyingStep, typeLength } from '../../format.js';
import { verdictOf } from '../../scene/verdict.js';
import { distanceOver, distanceTo, linesOf, shareOver } from '../../scene/viewing.js';
import { TOLERANCE, type Millimetres } from '../../units.js';
import type { Check } from '../check.js';
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
        const distance = distanceTo(view, linesOf(view, eyes.desk).centre, eyes.eye);
        const within = (least: Millimetres, most: Millimetres) =>
          shareOver(eyes, view, (rises, person) => {
            const away = distanceOver(view, rises[person]!);
            return away >= least - TOLERANCE && away <= most + TOLERANCE;
          });
        const share = within(NEAREST, FARTHEST);
        const shareAtLimit = within(TOO_NEAR, Infinity);
        const verdict = verdictOf(share, shareAtLimit, eyes.person.wanted);
        const tooFar = distance > FARTHEST;
        const limit =
          verdict === 'fail' ? TOO_NEAR : tooFar || distance > (NEAREST + FARTHEST) / 2 ? FARTHEST : NEAREST;
        const margin = limit === FARTHEST ? FARTHEST - distance : distance - limit;
        const setback = view.use.setback!;
        const shift = tooFar ? FARTHEST - distance - SPARE : Math.max(0, NEAREST - distance) + SPARE;
        const wanted = setback.value + shift * (view.level / distance) * (view.ahead / view.level);
        const step = buyingStep(scene.booth.show);
        const snapped = (tooFar ? Math.floor(wanted / step) : Math.ceil(wanted / step)) * step;
        const text = typeLength(snapped, scene.booth.show);
        const who = whoLooks(eyes);
        const to = scene.length(snapped);
        return {
          ...aboutView(eyes, view),
          verdict,
          measured: distance,
          limit,
          margin,
          share,
          shareAtLimit,
          message:
            verdict === 'pass'
              ? say`${view.name} is ${scene.length(distance)} from the eyes of ${who}: a good viewing distance.`
              : `${reasonOf(view.name, who, distance, scene.length)} ${tooFar ? say`Bring it nearer: set its setback to ${to}.` : say`Move it back: set its setback to ${to}.`}`,
          origin: setback.origin ?? view.use.monitor.origin,
          remedies:
            verdict === 'pass' || !setback.origin
              ? []
              : [
                  {
                    title: tooFar ? say`Bring it nearer: setback ${text}` : say`Move it back: setback ${text}`,
                    changes: [{ origin: setback.origin, text }],
                    safe: false,
                  },
                ],
        };
      },
    ),
};

function reasonOf(name: string, who: string, distance: number, length: (value: number) => string): string {
  const away = length(distance);
  if (distance > FARTHEST)
    return say`${name} is ${away} from the eyes of ${who}; beyond ${length(FARTHEST)} text must grow.`;
  if (distance < NEAREST)
    return say`${name} is ${away} from the eyes of ${who}; nearer than ${length(NEAREST)} tires the eyes.`;
  return say`${name} is ${away} from the eyes of ${who}; so near the least of ${length(NEAREST)} that others of the same stature are nearer.`;
}

import { formatAngle } from '../../format.js';
import { verdictOf } from '../../scene/verdict.js';
import { faceOf, squareRises } from '../../scene/screen-angles.js';
import { linesFor, shareOver } from '../../scene/screen-lines.js';
import { elevation, eyesAt, type Eyes, type View } from '../../scene/viewing.js';
import { degrees, radians, type Degrees } from '../../units.js';
import type { Check, FindingDraft } from '../check.js';
import { aboutView, eachView, whoLooks } from './each-view.js';
import { say } from '../../words/say.js';

const SQUARE = 20;
const ASLANT = 45;
const SLACK = 0.1;

export const screenTilt: Check = {
  id: 'screen-tilt',
  group: 'screen',
  title: 'Screen faces the eye',
  question: 'Does the screen face the person who looks at it?',
  computes:
    'The angle between the line from the middle of the screen to the eye and the direction in which the face looks: from the ' +
    'screen’s lean (`tilt`), the height of the eye, and how far the face is swung aside.',
  limits: 'Preferred: within 20° of square. Outer: within 45°.',
  sources: [
    {
      name: 'NUREG-0700 Rev. 3, 11.2.1.1 (from MIL-STD-1472G)',
      says: 'Face square to the line of sight; if that cannot be, at least 45° between face and line of sight.',
      read: 'in the source',
    },
    {
      name: 'Panero & Zelnik 1979, 9.2',
      says: 'Screen square to the normal line of sight.',
      read: 'in the source',
    },
    { name: 'own bound', says: 'The 20°: no source says how far from square is still good.', read: 'own bound' },
  ],
  strength: 'medium',
  restsOn: ['shoe', 'slump', 'lean', 'tilt'],
  chooses: ['screen tilt'],
  unit: 'deg',
  example: {
    fires: `desk Left { width 60in  depth 30in  height 29in }
chair Low { seat 17in }
operator Noor { stature 5'3" }
monitor Cues { diagonal 22in }
workstation Sound { desk Left  chair Low  operators Noor  monitor Cues { setback 24in  bottom 4in above desk  tilt 75deg } }
`,
    passes: `desk Left { width 60in  depth 30in  height 29in }
chair Low { seat 17in }
operator Noor { stature 5'3" }
monitor Cues { diagonal 22in }
workstation Sound { desk Left  chair Low  operators Noor  monitor Cues { setback 24in  bottom 4in above desk  tilt 10deg } }
`,
  },
  ofEachStation: true,
  find: (scene) =>
    eachView(
      scene,
      (what) => say`Cannot say how squarely the eye meets ${what}.`,
      (eyes, view) => judge(eyes, view, eyesAt(scene, eyes.station)),
    ),
};

function judge(eyes: Eyes, view: View, everyone: readonly Eyes[]): FindingDraft {
  const measured = fromSquare(view, rise(view, eyes));
  const share = shareOver(eyes, view, squareRises(view, SQUARE + SLACK));
  const shareAtLimit = shareOver(eyes, view, squareRises(view, ASLANT + SLACK));
  const verdict = verdictOf(share, shareAtLimit, eyes.person.wanted);
  const limit = verdict === 'fail' ? ASLANT : SQUARE;
  const { use, name } = view;
  return {
    ...aboutView(eyes, view),
    verdict,
    measured,
    limit,
    margin: limit - measured,
    share,
    shareAtLimit,
    ...(verdict === 'pass'
      ? { message: say`${name} faces ${whoLooks(eyes)}, within ${formatAngle(measured)} of square.` }
      : advised(eyes, view, measured, everyone)),
    origin: use.tilt.origin ?? use.turn?.origin ?? use.monitor.origin,
    assumptions: use.at && !use.turn ? [say`${name} faces straight across the desk`] : [],
  };
}

/** How far the eye stands above the middle of the screen, as an angle seen from there. */
function rise(view: View, eyes: Eyes): Degrees {
  return -elevation(view, linesFor(view, eyes).centre, eyes.eye);
}

/** The face leans back by the tilt and is swung aside; the eye is level with it or higher by `up`. */
function fromSquare(view: View, up: Degrees): Degrees {
  const face = faceOf(view);
  const cosine = face.level * Math.cos(radians(up)) + face.up * Math.sin(radians(up));
  return degrees(Math.acos(Math.min(1, Math.max(-1, cosine))));
}

/** What is so and what to do: swing the face round if that is the larger fault, else lean it to the eye. */
function advised(
  eyes: Eyes,
  view: View,
  measured: Degrees,
  everyone: readonly Eyes[],
): Pick<FindingDraft, 'message' | 'remedies'> {
  const { name, use, tilt, swing, bearing } = view;
  const lean = leanFor(eyes, view, everyone);
  const swings = Math.abs(swing) > Math.abs(tilt - lean.angle);
  const text = swings
    ? `${Math.round(Math.abs(bearing))}deg ${bearing < 0 ? 'left' : 'right'}`
    : `${Math.abs(lean.angle)}deg ${lean.angle < 0 ? 'forward' : 'back'}`;
  const advice = swings ? say`Swing its face round: \`turn ${text}\`.` : say`Lean it to the eye: \`tilt ${text}\`.`;
  const origin = swings ? use.turn?.origin : use.tilt.origin;
  const suited = swings || lean.suitsAll ? say`everyone who looks at it there` : whoLooks(eyes);
  const title = swings
    ? say`Set the turn of ${name} to ${text}: it faces ${suited}`
    : say`Set the tilt of ${name} to ${text}: it faces ${suited}`;
  return {
    message: `${say`${name} faces ${formatAngle(measured)} past ${whoLooks(eyes)}, so its picture looks slanted and pale.`} ${advice}`,
    remedies: origin ? [{ title, changes: [{ origin, text }], safe: swings || lean.suitsAll }] : [],
  };
}

/** The lean midway between all eyes there if it is square enough for each; else the lean for one pair of eyes. */
function leanFor(eyes: Eyes, view: View, everyone: readonly Eyes[]): { angle: Degrees; suitsAll: boolean } {
  const rises = everyone.map((one) => rise(view, one));
  const middle = Math.round((Math.min(...rises) + Math.max(...rises)) / 2);
  if (rises.every((up) => fromSquare({ ...view, tilt: middle }, up) <= SQUARE))
    return { angle: middle, suitsAll: true };
  return { angle: Math.round(rise(view, eyes)), suitsAll: false };
}

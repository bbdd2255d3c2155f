import type { Control } from '../../booth.js';
import { quantileOf, shareOf } from '../../bodies/people.js';
import { typeLength, inPosture } from '../../format.js';
import { armsOf, levelReach, levelReaches, type Arms } from '../../scene/reaching.js';
import { exactVerdict, verdictOf } from '../../scene/verdict.js';
import type { Scene } from '../../scene/scene.js';
import { eyesAt, lacksEyes } from '../../scene/viewing.js';
import { missing, placeAlong, type Station } from '../../stations/station.js';
import { TOLERANCE, type Millimetres } from '../../units.js';
import { cannotSay } from '../cannot-say.js';
import type { Check, FindingDraft } from '../check.js';
import { sizeDown } from '../sizes.js';
import { say } from '../../words/say.js';

/** What hands do all the time, they do within this. */
export const EASY = 400;
const FAR = 450;

export const reach: Check = {
  id: 'reach',
  group: 'reach',
  title: 'Reach to a control',
  question: 'Is the control within reach from where people sit or stand?',
  computes:
    'Level distance from the shoulders, over the near edge (or where `lean` puts them) at the operator’s place, to the middle of ' +
    'the control. Constant use: against a fixed distance. Occasional use: against √(L² − Δh²), L from shoulder to grip, Δh from ' +
    'shoulder to control. L is thumb-tip reach (from a wall behind the back) less 110 mm to the shoulder and less the thumb; a ' +
    'seated shoulder is sitting height less what the standing shoulder is below the crown, less the slump.',
  limits:
    'Constant use, preferred: at most 400 mm. Outer: at most 450 mm. Occasional use: at most what the arm reaches with the ' +
    'shoulders over the edge.',
  sources: [
    {
      name: 'AUVA, grasping space',
      says: 'Small grasping space 350 to 450 mm from the shoulder; large 550 to 650.',
      read: 'in the source',
    },
    {
      name: 'California State Fund and NIOSH 97-117',
      says: 'Things used often 13 to 17 in from each shoulder.',
      read: 'in the source',
    },
    {
      name: 'NUREG-0700 Rev. 2, 11.1.2-2',
      says: 'Controls within reach of the short, with the shoulder over the leading edge.',
      read: 'in the source',
    },
    {
      name: 'University of Michigan course notes',
      says: 'Level reach is √(L² − Δh²).',
      read: 'in the source',
    },
    {
      name: 'Pheasant, Bodyspace; Drillis & Contini 1966; City University of Hong Kong, Ch2-34',
      says: 'Wall to shoulder 105 to 115 mm; a hand is 0.108 of stature; a grip is a fifth of a hand short of the thumb tip.',
      read: 'derived',
    },
  ],
  strength: 'weak',
  restsOn: ['shoe', 'slump', 'lean'],
  chooses: ['control setback'],
  unit: 'mm',
  example: {
    fires: `desk Left { width 60in  depth 30in  height 29in }
chair Low { seat 17in }
operator Noor { stature 5'3" }
workstation Sound { desk Left  chair Low  operators Noor  control Faders { setback 14in  depth 20in  constant } }
`,
    passes: `desk Left { width 60in  depth 30in  height 29in }
chair Low { seat 17in }
operator Noor { stature 5'3" }
workstation Sound { desk Left  chair Low  operators Noor  control Faders { setback 4in  depth 20in  constant } }
`,
  },
  ofEachStation: true,
  find: (scene) =>
    scene.stations.flatMap((station) =>
      station.workstation.controls.flatMap((control) => findingsFor(scene, station, control)),
    ),
};

/** A control as hands meet it: level lengths from between the shoulders to its middle. */
interface Place {
  readonly station: Station;
  readonly control: Control;
  readonly ahead: Millimetres;
  readonly aside: Millimetres;
  readonly level: Millimetres;
}

function findingsFor(scene: Scene, station: Station, control: Control): FindingDraft[] {
  const subject = { kind: 'control', name: control.name } as const;
  const topic = say`Cannot say whether ${control.name} is within reach at ${station.name}.`;
  if (!control.setback) {
    const lack = missing('setback', `control ${control.name}`, 'setback 4in', control.origin);
    return [cannotSay(subject, topic, lack, control.origin)];
  }
  const { desk, workstation } = station;
  if (control.at && !workstation.at && !desk?.width) {
    const lack = desk
      ? missing('width', `desk ${desk.name}`, 'width 60in', desk.origin)
      : missing('desk', `workstation ${station.name}`, 'desk Left', workstation.origin);
    return [cannotSay(subject, topic, lack, control.origin)];
  }
  const ahead = control.setback.value + control.depth.value / 2 - workstation.lean.value;
  const aside = control.at ? control.at.value - placeAlong(station) : 0;
  const place = { station, control, ahead, aside, level: Math.hypot(ahead, aside) };
  if (control.use.value === 'constant') return [constantUse(scene, place)];
  const blind = workstation.postures.value.flatMap((posture) => {
    const lack = lacksEyes(station, posture);
    return lack ? [cannotSay(subject, topic, lack, control.origin, posture)] : [];
  });
  const arms = eyesAt(scene, station).map(armsOf);
  let within: Millimetres | undefined;
  const served = () => (within ??= Math.min(...arms.map((own) => farthestFor(own, control))));
  return [...blind, ...arms.map((own) => occasionalUse(scene, place, own, served))];
}

/** Hands that work somewhere all the time: the same for everyone. */
function constantUse(scene: Scene, place: Place): FindingDraft {
  const { level, control, station } = place;
  const verdict = exactVerdict(level <= EASY + TOLERANCE, level <= FAR + TOLERANCE);
  return {
    ...about(place),
    verdict,
    limit: verdict === 'fail' ? FAR : EASY,
    margin: (verdict === 'fail' ? FAR : EASY) - level,
    ...(verdict === 'pass'
      ? {
          message: say`${control.name} is ${scene.length(level)} from the shoulders of whoever works at ${station.name}: easy to work at.`,
        }
      : advised(
          scene,
          place,
          say`${control.name} is ${scene.length(level)} from the shoulders of whoever works at ${station.name}; beyond ${scene.length(EASY)} arms tire.`,
          EASY,
        )),
  };
}

/** Hands that go there now and then: `served` is as far as everyone there reaches. */
function occasionalUse(scene: Scene, place: Place, own: Arms, served: () => Millimetres): FindingDraft {
  const { level, control } = place;
  const { person, posture, desk } = own.eyes;
  const reaches = levelReaches(own, control.height.value);
  const share = shareOf(person.people, (index) => level <= reaches[index]! + TOLERANCE);
  const verdict = verdictOf(share, share, person.wanted);
  const limit = levelReach(own.shoulder, own.arm, desk + control.height.value);
  const [away, arm, who] = [scene.length(level), scene.length(limit), inPosture(person.name, posture)];
  return {
    ...about(place),
    operator: person.name,
    posture,
    verdict,
    limit,
    margin: limit - level,
    share,
    shareAtLimit: share,
    ...(verdict === 'pass'
      ? {
          message: say`${control.name} is ${away} away from the shoulders of ${who}, whose arm goes ${arm} at that height: within reach.`,
        }
      : advised(
          scene,
          place,
          limit < level
            ? say`${control.name} is ${away} away from the shoulders of ${who}, whose arm goes ${arm} at that height: out of reach.`
            : say`${control.name} is ${away} away from the shoulders of ${who}, whose arm goes ${arm} at that height, but arms differ.`,
          served(),
        )),
  };
}

/** As far as so many of them reach as must pass. */
function farthestFor(arms: Arms, control: Control): Millimetres {
  const { people, wanted } = arms.eyes.person;
  return quantileOf(people, levelReaches(arms, control.height.value), 1 - wanted);
}

function about({ control, station, level }: Place) {
  return {
    subject: { kind: 'control', name: control.name },
    measured: level,
    origin: control.setback!.origin ?? control.origin,
    related: station.workstation.at?.origin
      ? [{ origin: station.workstation.at.origin, message: say`the operator’s place` }]
      : [],
    assumptions: control.at ? [] : [say`${control.name} is straight ahead`],
  } as const;
}

/** Bring it nearer, if that alone does it; or along the desk. */
function advised(
  scene: Scene,
  place: Place,
  what: string,
  within: Millimetres,
): Pick<FindingDraft, 'message' | 'remedies'> {
  if (within === 0) return { message: `${what} ${say`Lower it: no arm there goes so high.`}`, remedies: [] };
  const { control, aside, station } = place;
  const ahead = Math.sqrt(Math.max(0, within * within - aside * aside));
  const { show } = scene.booth;
  const setback = sizeDown(ahead - control.depth.value / 2 + station.workstation.lean.value, show);
  if (Math.abs(aside) >= within || setback < 0) {
    const how =
      Math.abs(aside) >= within
        ? say`Move it along the desk to the operator: no setback brings it within ${scene.length(within)}.`
        : say`Turn it, or choose a shallower one: no setback brings it within ${scene.length(within)}.`;
    return { message: `${what} ${how}`, remedies: [] };
  }
  const text = typeLength(setback, show);
  const origin = control.setback!.origin;
  return {
    message: `${what} ${say`Bring it nearer: set its setback to ${text}.`}`,
    remedies: origin
      ? [{ title: say`Bring ${control.name} nearer: setback ${text}`, changes: [{ origin, text }], safe: true }]
      : [],
  };
}

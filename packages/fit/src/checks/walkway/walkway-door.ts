import type { Remedy } from '../../assessment.js';
import type { Door, Walkway } from '../../booth.js';
import { narrowedBy, sidesOf, type Narrowing } from '../../layout/clear-width.js';
import { PLANNING_AID } from '../../limits/allowances.js';
import { heldTo, profileOf } from '../../limits/held-to.js';
import { leastWidth } from '../../limits/least-width.js';
import { profiles } from '../../limits/profiles.js';
import { withName } from '../../lookup.js';
import { exactVerdict } from '../../scene/verdict.js';
import type { Scene } from '../../scene/scene.js';
import { TOLERANCE, type Millimetres } from '../../units.js';
import type { Check, FindingDraft } from '../check.js';
import { subjectOf } from './walkways.js';
import { say } from '../../words/say.js';

const HALF = 0.5;

export const walkwayDoor: Check = {
  id: 'walkway-door',
  group: 'walkway',
  title: 'Doors that open into a walkway',
  question: 'Does a door that opens into a walkway leave enough of it?',
  computes:
    'What is left of the walkway between the farthest sweep of the door’s leaf and the other side, with the people who sit there, where ' +
    'the least width is that of ‘walkway-width’.',
  limits:
    'In any position a door leaves at least half of the least width. Fully open it takes at most 178 mm (7 in) of it: a door that leaves ' +
    'less when it stands at a right angle has to open back to its wall.',
  sources: [
    {
      name: profiles.us.door.source,
      says: 'Fully open, a door reduces the required width by at most 7 in; in any position by at most half. New York City says the same.',
      read: 'in the source',
    },
  ],
  strength: 'strong',
  chooses: ['door opens'],
  caution: `Doors on a way out have rules of their own: which way they open, how, and with what hardware. ${PLANNING_AID}`,
  unit: 'mm',
  example: {
    fires: `booth "Example" { limits us }
room { width 30ft  depth 40ft  door Back { on back-wall  at 11ft  width 36in  opens in } }
desk Left { width 60in  depth 27in  height 29in }
chair Low { seat 17in }
operator Noor { stature 5'3" }
workstation Sound { desk Left  chair Low  operators Noor }
place Left at 10ft, 62in
walkway Behind { between booth and back-wall  serves 20 }
`,
    passes: `booth "Example" { limits us }
room { width 30ft  depth 40ft  door Back { on back-wall  at 11ft  width 36in  opens in } }
desk Left { width 60in  depth 27in  height 29in }
chair Low { seat 17in }
operator Noor { stature 5'3" }
workstation Sound { desk Left  chair Low  operators Noor }
place Left at 10ft, 88in
walkway Behind { between booth and back-wall  serves 20 }
`,
  },
  find: (scene) =>
    scene.layout.doorSwings.length === 0 ? [] : scene.booth.walkways.flatMap((walkway) => judgeAll(scene, walkway)),
};

/** One finding for each door whose leaf sweeps between the sides. */
function judgeAll(scene: Scene, walkway: Walkway): readonly FindingDraft[] {
  const sides = sidesOf(scene, walkway);
  const published = leastWidth(scene, walkway);
  if (!sides || 'unplaced' in sides || !published) return [];
  const { value: least, assumptions } = heldTo(scene, 'walkway-width', published);
  const { note } = profileOf(scene).door;
  const swings = scene.layout.doorSwings.map(({ door, outline }) => ({ what: door, outline }));
  return narrowedBy(sides, swings).map((narrowing) => {
    const door = withName(scene.booth.room!.doors, narrowing.what)!;
    const draft = judge(scene, walkway, door, narrowing, least);
    return { ...draft, assumptions: [...usual(door), ...assumptions, ...(note === undefined ? [] : [note])] };
  });
}

function judge(scene: Scene, walkway: Walkway, door: Door, { left }: Narrowing, least: Millimetres): FindingDraft {
  const [wide, half] = [least - profileOf(scene).door.value, least * HALF];
  const verdict = exactVerdict(left >= wide - TOLERANCE, left >= half - TOLERANCE);
  const limit = verdict === 'fail' ? half : wide;
  const [leaves, needed] = [scene.length(left), scene.length(least)];
  const message =
    verdict === 'pass'
      ? say`The door ${door.name} opens into ${walkway.name} and leaves ${leaves} in any position: of the least width of ${needed} a door may take ${scene.length(least - wide)}.`
      : verdict === 'marginal'
        ? say`Open at a right angle, the door ${door.name} leaves ${leaves} of ${walkway.name}, where ${needed} is the least. Let it open outward, or back until it lies along its wall.`
        : say`The door ${door.name} sweeps through ${walkway.name} and leaves only ${leaves}, where half of ${needed} is to stay free in any position. Let it open outward, or widen the walkway there by ${scene.length(half - left)}.`;
  return {
    subject: subjectOf(walkway),
    verdict,
    measured: left,
    limit,
    margin: left - limit,
    message,
    origin: door.opens.origin ?? door.origin,
    related: [{ origin: walkway.origin, message: say`the walkway ${walkway.name}` }],
    remedies: verdict === 'pass' ? [] : outward(door),
  };
}

/** What is beyond the wall is not known. */
function outward({ name, opens }: Door): readonly Remedy[] {
  if (!opens.origin) return [];
  return [
    { title: say`Let the door ${name} open outward`, changes: [{ origin: opens.origin, text: 'out' }], safe: false },
  ];
}

function usual({ name, opens, hinge }: Door): readonly string[] {
  return [
    ...(opens.isDefault ? [say`the door ${name} opens into the room`] : []),
    ...(hinge.isDefault ? [say`its hinge is on the left`] : []),
  ];
}

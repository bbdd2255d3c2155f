import type { Missing } from '../../assessment.js';
import type { Walkway } from '../../booth.js';
import { turnOf, type Lane } from '../../layout/turn.js';
import { PLANNING_AID } from '../../limits/allowances.js';
import { heldTo, profileOf } from '../../limits/held-to.js';
import { profiles } from '../../limits/profiles.js';
import { exactVerdict } from '../../scene/verdict.js';
import type { Scene } from '../../scene/scene.js';
import { missing } from '../../stations/station.js';
import { TOLERANCE, type Millimetres } from '../../units.js';
import { cannotSay } from '../cannot-say.js';
import type { Check, FindingDraft } from '../check.js';
import { lacksSide, subjectOf } from './walkways.js';
import { say } from '../../words/say.js';

export const walkwayTurn: Check = {
  id: 'walkway-turn',
  group: 'walkway',
  title: 'Turn round the booth’s end',
  question: 'Can a wheelchair turn back round the booth’s end?',
  computes:
    'For a walkway that `turns`: the clear width before the turn, beside the roomier end of the booth, and after it, from the plan; ' +
    'where the file gives `at-turn` or `after-turn`, the lesser of the two.',
  limits:
    '1067 mm (42 in) before, 1219 (48 in) at the turn and 1067 (42 in) after it, or 1524 (60 in) at the turn. Only round ' +
    'something less than 1219 mm (48 in) wide. `limit walkway-turn` sets the width at the turn.',
  sources: [
    {
      name: profiles.us.turn.end.source,
      says: 'A turn of 180° round something less than 48 in wide: 42 in approaching, 48 in at the turn, 42 in leaving; not needed with 60 in at the turn.',
      read: 'in the source',
    },
  ],
  strength: 'strong',
  takesLimit: true,
  caution: PLANNING_AID,
  unit: 'mm',
  example: {
    fires: `booth "Example" { limits us }
room { width 13ft  depth 40ft  seating { first 5ft } }
desk Left { width 10ft  depth 30in  height 40in }
place Left at 0in, 5ft
walkway Round { between booth and back-wall  serves 20  turns }
`,
    passes: `booth "Example" { limits us }
room { width 16ft  depth 40ft  seating { first 5ft } }
desk Left { width 10ft  depth 30in  height 40in }
place Left at 0in, 5ft
walkway Round { between booth and back-wall  serves 20  turns }
`,
  },
  find: (scene) => scene.booth.walkways.filter(({ turns }) => turns).map((walkway) => judge(scene, walkway)),
};

function judge(scene: Scene, walkway: Walkway): FindingDraft {
  const turn = turnOf(scene, walkway);
  if (!turn || 'unplaced' in turn) return unknown(walkway, lacksSide(scene, walkway, turn?.unplaced));
  const { narrower, lane, end: published, wideEnd } = profileOf(scene).turn;
  const end = lesser(walkway.atTurn && turn.openEnd ? undefined : turn.end, walkway.atTurn?.value);
  const after = lesser(turn.after, walkway.afterTurn?.value);
  const held = heldTo(scene, 'walkway-turn', published);
  const common = {
    subject: subjectOf(walkway),
    source: held.source,
    origin: walkway.origin,
    related: held.related,
    assumptions: held.assumptions,
  };
  if (turn.width !== undefined && turn.width >= narrower.value - TOLERANCE) {
    return {
      ...common,
      verdict: 'pass',
      message: say`${walkway.name} turns round something ${scene.length(turn.width)} wide: the rule for turns is for less than ${scene.length(narrower.value)}.`,
    };
  }
  const open = walkway.atTurn === undefined && turn.openEnd;
  const roomy = (end?.clear ?? 0) >= wideEnd.value - TOLERANCE;
  const parts = [
    { name: say`before the turn`, what: undefined, clear: turn.before, limit: lane.value },
    { name: say`at the turn`, what: end?.what, clear: end?.clear, limit: held.value },
    { name: say`after the turn`, what: after?.what, clear: after?.clear, limit: lane.value },
  ].flatMap((part) =>
    part.clear === undefined ? [] : [{ ...part, clear: part.clear, margin: part.clear - part.limit }],
  );
  const tightest = parts.reduce((least, part) => (part.margin < least.margin ? part : least));
  const narrow = tightest.margin < -TOLERANCE;
  if (!roomy && open && (narrow || !end)) return unknown(walkway, lacksEnd(scene, walkway));
  if (!roomy && !after && !narrow) return unknown(walkway, lacksAfter(walkway));

  const decides = roomy
    ? { ...tightest, clear: end!.clear, limit: wideEnd.value, margin: end!.clear - wideEnd.value }
    : tightest;
  const good = roomy || !narrow;
  const where = decides.what === undefined ? decides.name : `${decides.name} (${decides.what})`;
  const [wide, needed] = [scene.length(decides.clear), scene.length(decides.limit)];
  const [by, instead] = [scene.length(-decides.margin), scene.length(wideEnd.value)];
  return {
    ...common,
    verdict: exactVerdict(good, good),
    measured: decides.clear,
    limit: decides.limit,
    margin: decides.margin,
    message: good
      ? say`${walkway.name} has room to turn round the booth’s end: ${widths(scene, parts)}.`
      : turn.width === undefined
        ? say`${walkway.name} is ${wide} wide ${where}; a wheelchair that turns back round it needs ${needed} there. Widen it by ${by}, or make it ${instead} at the turn.`
        : say`${walkway.name} is ${wide} wide ${where}; a wheelchair that turns back round something ${scene.length(turn.width)} wide needs ${needed} there. Widen it by ${by}, or make it ${instead} at the turn.`,
    terms: widths(scene, parts),
  };
}

function widths(scene: Scene, parts: readonly { name: string; clear: Millimetres }[]): string {
  return parts.map(({ name, clear }) => `${scene.length(clear)} ${name}`).join(', ');
}

function lesser(planned: Lane | undefined, said: Millimetres | undefined): Lane | undefined {
  if (said === undefined || (planned && planned.clear <= said)) return planned;
  return { clear: said, what: say`what the file says narrows it` };
}

function unknown(walkway: Walkway, lack: Missing): FindingDraft {
  return cannotSay(
    subjectOf(walkway),
    say`Cannot say whether there is room to turn on ${walkway.name}.`,
    lack,
    walkway.origin,
  );
}

function lacksEnd(scene: Scene, walkway: Walkway): Missing {
  const { room } = scene.booth;
  return room && !room.width
    ? missing('width', 'room', 'width 40ft', room.origin)
    : missing('at-turn', `walkway ${walkway.name}`, 'at-turn 48in', walkway.origin);
}

function lacksAfter(walkway: Walkway): Missing {
  return missing('after-turn', `walkway ${walkway.name}`, 'after-turn 42in', walkway.origin);
}

import type { Missing } from '../../assessment.js';
import type { Desk, Legs } from '../../booth.js';
import { heldTo } from '../../limits/held-to.js';
import { exactVerdict } from '../../scene/verdict.js';
import type { Scene } from '../../scene/scene.js';
import { missing } from '../../stations/station.js';
import { INCH, TOLERANCE, type Millimetres } from '../../units.js';
import { cannotSay } from '../cannot-say.js';
import type { Check, FindingDraft } from '../check.js';
import { say } from '../../words/say.js';

const EDGE = { value: INCH, source: 'common practice, no source' };

export const legsFitTop: Check = {
  id: 'legs-fit-top',
  group: 'furniture',
  title: 'Leg frame and top',
  question: 'Does the leg frame fit under the top, with an edge to screw into?',
  computes:
    'What the top stands out over the leg frame: at each end, half of its width less the frame’s; and at the near and far edge, from the legs’ inset ' +
    'where the file gives it, else half of its depth less the frame’s.',
  limits: 'Preferred: 25 mm (1 in) on every side. Outer: 0. `limit legs-fit-top` sets the edge.',
  sources: [
    {
      name: EDGE.source,
      says: 'A screw holds where the top goes on for a finger’s breadth beyond it.',
      read: 'own bound',
    },
  ],
  strength: 'common practice, no source',
  restsOn: ['top'],
  unpublished: 'how far a leg frame stays inside its top is common practice; whether it does is geometry',
  takesLimit: true,
  unit: 'mm',
  example: {
    fires: `booth "Example" { }
desk Left { width 48in  depth 24in  height 29in  legs { width 50in  depth 22in } }
`,
    passes: `booth "Example" { }
desk Left { width 48in  depth 24in  height 29in  legs { width 44in  depth 20in } }
`,
  },
  find: (scene) => scene.booth.desks.flatMap((desk) => (desk.legs ? [judge(scene, desk, desk.legs)] : [])),
};

function judge(scene: Scene, desk: Desk, legs: Legs): FindingDraft {
  const subject = { kind: 'desk', name: desk.name } as const;
  const lack = lacksOf(desk, legs);
  if (lack) return cannotSay(subject, say`Cannot say whether the legs of ${desk.name} fit its top.`, lack, legs.origin);
  const { value: wanted, ...held } = heldTo(scene, 'legs-fit-top', EDGE);
  const edges = edgesOf(desk, legs);
  const least = edges.reduce((tightest, edge) => (edge.over < tightest.over ? edge : tightest));
  const verdict = exactVerdict(least.over >= wanted - TOLERANCE, least.over >= -TOLERANCE);
  const limit = verdict === 'fail' ? 0 : wanted;
  return {
    subject,
    verdict,
    measured: least.over,
    limit,
    margin: least.over - limit,
    message:
      verdict === 'pass'
        ? say`The top of ${desk.name} stands out ${scene.length(least.over)} over its legs ${least.where} where it is least: an edge to screw into.`
        : verdict === 'marginal'
          ? say`The top of ${desk.name} stands out ${scene.length(least.over)} over its legs ${least.where}: too little of an edge to screw into. ${scene.length(wanted)} is usual.`
          : say`The leg frame of ${desk.name} stands out ${scene.length(-least.over)} beyond the top ${least.where}. Take a smaller frame, or a larger top.`,
    terms: edges.map(({ over, where }) => `${scene.length(over)} ${where}`).join(', '),
    source: held.source,
    origin: legs.origin,
    related: held.related,
    assumptions: legs.inset.isDefault ? [say`the leg frame stands in the middle of the top`] : [],
  };
}

interface TopEdge {
  readonly over: Millimetres;
  readonly where: string;
}

function edgesOf({ width, depth }: Desk, legs: Legs): readonly TopEdge[] {
  const ends = { over: (width!.value - legs.width!.value) / 2, where: say`at each end` };
  const rest = depth!.value - legs.depth!.value;
  if (legs.inset.isDefault) return [ends, { over: rest / 2, where: say`at the near and far edge` }];
  return [
    ends,
    { over: legs.inset.value, where: say`at the near edge` },
    { over: rest - legs.inset.value, where: say`at the far edge` },
  ];
}

function lacksOf(desk: Desk, legs: Legs): Missing | undefined {
  const of = `desk ${desk.name}`;
  if (!desk.width) return missing('width', of, 'width 60in', desk.origin);
  if (!desk.depth) return missing('depth', of, 'depth 27in', desk.origin);
  if (!legs.width) return missing('width', say`the legs of ${of}`, 'width 56in', legs.origin);
  if (!legs.depth) return missing('depth', say`the legs of ${of}`, 'depth 24in', legs.origin);
  return undefined;
}

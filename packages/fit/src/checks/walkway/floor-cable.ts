import type { Missing, Remedy } from '../../assessment.js';
import type { Cable } from '../../booth.js';
import { buyingStep, typeLength } from '../../format.js';
import { PLANNING_AID, ROUNDING } from '../../limits/allowances.js';
import { heldTo, profileOf } from '../../limits/held-to.js';
import { profiles, type Figure } from '../../limits/profiles.js';
import { exactVerdict } from '../../scene/verdict.js';
import type { Scene } from '../../scene/scene.js';
import { missing } from '../../stations/station.js';
import type { Millimetres } from '../../units.js';
import { cannotSay } from '../cannot-say.js';
import type { Check, FindingDraft } from '../check.js';
import { say } from '../../words/say.js';

export const floorCable: Check = {
  id: 'floor-cable',
  group: 'walkway',
  title: 'Cable across a walkway',
  question: 'Is a cable on the floor low enough to step and roll over?',
  computes:
    'The height of the cable or its cover; for a ramped cover, the run of each slope against twelve times the height.',
  limits:
    'Bare: at most 6.4 mm (1/4 in). Bevelled: at most 13 mm (1/2 in). Higher: a ramp of 1:12. Half a millimetre is allowed. Where only ' +
    'operators walk, beyond these is marginal. `limit floor-cable` sets the height of a bare cable.',
  sources: [
    {
      name: profiles.us.cable.bare.source,
      says: 'Changes in level to 1/4 in may be upright, to 1/2 in bevelled 1:2, and higher ones are ramps.',
      read: 'in the source',
    },
    { name: profiles.us.cable.slope.source, says: 'A ramp rises at most 1 in 12.', read: 'in a secondary source' },
  ],
  strength: 'strong',
  takesLimit: true,
  chooses: ['cable slope'],
  caution:
    'A usual drop-over cover is steeper than a ramp for wheelchairs. Power cords may not run through doorways or under ' +
    `floor coverings: ask a licensed electrician. ${PLANNING_AID}`,
  unit: 'mm',
  example: {
    fires: `booth "Example" { limits us }
room { width 30ft  depth 40ft }
desk Left { width 60in  depth 27in  height 40in }
place Left at 10ft, 5ft
walkway Behind { between booth and back-wall  serves 20 }
cable Snake { across Behind  height 3/4in }
`,
    passes: `booth "Example" { limits us }
room { width 30ft  depth 40ft }
desk Left { width 60in  depth 27in  height 40in }
place Left at 10ft, 5ft
walkway Behind { between booth and back-wall  serves 20 }
cable Snake { across Behind  height 3/4in  cover ramp  slope 9in }
`,
  },
  find: (scene) => scene.booth.cables.map((cable) => judge(scene, cable)),
};

function judge(scene: Scene, cable: Cable): FindingDraft {
  const lack = lacks(cable);
  const subject = { kind: 'cable', name: cable.name } as const;
  if (lack) return cannotSay(subject, say`Cannot say whether people trip over ${cable.name}.`, lack, cable.origin);
  const height = cable.height!.value;
  const published = profileOf(scene).cable;
  const held = heldTo(scene, 'floor-cable', published.bare);
  const walkway = scene.booth.walkways.find(({ name }) => name === cable.across!.name);
  const step = stepOf(cable, height, held.value, published);
  const flat = step.measured - step.limit;
  const margin = step.atLeast ? flat : -flat;
  const low = margin >= -ROUNDING;
  const [way, high] = [cable.across!.name, scene.length(height)];
  const how = { bare: say`bare`, bevelled: say`with bevelled edges`, ramp: say`under a ramp` }[step.kind];
  return {
    subject,
    verdict: exactVerdict(low, low || walkway?.users.value === 'operators'),
    measured: step.measured,
    limit: step.limit,
    margin,
    message: low
      ? say`${cable.name} lies across ${way} ${how}, ${high} high: people can step and roll over it.`
      : `${say`${cable.name} lies across ${way} ${how}, ${high} high: people trip and wheels stop.`} ${advice(scene, cable, height, published)}`,
    source: step.kind === 'bare' ? held.source : published[step.kind === 'ramp' ? 'slope' : 'bevelled'].source,
    origin: cable.height!.origin ?? cable.origin,
    related: [
      ...(walkway ? [{ origin: walkway.origin, message: say`the walkway that it crosses` }] : []),
      ...(step.kind === 'bare' ? held.related : []),
    ],
    remedies: low ? [] : remediesOf(scene, cable, height, published.slope),
    assumptions: step.kind === 'bare' ? held.assumptions : noteOf(published.bevelled),
  };
}

interface Step {
  readonly kind: 'bare' | 'bevelled' | 'ramp';
  readonly measured: Millimetres;
  readonly limit: Millimetres;
  readonly atLeast: boolean;
}

/** A low cable needs no cover, and a low bevel no ramp. */
function stepOf(
  cable: Cable,
  height: Millimetres,
  bare: Millimetres,
  { bevelled, slope }: { bevelled: Figure; slope: Figure },
): Step {
  if (cable.cover.value === 'none' || height <= bare + ROUNDING)
    return { kind: 'bare', measured: height, limit: bare, atLeast: false };
  if (cable.cover.value === 'bevelled' || !cable.slope)
    return { kind: 'bevelled', measured: height, limit: bevelled.value, atLeast: false };
  return { kind: 'ramp', measured: cable.slope.value, limit: height * slope.value, atLeast: true };
}

function advice(
  scene: Scene,
  cable: Cable,
  height: Millimetres,
  { bevelled, slope }: { bevelled: Figure; slope: Figure },
): string {
  const run = scene.length(height * slope.value);
  if (cable.cover.value === 'ramp') return say`A ramp of 1:${slope.value} takes ${run} of slope on each side.`;
  const typed = typeLength(height * slope.value, scene.booth.show);
  return height <= bevelled.value + ROUNDING
    ? say`Cover it with bevelled edges, or lead it overhead.`
    : say`Lead it overhead or round, or cover it with a ramp that has ${run} of slope on each side: \`cover ramp  slope ${typed}\`.`;
}

/** A ramp of the right slope, where the file gives a slope to correct. */
function remediesOf(scene: Scene, { name, cover, slope }: Cable, height: Millimetres, { value }: Figure): Remedy[] {
  if (cover.value !== 'ramp' || !slope?.origin) return [];
  const step = buyingStep(scene.booth.show);
  const text = typeLength(Math.ceil((height * value - 1e-6) / step) * step, scene.booth.show);
  const title = say`Give the ramp over ${name} a slope of ${text} on each side: 1:${value}`;
  return [{ title, changes: [{ origin: slope.origin, text }], safe: true }];
}

function noteOf({ note }: Figure): string[] {
  return note === undefined ? [] : [note];
}

function lacks(cable: Cable): Missing | undefined {
  const of = `cable ${cable.name}`;
  if (!cable.across) return missing('across', of, 'across Behind', cable.origin);
  if (!cable.height) return missing('height', of, 'height 3/4in', cable.origin);
  if (cable.cover.value === 'ramp' && !cable.slope) return missing('slope', of, 'slope 9in', cable.origin);
  return undefined;
}

import type { Platform } from '../../booth.js';
import { typeLength } from '../../format.js';
import { PLANNING_AID } from '../../limits/allowances.js';
import { heldTo, profileOf } from '../../limits/held-to.js';
import { profiles } from '../../limits/profiles.js';
import { exactVerdict } from '../../scene/verdict.js';
import type { Scene } from '../../scene/scene.js';
import { missing } from '../../stations/station.js';
import { TOLERANCE } from '../../units.js';
import { cannotSay } from '../cannot-say.js';
import type { Check, FindingDraft } from '../check.js';
import { say } from '../../words/say.js';

export const platformEdge: Check = {
  id: 'platform-edge',
  group: 'platform',
  title: 'Guard at the platform’s edge',
  question: 'Is a high platform guarded, so that nobody falls off?',
  computes: 'The height of the platform; where it takes a guard, the guard’s height above the platform.',
  limits:
    'Higher than 762 mm (30 in): a guard of at least 1067 mm (42 in). A file that names no guard has none. ' +
    '`limit platform-edge` sets the guard’s height.',
  sources: [
    {
      name: profiles.us.platform.guard.source,
      says: 'Guards along walking surfaces more than 30 in above the floor below, at least 42 in high.',
      read: 'in the source',
    },
  ],
  strength: 'strong',
  takesLimit: true,
  chooses: ['platform guard'],
  caution: `Openings in a guard, its strength, and exceptions for stages are the official’s call. ${PLANNING_AID}`,
  unit: 'mm',
  example: {
    fires: `booth "Example" { limits us }
platform Riser { at 13ft, 4ft  width 12ft  depth 8ft  height 36in }
`,
    passes: `booth "Example" { limits us }
platform Riser { at 13ft, 4ft  width 12ft  depth 8ft  height 36in  guard 42in }
`,
  },
  find: (scene) => scene.booth.platforms.map((platform) => judge(scene, platform)),
};

function judge(scene: Scene, platform: Platform): FindingDraft {
  const { name, origin, guard } = platform;
  const subject = { kind: 'platform', name } as const;
  if (!platform.height) {
    const lack = missing('height', `platform ${name}`, 'height 8in', origin);
    return cannotSay(subject, say`Cannot say whether ${name} takes a guard.`, lack, origin);
  }
  const { guardAbove, guard: published } = profileOf(scene).platform;
  const { value: limit, ...held } = heldTo(scene, 'platform-edge', published);
  const height = platform.height.value;
  const common = { subject, source: held.source, related: held.related, assumptions: held.assumptions };
  if (height <= guardAbove.value + TOLERANCE) {
    return {
      ...common,
      verdict: 'pass',
      measured: height,
      limit: guardAbove.value,
      margin: guardAbove.value - height,
      message: say`${name} is ${scene.length(height)} high: not more than the ${scene.length(guardAbove.value)} beyond which a guard is published.`,
      origin: platform.height.origin ?? origin,
    };
  }
  const has = guard?.value ?? 0;
  const enough = has >= limit - TOLERANCE;
  const text = typeLength(limit, scene.booth.show);
  return {
    ...common,
    verdict: exactVerdict(enough, enough),
    measured: has,
    limit,
    margin: has - limit,
    message: enough
      ? say`${name} is ${scene.length(height)} high, and its guard of ${scene.length(has)} is not below ${scene.length(limit)}.`
      : guard
        ? say`${name} is ${scene.length(height)} high and its guard is only ${scene.length(has)} high: people fall off its edge. Guard it to ${scene.length(limit)} above its floor.`
        : say`${name} is ${scene.length(height)} high and the file names no guard: people fall off its edge. Guard it to ${scene.length(limit)} above its floor.`,
    origin: guard?.origin ?? origin,
    related: [
      ...(platform.height.origin ? [{ origin: platform.height.origin, message: say`${name} is this high` }] : []),
      ...held.related,
    ],
    remedies:
      enough || !guard?.origin
        ? []
        : [
            {
              title: say`Raise the guard of ${name} to ${text}`,
              changes: [{ origin: guard.origin, text }],
              safe: true,
            },
          ],
  };
}

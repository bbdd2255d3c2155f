import { withName } from '../../lookup.js';
import type { Missing } from '../../assessment.js';
import { typeLength } from '../../format.js';
import { heldTo } from '../../limits/held-to.js';
import { exactVerdict } from '../../scene/verdict.js';
import { missing } from '../../stations/station.js';
import { TOLERANCE } from '../../units.js';
import { cannotSay } from '../cannot-say.js';
import type { Check, FindingDraft } from '../check.js';
import { say } from '../../words/say.js';

const NARROW = 0.5 * 25.4;
const WIDE = 25.4;
const WIDEST = { value: 2 * 25.4, source: 'table-skirt trade sizes' };

export const skirtDrop: Check = {
  id: 'skirt-drop',
  group: 'skirt',
  title: 'Skirt and floor',
  question: 'Does the skirt hang clear of the floor, but not too far?',
  computes: 'Desk height less the skirt’s drop: the gap between hem and floor.',
  limits:
    'Preferred: 13 to 25 mm (1/2 to 1 in). Outer: 0 to 51 mm (2 in); below 0 the hem drags. `limit skirt-drop` sets the widest gap.',
  sources: [
    {
      name: WIDEST.source,
      says: 'A 29 in drop for a 30 in table: a gap of 1 in.',
      read: 'in a secondary source',
    },
    { name: 'own bounds', says: 'No published least gap was found.', read: 'own bound' },
  ],
  strength: 'weak',
  takesLimit: true,
  chooses: ['skirt drop'],
  caution:
    'A hem that drags where people walk is a trip. Cloth in a public hall may need a flame certificate: ask the local fire official.',
  unit: 'mm',
  example: {
    fires: `booth "Example" { }
desk Left { width 60in  depth 27in  height 40in }
skirt Front { on Left  drop 41in }
`,
    passes: `booth "Example" { }
desk Left { width 60in  depth 27in  height 40in }
skirt Front { on Left  drop 39 1/4in }
`,
  },
  find: (scene) =>
    scene.booth.skirts.flatMap((skirt): FindingDraft[] => {
      const subject = { kind: 'skirt', name: skirt.name } as const;
      const unknown = (lack: Missing) =>
        cannotSay(subject, say`Cannot say where the hem of ${skirt.name} hangs.`, lack, skirt.origin);
      if (skirt.on.length === 0) return [unknown(missing('on', `skirt ${skirt.name}`, 'on Left', skirt.origin))];
      if (!skirt.drop) return [unknown(missing('drop', `skirt ${skirt.name}`, 'drop 39in', skirt.origin))];
      const drop = skirt.drop;
      const held = heldTo(scene, 'skirt-drop', WIDEST);
      const widest = held.value;
      const wide = held.own ? widest : WIDE;
      return skirt.on.flatMap(({ name }): FindingDraft[] => {
        const desk = withName(scene.booth.desks, name);
        if (!desk) return [];
        if (!desk.height) return [unknown(missing('height', `desk ${name}`, 'height 40in', desk.origin))];
        const { min, max } = desk.height.value;
        const gaps = [min - drop.value, max - drop.value];
        const good = gaps.every((gap) => gap >= NARROW - TOLERANCE && gap <= wide + TOLERANCE);
        const bearable = gaps.every((gap) => gap >= -TOLERANCE && gap <= widest + TOLERANCE);
        const verdict = exactVerdict(good, bearable);
        const low = gaps[0]! < NARROW;
        const gap = low ? gaps[0]! : gaps[1]!;
        const atLeast = verdict === 'fail' ? low : low || gap < (NARROW + wide) / 2;
        const limit = verdict === 'fail' ? (low ? 0 : widest) : atLeast ? NARROW : wide;
        const text = typeLength(min - (NARROW + WIDE) / 2, scene.booth.show);
        const advice =
          min === max
            ? say`A drop of ${text} would hang right.`
            : say`No one drop suits a desk whose height is adjustable: hem it for the lowest.`;
        return [
          {
            subject,
            verdict,
            measured: gap,
            limit,
            margin: atLeast ? gap - limit : limit - gap,
            message: [
              sentence(skirt.name, name, gap, verdict === 'pass', scene.length),
              ...(verdict === 'pass' ? [] : [advice]),
            ].join(' '),
            terms: say`${scene.length(low ? min : max)} desk − ${scene.length(drop.value)} drop = ${scene.length(gap)}`,
            source: held.source,
            origin: drop.origin ?? skirt.origin,
            related: [
              ...(desk.height.origin ? [{ origin: desk.height.origin, message: say`${name} is this high` }] : []),
              ...held.related,
            ],
            remedies:
              verdict === 'pass' || min !== max || !drop.origin
                ? []
                : [
                    {
                      title: say`Set the drop to ${text}: clear of the floor on ${name}`,
                      changes: [{ origin: drop.origin, text }],
                      safe: skirt.on.length === 1,
                    },
                  ],
          },
        ];
      });
    }),
};

function sentence(
  skirt: string,
  desk: string,
  gap: number,
  passes: boolean,
  length: (value: number) => string,
): string {
  if (gap < -TOLERANCE)
    return say`${skirt} is ${length(-gap)} too long on ${desk}: it drags on the floor and people trip on it.`;
  if (passes) return say`${skirt} hangs ${length(gap)} above the floor on ${desk}.`;
  return gap < NARROW
    ? say`${skirt} hangs ${length(gap)} above the floor on ${desk}, so close that it catches feet and casters.`
    : say`${skirt} hangs ${length(gap)} above the floor on ${desk}, so high that it shows what is behind it.`;
}

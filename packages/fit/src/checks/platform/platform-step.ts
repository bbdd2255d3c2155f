import type { Missing, Verdict } from '../../assessment.js';
import type { Platform } from '../../booth.js';
import { PLANNING_AID } from '../../limits/allowances.js';
import { heldTo, profileOf } from '../../limits/held-to.js';
import { profiles, type Figure } from '../../limits/profiles.js';
import { exactVerdict } from '../../scene/verdict.js';
import type { Scene } from '../../scene/scene.js';
import { missing } from '../../stations/station.js';
import { TOLERANCE, type Millimetres } from '../../units.js';
import { cannotSay } from '../cannot-say.js';
import type { Check, FindingDraft } from '../check.js';
import { say } from '../../words/say.js';

export const platformStep: Check = {
  id: 'platform-step',
  group: 'platform',
  title: 'Steps and ramp',
  question: 'Are the steps and the ramp up to the platform fit to walk on?',
  computes:
    'The platform’s height divided by its risers, and the tread; for a ramp its run against twelve times the height, and its width.',
  limits:
    'Risers 102 to 178 mm (4 to 7 in), treads at least 279 mm (11 in); one or two risers: treads at least 330 mm (13 in) and a handrail. A ramp ' +
    'of 1:12, 914 mm (36 in) wide. `limit platform-step` sets the highest riser.',
  sources: [
    {
      name: profiles.us.platform.mostRiser.source,
      says: 'Risers 4 to 7 in, treads at least 11 in.',
      read: 'in the source',
    },
    {
      name: profiles.us.platform.treadOfFew.source,
      says: 'One or two risers, where the way need not be accessible: treads of 13 in and one handrail.',
      read: 'in the source',
    },
    { name: profiles.us.platform.slope.source, says: 'A ramp rises at most 1 in 12.', read: 'in a secondary source' },
    { name: profiles.us.platform.rampWidth.source, says: 'A ramp is 36 in wide.', read: 'in the source' },
    { name: 'IBC 1011.11', says: 'Stairs have handrails on each side.', read: 'from memory' },
  ],
  strength: 'strong',
  takesLimit: true,
  caution: `Landings, handrails of ramps and even risers are not checked here. ${PLANNING_AID}`,
  unit: 'mm',
  example: {
    fires: `booth "Example" { limits us }
platform Riser { at 13ft, 4ft  width 12ft  depth 8ft  height 16in  steps { risers 2  tread 11in } }
`,
    passes: `booth "Example" { limits us }
platform Riser { at 13ft, 4ft  width 12ft  depth 8ft  height 14in  steps { risers 2  tread 13in  handrail } }
`,
  },
  find: (scene) => scene.booth.platforms.flatMap((platform) => judge(scene, platform)),
};

/** One of the quantities, and how far inside its bound it is. */
interface Part {
  readonly measured: Millimetres;
  readonly limit: Millimetres;
  readonly margin: Millimetres;
  readonly source: string;
  readonly says: string;
}

function judge(scene: Scene, platform: Platform): FindingDraft[] {
  const { name, origin, steps, ramp } = platform;
  const unknown = (lack: Missing) =>
    cannotSay({ kind: 'platform', name }, say`Cannot say whether people can walk up to ${name}.`, lack, lack.origin);
  const of = `platform ${name}`;
  if (!platform.height) return [unknown(missing('height', of, 'height 8in', origin))];
  if (!steps && !ramp) return [unknown(missing('steps', of, 'steps { risers 2  tread 13in  handrail }', origin))];
  const height = platform.height.value;
  return [
    ...(steps ? [ofSteps(scene, name, height, steps, unknown)] : []),
    ...(ramp ? [ofRamp(scene, name, height, ramp, unknown)] : []),
  ];
}

function ofSteps(
  scene: Scene,
  name: string,
  height: Millimetres,
  { risers, tread, handrail, origin }: NonNullable<Platform['steps']>,
  unknown: (lack: Missing) => FindingDraft,
): FindingDraft {
  const of = say`the steps of platform ${name}`;
  if (!risers) return unknown(missing('risers', of, 'risers 2', origin));
  const few = risers.value <= 2;
  if (!tread && risers.value > 1) return unknown(missing('tread', of, 'tread 13in', origin));
  const published = profileOf(scene).platform;
  const riser = height / risers.value;
  const most = heldTo(scene, 'platform-step', published.mostRiser);
  const parts = [
    atMost(riser, { ...published.mostRiser, ...most }, say`each step of ${name} is ${scene.length(riser)} high`),
    atLeast(
      riser,
      published.leastRiser,
      say`each step of ${name} is ${scene.length(riser)} high: so low that people do not see it`,
    ),
    ...(tread && risers.value > 1
      ? [
          atLeast(
            tread.value,
            few ? published.treadOfFew : published.tread,
            say`the treads of ${name} are ${scene.length(tread.value)} deep`,
          ),
        ]
      : []),
  ];
  const tightest = tightestOf(parts);
  const right = tightest.margin >= -TOLERANCE;
  const railSource = few ? published.treadOfFew.source : 'IBC 1011.11, from memory';
  const railing = handrail ? 'pass' : few ? 'fail' : 'marginal';
  const verdict = worse(exactVerdict(right, right), railing);
  const faults = [
    ...parts.filter(({ margin }) => margin < -TOLERANCE).map((part) => faultOf(scene, part)),
    ...(handrail
      ? []
      : [few ? say`one or two steps take a handrail, and the file names none` : say`the file names no handrail`]),
  ];
  return {
    subject: { kind: 'platform', name },
    verdict,
    ...(right === (verdict === 'pass') && {
      measured: tightest.measured,
      limit: tightest.limit,
      margin: tightest.margin,
    }),
    message:
      verdict === 'pass'
        ? stepsOf(scene, name, risers.value, riser, tread?.value)
        : `${say`${sentence(faults.join('; '))}. People stumble there.`} ${advice(scene, height, handrail, right, published)}`,
    terms: `${scene.length(height)} / ${risers.value} = ${scene.length(riser)}`,
    source: most.own ? most.source : right && !handrail ? railSource : tightest.source,
    origin: risers.origin ?? origin,
    related: most.related,
    assumptions: most.assumptions,
  };
}

function faultOf(scene: Scene, { says, measured, limit }: Part): string {
  return measured > limit
    ? say`${says}, where ${scene.length(limit)} is the most`
    : say`${says}, where ${scene.length(limit)} is the least`;
}

function stepsOf(
  scene: Scene,
  name: string,
  risers: number,
  riser: Millimetres,
  tread: Millimetres | undefined,
): string {
  const high = scene.length(riser);
  if (tread === undefined)
    return risers === 1
      ? say`The step up to ${name}: risers of ${high}, with a handrail.`
      : say`The ${risers} steps up to ${name}: risers of ${high}, with a handrail.`;
  const deep = scene.length(tread);
  return risers === 1
    ? say`The step up to ${name}: risers of ${high}, treads of ${deep}, with a handrail.`
    : say`The ${risers} steps up to ${name}: risers of ${high}, treads of ${deep}, with a handrail.`;
}

function advice(
  scene: Scene,
  height: Millimetres,
  handrail: boolean,
  right: boolean,
  { mostRiser, tread, treadOfFew }: { mostRiser: Figure; tread: Figure; treadOfFew: Figure },
): string {
  const risers = Math.max(1, Math.ceil((height - TOLERANCE) / mostRiser.value));
  if (right) return say`Add a handrail.`;
  const [high, deep] = [scene.length(height / risers), scene.length((risers <= 2 ? treadOfFew : tread).value)];
  if (risers === 1)
    return handrail
      ? say`One step of ${high} with treads of ${deep} would do.`
      : say`One step of ${high} with treads of ${deep} and a handrail would do.`;
  return handrail
    ? say`${risers} steps of ${high} with treads of ${deep} would do.`
    : say`${risers} steps of ${high} with treads of ${deep} and a handrail would do.`;
}

function ofRamp(
  scene: Scene,
  name: string,
  height: Millimetres,
  { length, width, origin }: NonNullable<Platform['ramp']>,
  unknown: (lack: Missing) => FindingDraft,
): FindingDraft {
  const of = say`the ramp of platform ${name}`;
  if (!length) return unknown(missing('length', of, 'length 8ft', origin));
  if (!width) return unknown(missing('width', of, 'width 36in', origin));
  const { slope, rampWidth } = profileOf(scene).platform;
  const run = { ...slope, value: slope.value * height };
  const tightest = tightestOf([
    atLeast(length.value, run, say`the ramp up to ${name} is ${scene.length(length.value)} long`),
    atLeast(width.value, rampWidth, say`the ramp up to ${name} is ${scene.length(width.value)} wide`),
  ]);
  const right = tightest.margin >= -TOLERANCE;
  return {
    subject: { kind: 'platform', name },
    verdict: exactVerdict(right, right),
    measured: tightest.measured,
    limit: tightest.limit,
    margin: tightest.margin,
    message: right
      ? say`The ramp up to ${name} runs ${scene.length(length.value)} for ${scene.length(height)}: not steeper than 1:${slope.value}, and ${scene.length(width.value)} wide.`
      : say`${sentence(faultOf(scene, tightest))}. A wheelchair may not get up there.`,
    terms: `${scene.length(height)} × ${slope.value} = ${scene.length(run.value)}`,
    source: tightest.source,
    origin: length.origin ?? origin,
    assumptions: slope.note === undefined ? [] : [slope.note],
  };
}

function atMost(measured: Millimetres, { value, source }: Figure, says: string): Part {
  return { measured, limit: value, margin: value - measured, source, says };
}

function atLeast(measured: Millimetres, { value, source }: Figure, says: string): Part {
  return { measured, limit: value, margin: measured - value, source, says };
}

function tightestOf(parts: readonly Part[]): Part {
  return parts.reduce((least, part) => (part.margin < least.margin ? part : least));
}

function worse(a: Verdict, b: Verdict): Verdict {
  const order: readonly Verdict[] = ['fail', 'marginal', 'pass'];
  return order.indexOf(a) < order.indexOf(b) ? a : b;
}

function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

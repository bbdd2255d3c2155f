import { withName } from '../../lookup.js';
import type { Missing } from '../../assessment.js';
import type { Desk, Origin, ScreenUse } from '../../booth.js';
import { exactVerdict } from '../../scene/verdict.js';
import type { Scene } from '../../scene/scene.js';
import { missing } from '../../stations/station.js';
import { POUND, type Kilograms } from '../../units.js';
import { cannotSay } from '../cannot-say.js';
import type { Check, FindingDraft } from '../check.js';
import { say } from '../../words/say.js';

/** What the 75 and 100 mm mounting pattern is made for. */
const MOUNT: Kilograms = 14;
/** Scales and data sheets are not finer. */
const ALLOWED: Kilograms = 0.05;

export const load: Check = {
  id: 'load',
  group: 'furniture',
  title: 'Weights and ratings',
  question: 'Does what an arm or a desk carries stay within its rating?',
  computes:
    'For each screen on an arm, its weight against the arm’s rating and against what the usual mount is made for. For each desk with a rating, all ' +
    'screens and controls on it, added up.',
  limits:
    'At most the stated rating. On an arm more than 14 kg (30.8 lb) is marginal: it takes a larger mount than 75 or 100 mm.',
  sources: [
    {
      name: 'VESA FDMI part D',
      says: 'The 75 and 100 mm patterns are for up to 14 kg.',
      read: 'in a secondary source',
    },
    { name: 'the maker’s rating', says: 'What the file states for an arm or a desk.', read: 'own bound' },
  ],
  strength: 'medium',
  caution:
    'The weights are the file’s. Arms, clamps, cases and people who lean on a desk weigh too: keep a reserve, and read the maker’s manual.',
  unit: 'kg',
  example: {
    fires: `desk Left { width 60in  depth 27in  height 40in }
operator Noor { stature 5'3" }
monitor Cues { diagonal 27in  weight 20lb }
workstation Sound { desk Left  operators Noor  monitor Cues { setback 20in  bottom 4in above desk  arm 15lb } }
`,
    passes: `desk Left { width 60in  depth 27in  height 40in }
operator Noor { stature 5'3" }
monitor Cues { diagonal 22in  weight 9lb }
workstation Sound { desk Left  operators Noor  monitor Cues { setback 20in  bottom 4in above desk  arm 15lb } }
`,
  },
  find: (scene) => [
    ...scene.stations.flatMap(({ workstation }) => workstation.screens.flatMap((use) => onArm(scene, use))),
    ...scene.booth.desks.flatMap((desk) => onDesk(scene, desk)),
  ],
};

function onArm(scene: Scene, use: ScreenUse): FindingDraft[] {
  const monitor = withName(scene.booth.monitors, use.monitor.name);
  if (!use.rating || !monitor) return [];
  const subject = { kind: 'monitor', name: monitor.name } as const;
  if (!monitor.weight) {
    const lack = missing('weight', `monitor ${monitor.name}`, 'weight 12lb', monitor.origin);
    return [cannotSay(subject, say`Cannot say whether its arm carries ${monitor.name}.`, lack, use.monitor.origin)];
  }
  const weight = monitor.weight.value;
  const rating = use.rating.value;
  const carried = weight <= rating + ALLOWED;
  const mounted = weight <= MOUNT + ALLOWED;
  const limit = carried && !mounted ? MOUNT : rating;
  const [weighs, bears] = [text(scene, weight), text(scene, rating)];
  return [
    {
      subject,
      verdict: exactVerdict(carried && mounted, carried),
      measured: weight,
      limit,
      margin: limit - weight,
      message: !carried
        ? say`${monitor.name} weighs ${weighs} on an arm for ${bears}: ${text(scene, weight - rating)} too much. It sinks or falls. Take a stronger arm.`
        : mounted
          ? say`${monitor.name} weighs ${weighs} on an arm for ${bears}: within its rating.`
          : say`${monitor.name} weighs ${weighs} on an arm for ${bears}, and a 75 or 100 mm mount is made for ${text(scene, MOUNT)}. See that both have a larger pattern.`,
      source: carried && !mounted ? 'VESA FDMI part D' : say`the maker’s rating, as the file states it`,
      origin: use.rating.origin ?? use.monitor.origin,
      related: [{ origin: monitor.weight.origin ?? monitor.origin, message: say`what ${monitor.name} weighs` }],
    },
  ];
}

interface Weighed {
  readonly name: string;
  readonly weight?: Kilograms;
  readonly lack: Missing;
  readonly origin: Origin;
}

function onDesk(scene: Scene, desk: Desk): FindingDraft[] {
  if (!desk.rating) return [];
  const things = thingsOn(scene, desk);
  const known = things.reduce((sum, { weight }) => sum + (weight ?? 0), 0);
  const rating = desk.rating.value;
  const unknown = things.find(({ weight }) => weight === undefined);
  const subject = { kind: 'desk', name: desk.name } as const;
  const carried = known <= rating + ALLOWED;
  if (carried && unknown)
    return [
      cannotSay(subject, say`Cannot say whether ${desk.name} carries what stands on it.`, unknown.lack, desk.origin),
    ];
  const [stands, bears] = [text(scene, known), text(scene, rating)];
  return [
    {
      subject,
      verdict: exactVerdict(carried, carried),
      measured: known,
      limit: rating,
      margin: rating - known,
      message: carried
        ? say`On ${desk.name} stand ${stands}, and its rating is ${bears}.`
        : say`On ${desk.name} stand ${stands}, and its rating is ${bears}: ${text(scene, known - rating)} too much. Move something elsewhere, or take a stronger desk.`,
      terms: `${things.flatMap(({ name, weight }) => (weight === undefined ? [] : [`${text(scene, weight)} ${name}`])).join(' + ')} = ${text(scene, known)}`,
      source: say`the maker’s rating, as the file states it`,
      origin: desk.rating.origin ?? desk.origin,
    },
  ];
}

/** Screens and controls of every workstation at the desk; a screen that two of them watch counts once. */
function thingsOn({ booth }: Scene, desk: Desk): readonly Weighed[] {
  const stations = booth.workstations.filter((station) => station.desk?.name === desk.name);
  const watched = new Set(stations.flatMap(({ screens }) => screens.map(({ monitor }) => monitor.name)));
  const screens = booth.monitors
    .filter(({ name }) => watched.has(name))
    .map((monitor) => weighed('monitor', monitor.name, monitor.weight?.value, monitor.origin, '12lb'));
  const controls = stations.flatMap((station) =>
    station.controls.map((control) => weighed('control', control.name, control.weight?.value, control.origin, '30lb')),
  );
  return [...screens, ...controls];
}

function weighed(kind: string, name: string, weight: Kilograms | undefined, origin: Origin, example: string): Weighed {
  const lack = missing('weight', `${kind} ${name}`, `weight ${example}`, origin);
  return { name, lack, origin, ...(weight !== undefined && { weight }) };
}

function text(scene: Scene, weight: Kilograms): string {
  const pounds = scene.booth.show === 'in' || scene.booth.show === 'ft';
  return pounds ? `${Number((weight / POUND).toFixed(1))} lb` : `${Number(weight.toFixed(1))} kg`;
}

import { withName } from '../../lookup.js';
import type { Missing } from '../../assessment.js';
import type { Desk, Rack } from '../../booth.js';
import { behindEdge, type Behind } from '../../layout/behind.js';
import { seatingLine } from '../../layout/clear-width.js';
import { pointIn, type Frame } from '../../layout/polygon.js';
import { heldTo } from '../../limits/held-to.js';
import type { Scene } from '../../scene/scene.js';
import { RACK_UNIT } from '../../scene/sight.js';
import { exactVerdict } from '../../scene/verdict.js';
import { missing, thicknessBetween } from '../../stations/station.js';
import { INCH, TOLERANCE, type Millimetres } from '../../units.js';
import { cannotSay } from '../cannot-say.js';
import type { Check, FindingDraft } from '../check.js';
import { say } from '../../words/say.js';

const SERVICE = 'service clearances in three makers’ manuals';
const FRONT = { value: 36 * INCH, source: SERVICE };
const LEAST_FRONT = 30 * INCH;
const REAR = 24 * INCH;

export const rackFits: Check = {
  id: 'rack-fits',
  group: 'furniture',
  title: 'Rack',
  question: 'Does the rack fit under its desk, and can somebody get at it?',
  computes:
    'Under a desk: its units × 44.45 mm and its frame against the height below the top and what hangs there; its setback, depth and plugs against ' +
    'the desk’s depth; its place and width against the desk’s width. And the free floor before and behind it, from the plan.',
  limits:
    'Fits. Before it, preferred: 914 mm (36 in). Outer: 762 mm (30 in). Behind it, preferred: 610 mm (24 in); less is marginal, since a rack may be ' +
    'pulled out. `limit rack-fits` sets the floor before it.',
  sources: [
    { name: 'EIA-310', says: 'A rack unit is 1.75 in, 44.45 mm.', read: 'in a secondary source' },
    {
      name: SERVICE,
      says: '36 in before and 36 behind; 36 before and 24 behind; 30 in each.',
      read: 'in the source',
    },
  ],
  strength: 'medium',
  takesLimit: true,
  caution:
    'The maker’s manual rules, for depth and air too. The hall’s own panelboard needs free floor before it: a licensed electrician can say how much.',
  unit: 'mm',
  example: {
    fires: `booth "Example" { }
desk Left { width 60in  depth 27in  height 29in  top 1in }
rack Power { units 16  width 22in  depth 20in  frame 4in  under Left  at 2in }
`,
    passes: `booth "Example" { }
room { width 30ft  depth 40ft }
desk Left { width 60in  depth 27in  height 29in  top 1in }
rack Power { units 12  width 22in  depth 20in  frame 4in  under Left  at 2in }
place Left at 10ft, 6ft
`,
  },
  find: (scene) => scene.booth.racks.flatMap((rack) => [...fit(scene, rack), ...service(scene, rack)]),
};

/** Need against room in one direction. */
interface Fit {
  readonly need: Millimetres;
  readonly room: Millimetres;
  readonly says: string;
  readonly terms: string;
  /** The room with an adjustable desk at its highest. */
  readonly most: Millimetres;
}

function fit(scene: Scene, rack: Rack): FindingDraft[] {
  const { under } = rack;
  if (!under) return [];
  const subject = { kind: 'rack', name: rack.name } as const;
  const desk = withName(scene.booth.desks, under.desk.name);
  const lack = lacksOf(rack, desk);
  if (lack)
    return [cannotSay(subject, say`Cannot say whether ${rack.name} fits under ${under.desk.name}.`, lack, rack.origin)];
  const fits = [heightOf(scene, rack, desk!), depthOf(scene, rack, desk!), widthOf(scene, rack, desk!)];
  const tightest = fits.reduce((least, one) => (one.room - one.need < least.room - least.need ? one : least));
  const inside = ({ need, room }: Fit) => room - need >= -TOLERANCE;
  const verdict = exactVerdict(
    fits.every(inside),
    fits.every((one) => inside({ ...one, room: one.most })),
  );
  const over = tightest.need - tightest.room;
  return [
    {
      subject,
      verdict,
      measured: tightest.need,
      limit: tightest.room,
      margin: tightest.room - tightest.need,
      message:
        verdict === 'pass'
          ? say`${rack.name} fits under ${desk!.name}, with ${scene.length(-over)} to spare where it is tightest.`
          : verdict === 'marginal'
            ? say`${tightest.says}: ${scene.length(over)} too much. It fits only with ${desk!.name} raised.`
            : say`${tightest.says}: ${scene.length(over)} too much. Choose a smaller rack, or another place for it.`,
      terms: fits.map(({ terms }) => terms).join('; '),
      source: say`EIA-310 for the unit; geometry`,
      origin: under.desk.origin,
      related: [{ origin: desk!.origin, message: say`the desk ${desk!.name}` }],
      assumptions: [
        ...(rack.frame.isDefault ? [say`${rack.name} has no frame, feet or castors beyond its units`] : []),
        ...(rack.plugs.isDefault ? [say`${rack.name} needs no room for plugs behind it`] : []),
      ],
    },
  ];
}

function heightOf(scene: Scene, { name, units, frame, depth, under }: Rack, desk: Desk): Fit {
  const need = units!.value * RACK_UNIT + frame.value;
  const hanging = thicknessBetween(desk, under!.setback.value, under!.setback.value + depth!.value);
  const { min, max } = desk.height!.value;
  const terms = say`${units!.value} units × 44.45 mm + ${scene.length(frame.value)} frame = ${scene.length(need)} high, under ${scene.length(min - hanging)}`;
  return {
    need,
    room: min - hanging,
    most: max - hanging,
    says: say`${name} is ${scene.length(need)} high and ${desk.name} leaves ${scene.length(min - hanging)} below it`,
    terms,
  };
}

function depthOf(scene: Scene, { name, depth, plugs, under }: Rack, desk: Desk): Fit {
  const need = under!.setback.value + depth!.value + plugs.value;
  const room = desk.depth!.value;
  const terms = say`${scene.length(under!.setback.value)} setback + ${scene.length(depth!.value)} + ${scene.length(plugs.value)} plugs = ${scene.length(need)} deep, under ${scene.length(room)}`;
  return {
    need,
    room,
    most: room,
    says: say`${name} reaches ${scene.length(need)} from the near edge of ${desk.name}, plugs included, and the desk is ${scene.length(room)} deep`,
    terms,
  };
}

function widthOf(scene: Scene, { name, width, under }: Rack, desk: Desk): Fit {
  const need = under!.at.value + width!.value;
  const room = desk.width!.value;
  const terms = say`${scene.length(under!.at.value)} from the left + ${scene.length(width!.value)} = ${scene.length(need)} wide, under ${scene.length(room)}`;
  return {
    need,
    room,
    most: room,
    says: say`${name} reaches ${scene.length(need)} from the left end of ${desk.name}, and the desk is ${scene.length(room)} wide`,
    terms,
  };
}

function lacksOf(rack: Rack, desk: Desk | undefined): Missing | undefined {
  const of = `rack ${rack.name}`;
  if (!rack.units) return missing('units', of, 'units 12', rack.origin);
  if (!rack.width) return missing('width', of, 'width 22in', rack.origin);
  if (!rack.depth) return missing('depth', of, 'depth 20in', rack.origin);
  if (!desk) return missing('under', of, 'under Left', rack.origin);
  if (!desk.height) return missing('height', `desk ${desk.name}`, 'height 40in', desk.origin);
  if (!desk.width) return missing('width', `desk ${desk.name}`, 'width 60in', desk.origin);
  if (!desk.depth) return missing('depth', `desk ${desk.name}`, 'depth 27in', desk.origin);
  return undefined;
}

/** A rack whose place nobody says is not asked about. */
function service(scene: Scene, rack: Rack): FindingDraft[] {
  const frame = scene.layout.frames.get(rack.name);
  if (!frame || !rack.width || !rack.depth) return [];
  const skip = new Set([rack.name, ...(rack.under ? [rack.under.desk.name, ...sharersOf(scene, rack)] : [])]);
  const front = behindEdge(scene.layout, frame, rack.width.value, skip);
  const turned = turnedAbout(frame, rack.width.value, rack.depth.value);
  const rear = nearer(
    behindEdge(scene.layout, turned, rack.width.value, skip),
    rowsBehind(scene, turned, rack.width.value),
  );
  const { value: wanted, ...held } = heldTo(scene, 'rack-fits', FRONT);
  const outer = Math.min(LEAST_FRONT, wanted);
  const sides = [
    ...(front ? [{ ...front, isBehind: false, wanted, outer }] : []),
    ...(rear ? [{ ...rear, isBehind: true, wanted: REAR, outer: -Infinity }] : []),
  ];
  if (sides.length === 0) return [];
  const tightest = sides.reduce((least, one) =>
    one.distance - one.wanted < least.distance - least.wanted ? one : least,
  );
  const verdict = exactVerdict(
    sides.every(({ distance, wanted }) => distance >= wanted - TOLERANCE),
    sides.every(({ distance, outer }) => distance >= outer - TOLERANCE),
  );
  const failing = sides.find(({ distance, outer }) => distance < outer - TOLERANCE);
  const decides = failing ?? tightest;
  const limit = failing ? failing.outer : decides.wanted;
  return [
    {
      subject: { kind: 'rack', name: rack.name },
      verdict,
      measured: decides.distance,
      limit,
      margin: decides.distance - limit,
      message:
        verdict === 'pass'
          ? say`There is room to get at ${rack.name}: ${sides.map(({ distance, isBehind }) => (isBehind ? say`${scene.length(distance)} behind it` : say`${scene.length(distance)} before it`)).join(', ')}.`
          : decides.isBehind
            ? say`${scene.length(decides.distance)} is free behind ${rack.name}, to ${decides.what}; working on it takes ${scene.length(decides.wanted)}. Move it, or keep it on castors to pull it out.`
            : say`${scene.length(decides.distance)} is free before ${rack.name}, to ${decides.what}; working on it takes ${scene.length(decides.wanted)}. Move it, or keep it on castors to pull it out.`,
      terms: sides
        .map(({ distance, isBehind, what }) =>
          isBehind
            ? say`${scene.length(distance)} behind it, to ${what}`
            : say`${scene.length(distance)} before it, to ${what}`,
        )
        .join('; '),
      source: held.source,
      origin: rack.origin,
      related: [
        ...(decides.piece ? [{ origin: decides.piece.origin, message: say`${decides.what} stands there` }] : []),
        ...held.related,
      ],
      assumptions: [say`seats near the rack can be moved`, ...held.assumptions],
    },
  ];
}

function sharersOf(scene: Scene, rack: Rack): string[] {
  return scene.booth.racks.filter(({ under }) => under?.desk.name === rack.under?.desk.name).map(({ name }) => name);
}

/** The same rectangle, seen from its far side. */
function turnedAbout(frame: Frame, width: Millimetres, depth: Millimetres): Frame {
  const back = ({ x, y }: { x: number; y: number }) => ({ x: -x, y: -y });
  return { origin: pointIn(frame, width, depth), right: back(frame.right), forward: back(frame.forward) };
}

/** The nearest row of seats, where the edge looks toward the stage. */
function rowsBehind(scene: Scene, frame: Frame, width: Millimetres): Behind | undefined {
  const line = seatingLine(scene);
  const toward = -frame.forward.y;
  if (line === undefined || toward < 1e-9) return undefined;
  const farthest = Math.max(frame.origin.y, pointIn(frame, width, 0).y);
  return { distance: (line - farthest) / toward, what: say`the nearest row of seats` };
}

function nearer(a: Behind | undefined, b: Behind | undefined): Behind | undefined {
  if (!a || !b) return a ?? b;
  return a.distance <= b.distance ? a : b;
}

import type { Missing } from '../../assessment.js';
import type { Desk } from '../../booth.js';
import { behindDesk, behindIt } from '../../layout/behind.js';
import { rowsOf, type Row } from '../../layout/rows.js';
import { heldTo } from '../../limits/held-to.js';
import { exactVerdict } from '../../scene/verdict.js';
import type { Scene } from '../../scene/scene.js';
import { missing, sits, stationsAt } from '../../stations/station.js';
import { TOLERANCE, type Millimetres } from '../../units.js';
import { cannotSay } from '../cannot-say.js';
import type { Check, FindingDraft } from '../check.js';
import { sizeUp } from '../sizes.js';
import { say } from '../../words/say.js';

const PASSES = { value: 48 * 25.4, source: 'Panero & Zelnik 1979, 3.4' };
const PAST_A_SEAT_PUSHED_BACK = 60 * 25.4;
/** A chair at rest and a person who goes sideways: 18 + 20 in. */
const SIDEWAYS = (18 + 20) * 25.4;
/** In a row of so many somebody sits between others. */
const SOMEBODY_BETWEEN = 3;

export const passBehind: Check = {
  id: 'pass-behind',
  group: 'space',
  title: 'Passing behind a seated operator',
  question: 'Can a colleague pass behind somebody who sits?',
  computes:
    'Distance from the desk’s near edge to the first wall or piece behind it. Asked where people sit and somebody may have to ' +
    'pass: several stations in a row, or several people who take turns at one. Advice, never a failure, where everybody can ' +
    'come in from an end of the row; with three or more stations in a row somebody must pass, and it can fail.',
  limits:
    'Preferred: at least 1219 mm (48 in); past a seat that is pushed back, 1524 mm (60 in). Outer, with three or more in a row: ' +
    'at least 965 mm (38 in), which lets a person by sideways.',
  sources: [
    {
      name: PASSES.source,
      says: 'Table to wall at least 48 in for one person to pass behind a seated one: 18 to 24 in for the seat, 30 to 36 in to walk.',
      read: 'in the source',
    },
    {
      name: 'Panero & Zelnik 1979, 3.2',
      says: 'A seat pushed back takes 30 in, the way behind it 30 in.',
      read: 'derived',
    },
    {
      name: 'Bell System cable-frame table',
      says: 'A person who passes sideways takes 20 in.',
      read: 'in a secondary source',
    },
  ],
  strength: 'strong',
  takesLimit: true,
  unit: 'mm',
  example: {
    fires: `room { width 30ft  depth 40ft }
desk Left { width 60in  depth 27in  height 29in }
desk Right { width 60in  depth 27in  height 29in }
chair Low { seat 17in }
operator Noor { stature 5'3" }
operator Tobias { stature 6'1" }
workstation Sound { desk Left  chair Low  operators Noor }
workstation Light { desk Right  chair Low  operators Tobias }
place Left, Right in a row at 10ft, 38in
`,
    passes: `room { width 30ft  depth 40ft }
desk Left { width 60in  depth 27in  height 29in }
desk Right { width 60in  depth 27in  height 29in }
chair Low { seat 17in }
operator Noor { stature 5'3" }
operator Tobias { stature 6'1" }
workstation Sound { desk Left  chair Low  operators Noor }
workstation Light { desk Right  chair Low  operators Tobias }
place Left, Right in a row at 10ft, 62in
`,
  },
  find: (scene) => [
    ...scene.booth.desks.flatMap((desk) => unsized(scene, desk)),
    ...rowsOf(scene).flatMap((row) => ofRow(scene, row)),
  ],
};

/** One finding for each desk of the row at which somebody sits. */
function ofRow(scene: Scene, row: Row): FindingDraft[] {
  const desks = [...new Set(row.filter(({ station }) => sits(station)).map(({ desk }) => desk))];
  return desks.filter((desk) => row.length > 1 || takesTurns(scene, desk)).map((desk) => judge(scene, desk, row));
}

function judge(scene: Scene, desk: Desk, row: Row): FindingDraft {
  const behind = behindDesk(scene.layout, desk);
  if (!behind) return unknown(desk, lackOf(desk));
  const { distance, what } = behind;
  const held = heldTo(scene, 'pass-behind', PASSES);
  const least = row.length >= SOMEBODY_BETWEEN ? Math.min(SIDEWAYS, held.value) : 0;
  const verdict = exactVerdict(distance >= held.value - TOLERANCE, distance >= least - TOLERANCE);
  const limit = verdict === 'fail' ? least : held.value;
  const [there, takes] = [scene.length(distance), scene.length(held.value)];
  const wanted = scene.length(sizeUp(held.value - distance, scene.booth.show));
  return {
    subject: { kind: 'desk', name: desk.name },
    verdict,
    measured: distance,
    limit,
    margin: distance - limit,
    message:
      verdict === 'pass'
        ? passing(scene, desk.name, distance, what)
        : verdict === 'fail'
          ? say`Behind ${desk.name} there is ${there} to ${what}; nobody gets by, even sideways: to pass behind somebody who sits takes ${takes}. Move the desk ${wanted} away from ${what}.`
          : say`Behind ${desk.name} there is ${there} to ${what}; to pass behind somebody who sits takes ${takes}. Move the desk ${wanted} away from ${what}.`,
    source: held.source,
    origin: desk.origin,
    related: [...behindIt(scene, behind), ...held.related],
  };
}

function passing(scene: Scene, desk: string, distance: Millimetres, what: string): string {
  const far = PAST_A_SEAT_PUSHED_BACK;
  const there = scene.length(distance);
  return distance >= far - TOLERANCE
    ? say`Behind ${desk} there is ${there} to ${what}: a colleague passes behind somebody who sits, even past a seat pushed back.`
    : say`Behind ${desk} there is ${there} to ${what}: a colleague passes behind somebody who sits; past a seat pushed back takes ${scene.length(far)}.`;
}

/** Several people use a station at the desk by turns. */
function takesTurns(scene: Scene, desk: Desk): boolean {
  return stationsAt(scene.stations, desk.name).some(
    (station) => station.desk === desk && sits(station) && (station.people.length > 1 || station.people.some(isCrowd)),
  );
}

function isCrowd({ kind }: { readonly kind: string }): boolean {
  return kind === 'crowd';
}

/** A desk without a width stands in no row; it is asked for where people take turns at it. */
function unsized(scene: Scene, desk: Desk): FindingDraft[] {
  return !desk.width && takesTurns(scene, desk) ? [unknown(desk, lackOf(desk))] : [];
}

function unknown(desk: Desk, lack: Missing): FindingDraft {
  return cannotSay(
    { kind: 'desk', name: desk.name },
    say`Cannot say whether people can pass behind ${desk.name}.`,
    lack,
    desk.origin,
  );
}

function lackOf({ name, width, depth, origin }: Desk): Missing {
  if (!width) return missing('width', `desk ${name}`, 'width 60in', origin);
  if (!depth) return missing('depth', `desk ${name}`, 'depth 27in', origin);
  return missing('place', say`the file, for desk ${name}`, `place ${name} at 14ft, 6ft`, origin);
}

import type { HeightBands, PersonBand } from '../assessment.js';
import { meetAll } from './bands.js';
import type { Scene } from '../scene/scene.js';
import { heightsFor } from '../scene/screen-angles.js';
import { eyeOver, eyesAt, eyesOver, viewsAt, type Eyes, type View } from '../scene/viewing.js';
import type { Station } from '../stations/station.js';
import { TOLERANCE, type Millimetres, type Range } from '../units.js';

/**
 * For which heights each screen of a station suits the eyes of each person there, everything else left as it is: the preferred
 * bounds of ‘screen-height’. A height is of the line that the file gives, over what the file gives it over.
 */
export function screenBands(scene: Scene, station: Station): readonly HeightBands[] {
  const everyone = eyesAt(scene, station);
  if (everyone.length === 0) return [];
  return viewsAt(station).views.map((view) => {
    const each = everyone.map((eyes) => bandOf(view, eyes));
    const named = each.filter((_, index) => everyone[index]!.person.kind === 'operator');
    const all = named.length > 0 ? meetAll(named.map(({ band }) => band)) : undefined;
    return { part: 'screen', of: view.name, each, ...(all && { all }) };
  });
}

function bandOf(view: View, eyes: Eyes): PersonBand {
  const about = { who: eyes.person.name, posture: eyes.posture, workstation: eyes.station.name };
  if (eyes.person.kind === 'crowd') return { ...about, basis: 'share', ...shown(bandOfMost(view, eyes)) };
  const { lowest, highest } = heightsFor(view, eyes);
  const band = usable({ min: lowest, max: highest });
  return { ...about, basis: isSettled(view, eyes) ? 'measured' : 'average', ...shown(band) };
}

function shown(band: Range | undefined): Pick<PersonBand, 'band' | 'blockedBy'> {
  return band ? { band } : { blockedBy: 'screen-height' };
}

/** No line of a screen hangs below what its height is measured from. */
function usable({ min, max }: Range): Range | undefined {
  return max < Math.max(0, min) ? undefined : { min: Math.max(0, min), max };
}

const STEP: Millimetres = 5;
/** A screen’s line this far above the desk or floor is out of any eye’s reach. */
const HIGHEST: Millimetres = 2400;

/** The heights that suit as much of a crowd as it asks for. */
function bandOfMost(view: View, eyes: Eyes): Range | undefined {
  const { people, wanted } = eyes.person;
  const { eye, desk } = eyes.all;
  const served = new Float64Array(HIGHEST / STEP + 2);
  for (let person = 0; person < people.count; person++) {
    const own = heightsFor(view, { posture: eyes.posture, eye: eye[person]!, desk: desk[person]! });
    const first = Math.ceil((own.lowest - TOLERANCE) / STEP);
    const last = Math.floor((own.highest + TOLERANCE) / STEP);
    if (last < Math.max(0, first)) continue;
    served[Math.max(0, first)]! += people.weights[person]!;
    served[Math.min(served.length - 1, last + 1)]! -= people.weights[person]!;
  }
  const heights: Millimetres[] = [];
  let share = 0;
  for (let step = 0; step * STEP <= HIGHEST; step++) {
    share += served[step]!;
    if (share >= wanted - 1e-9) heights.push(step * STEP);
  }
  return heights.length > 0 ? { min: heights[0]!, max: heights[heights.length - 1]! } : undefined;
}

/** Whether all that moves these eyes over what the screen’s height is measured from was measured. */
function isSettled(view: View, eyes: Eyes): boolean {
  const mean = eyeOver(view, eyes.eye, eyes.desk);
  return eyesOver(view, eyes).every((one) => Math.abs(one - mean) < TOLERANCE);
}

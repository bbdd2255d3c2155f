import type { Posture } from '../booth.js';
import { degrees, radians, type Degrees, type Millimetres, type Range } from '../units.js';
import { eyeOver, type Look, type View } from './viewing.js';

/** Rounding of a drawing, as an angle: 1 mm at arm's length. */
export const SLACK = 0.1;

/**
 * How high the eye must be over the middle of a screen for all of it to lie within bounds, as angles from the eye: the preferred bounds of
 * the check ‘screen-height’, which names their sources.
 */
export function goodRises(view: View, slack: Degrees = SLACK): Range {
  return {
    min: Math.max(view.half - up(view, slack), -up(view, slack)),
    max: Math.min(up(view, 30 + slack), up(view, 33 + slack) - view.half),
  };
}

/** How high over the middle of a screen the eye is best: what the check ‘screen-height’ prefers, within its preferred bounds. */
export function wantedRise(view: View, posture: Posture): Millimetres {
  const best = up(view, posture === 'sit' ? 15 : 10);
  const { min, max } = goodRises(view, 0);
  return min > max ? best : Math.min(max, Math.max(min, best));
}

/** Its outer bounds. */
export function bearableRises(view: View): Range {
  return { min: view.half - up(view, 20 + SLACK), max: up(view, 60 + SLACK) - view.half };
}

/** How high the eye must be over the middle of a screen for its distance from there to be within bounds: above the middle, or as far below. */
export function risesAt({ level }: View, distance: Range): readonly Range[] {
  if (distance.max < level) return [];
  const far = Math.sqrt(distance.max ** 2 - level ** 2);
  if (distance.min <= level) return [{ min: -far, max: far }];
  const near = Math.sqrt(distance.min ** 2 - level ** 2);
  return [
    { min: -far, max: -near },
    { min: near, max: far },
  ];
}

/** How high the eye must be over the middle of a screen for its face to be within an angle, less than 90°, of square to it. */
export function squareRises(view: View, limit: Degrees): readonly Range[] {
  const face = faceOf(view);
  const long = Math.hypot(face.level, face.up);
  const least = Math.cos(radians(limit));
  if (long < least) return [];
  const middle = degrees(Math.atan2(face.up, face.level));
  const spread = degrees(Math.acos(least / long));
  return [{ min: up(view, middle - spread), max: up(view, middle + spread) }];
}

/** Where the face looks: towards the eye on the level, and up. */
export function faceOf({ tilt, swing }: View): { readonly level: number; readonly up: number } {
  return { level: Math.cos(radians(tilt)) * Math.cos(radians(swing)), up: Math.sin(radians(tilt)) };
}

/** By how much something at the screen's distance is higher that is seen so much higher: no height is so much that it is seen straight above. */
function up({ level }: View, angle: Degrees): Millimetres {
  if (Math.abs(angle) >= 90) return angle < 0 ? -Infinity : Infinity;
  return level * Math.tan(radians(angle));
}

/** For what heights in place of the one that the file says of a screen it suits one pair of eyes, and which would be best. */
export function heightsFor(
  view: View,
  { eye, desk, posture }: Look,
): { readonly lowest: Millimetres; readonly highest: Millimetres; readonly ideal: Millimetres } {
  const said = eyeOver(view, eye, desk) - view.toCentre;
  const { min, max } = goodRises(view, 0);
  return { lowest: said - max, highest: said - min, ideal: said - wantedRise(view, posture) };
}

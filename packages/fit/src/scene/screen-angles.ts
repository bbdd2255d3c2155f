import { degrees, radians, type Degrees, type Millimetres, type Range } from '../units.js';
import { elevation, linesOf, type Eyes, type View } from './viewing.js';

/** A screen’s lines seen from the eye: degrees above (positive) or below (negative) its level line. */
export interface Angles {
  readonly top: number;
  readonly centre: number;
  readonly bottom: number;
}

/** Rounding of a drawing, as an angle: 1 mm at arm's length. */
export const SLACK = 0.1;

export function anglesOf(view: View, desk: Millimetres, eye: Millimetres): Angles {
  const lines = linesOf(view, desk);
  return {
    top: elevation(view, lines.top, eye),
    centre: elevation(view, lines.centre, eye),
    bottom: elevation(view, lines.bottom, eye),
  };
}

/**
 * How high the eye must be over the middle of a screen for all of it to lie within bounds, as angles from the eye: the preferred bounds of
 * the check ‘screen-height’, which names their sources.
 */
export function goodRises(view: View): Range {
  const half = linesOf(view, 0).top - linesOf(view, 0).centre;
  return {
    min: Math.max(half - up(view, SLACK), -up(view, SLACK)),
    max: Math.min(up(view, 30 + SLACK), up(view, 33 + SLACK) - half),
  };
}

/** Its outer bounds. */
export function bearableRises(view: View): Range {
  const half = linesOf(view, 0).top - linesOf(view, 0).centre;
  return { min: half - up(view, 20 + SLACK), max: up(view, 60 + SLACK) - half };
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

/** How far the screen may be moved for one pair of eyes, and how far would be best; up is positive. */
export function shiftsFor(
  view: View,
  eyes: Eyes,
): { readonly lowest: number; readonly highest: number; readonly ideal: number } {
  const lines = linesOf(view, eyes.desk);
  return {
    highest: eyes.eye - lines.top,
    lowest: Math.max(eyes.eye + up(view, -30) - lines.centre, eyes.eye + up(view, -33) - lines.bottom),
    ideal: eyes.eye + up(view, eyes.posture === 'sit' ? -15 : -10) - lines.centre,
  };
}

import { radians, type Degrees, type Millimetres } from '../units.js';
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

/** How high the eye must be over the middle of a screen for all of it to lie within bounds, as angles from the eye. */
export interface Rises {
  readonly least: Millimetres;
  readonly most: Millimetres;
}

/** The preferred bounds of the check ‘screen-height’, which names their sources. */
export function goodRises(view: View): Rises {
  const half = linesOf(view, 0).top - linesOf(view, 0).centre;
  return {
    least: Math.max(half - up(view, SLACK), -up(view, SLACK)),
    most: Math.min(up(view, 30 + SLACK), up(view, 33 + SLACK) - half),
  };
}

/** Its outer bounds. */
export function bearableRises(view: View): Rises {
  const half = linesOf(view, 0).top - linesOf(view, 0).centre;
  return { least: half - up(view, 20 + SLACK), most: up(view, 60 + SLACK) - half };
}

/** By how much something at the screen's distance is higher that is seen so much higher. */
function up({ level }: View, angle: Degrees): Millimetres {
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

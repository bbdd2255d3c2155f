import type { Millimetres } from '../units.js';
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

/** Within the preferred bounds of the check ‘screen-height’, which names their sources. */
export function isGood({ top, centre, bottom }: Angles): boolean {
  return top <= SLACK && centre <= SLACK && centre >= -30 - SLACK && bottom >= -33 - SLACK;
}

/** Within its outer bounds. */
export function isBearable({ top, bottom }: Angles): boolean {
  return top <= 20 + SLACK && bottom >= -60 - SLACK;
}

/** How far the screen may be moved for one pair of eyes, and how far would be best; up is positive. */
export function shiftsFor(
  view: View,
  eyes: Eyes,
): { readonly lowest: number; readonly highest: number; readonly ideal: number } {
  const lines = linesOf(view, eyes.desk);
  const drop = (angle: number) => view.level * Math.tan((angle * Math.PI) / 180);
  return {
    highest: eyes.eye - lines.top,
    lowest: Math.max(eyes.eye + drop(-30) - lines.centre, eyes.eye + drop(-33) - lines.bottom),
    ideal: eyes.eye + drop(eyes.posture === 'sit' ? -15 : -10) - lines.centre,
  };
}

import { shareWithin } from '../bodies/people.js';
import type { Millimetres, Range, Share } from '../units.js';
import { goodRises, wantedRise } from './screen-angles.js';
import { elevation, eyesOver, isAdjustable, type Eyes, type Look, type View } from './viewing.js';

/** Heights of a screen's lines above the floor. */
export interface Lines {
  readonly top: Millimetres;
  readonly centre: Millimetres;
  readonly bottom: Millimetres;
}

/** A screen on an arm as these eyes set it: where their preferred angle is out of the arm's reach, as near to it as it goes. */
export function linesFor(view: View, eyes: Look): Lines {
  return isAdjustable(view)
    ? linesUnder(view, eyes, wantedRise(view, eyes.posture))
    : linesOf(view, eyes.desk, 'lowest');
}

/** One on an arm as low as it is still good for these eyes, so that they see over it; where no height is, as for reading. */
export function loweredLines(view: View, eyes: Look): Lines {
  const { min, max } = goodRises(view, 0);
  return min > max ? linesFor(view, eyes) : linesUnder(view, eyes, max);
}

/** The eye as high over its middle as may be wanted, or as near to that as the arm goes. */
function linesUnder(view: View, { eye, desk }: Look, rise: Millimetres): Lines {
  const above = over(view, desk);
  const { min, max } = view.centre;
  return linesAt(view, above + Math.min(max, Math.max(min, eye - rise - above)));
}

/** A screen on an arm as low or as high as it goes, for a desk of a given height. */
export function linesOf(view: View, desk: Millimetres, end: 'lowest' | 'highest'): Lines {
  return linesAt(view, over(view, desk) + (end === 'lowest' ? view.centre.min : view.centre.max));
}

function linesAt({ half }: View, centre: Millimetres): Lines {
  return { top: centre + half, centre, bottom: centre - half };
}

/** How high above the floor that is from which the file measures a screen's height. */
function over({ use }: View, desk: Millimetres): Millimetres {
  return use.height!.over === 'desk' ? desk : 0;
}

/** A screen’s lines seen from the eye: degrees above (positive) or below (negative) its level line. */
export interface Angles {
  readonly top: number;
  readonly centre: number;
  readonly bottom: number;
}

export function anglesOf(view: View, eyes: Look): Angles {
  const lines = linesFor(view, eyes);
  return {
    top: elevation(view, lines.top, eyes.eye),
    centre: elevation(view, lines.centre, eyes.eye),
    bottom: elevation(view, lines.bottom, eyes.eye),
  };
}

/**
 * The share of everybody a body may be whose eyes are so high over the middle of a screen: within one of the ranges, of which none meets
 * another. The higher the eye, the higher it is over the middle, also over one that it sets on an arm, where that rise is the wanted one
 * for a while: so each range of rises is one of eyes.
 */
export function shareOver(eyes: Eyes, view: View, rises: readonly Range[]): Share {
  const column = eyesOver(view, eyes);
  const wanted = wantedRise(view, eyes.posture);
  const { centre } = view;
  return rises.reduce((sum, { min, max }) => {
    const lowest = min + (min > wanted ? centre.max : centre.min);
    const highest = max + (max < wanted ? centre.min : centre.max);
    return sum + shareWithin(eyes.person.people, column, lowest, highest);
  }, 0);
}

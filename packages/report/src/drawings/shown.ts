import type { Posture, SideSketch } from '@boothwright/fit';

/** More people than this in one posture, and only the ends of the range are drawn. */
const MOST = 4;

export interface ShownSides {
  readonly shown: readonly SideSketch[];
  /** Whose eyes lie between those of the people who are shown. */
  readonly between: readonly string[];
}

/** Whom to draw at a workstation: everyone, or of many the ones with the lowest and the highest eyes in each posture. */
export function shownSides(sides: readonly SideSketch[], workstation: string): ShownSides {
  const here = sides.filter((side) => side.workstation === workstation);
  const postures = [...new Set(here.map(({ posture }) => posture))];
  const shown = postures.flatMap((posture) => endsOf(here, posture));
  return { shown, between: [...new Set(here.filter((side) => !shown.includes(side)).map(({ who }) => who))] };
}

function endsOf(sides: readonly SideSketch[], posture: Posture): readonly SideSketch[] {
  const all = sides.filter((side) => side.posture === posture);
  if (all.length <= MOST) return all;
  const byEye = [...all].sort((a, b) => a.eye.height - b.eye.height);
  return all.filter((side) => side === byEye[0] || side === byEye.at(-1));
}

import type { Assessment, Served, SideSketch } from '@boothwright/fit';
import { boothPlan } from '../drawings/booth-plan.js';
import type { Drawing } from '../drawings/drawing.js';
import { hallSection } from '../drawings/hall-section.js';
import { roomPlan } from '../drawings/room-plan.js';
import { shownSides } from '../drawings/shown.js';
import { sideView } from '../drawings/side-view.js';

/** One drawing of a preview. */
export interface View {
  /** The same for the same drawing after a change of the text, unique on the page, fit for an `id`. */
  readonly id: string;
  readonly caption: string;
  readonly drawing: Drawing;
  /** The person, of a side view. */
  readonly side?: SideSketch;
}

export interface StationViews {
  readonly id: string;
  readonly name: string;
  readonly served: readonly Served[];
  readonly views: readonly View[];
  /** Whose eyes lie between those of the people who are shown. */
  readonly between: readonly string[];
}

export interface Views {
  readonly plans: readonly View[];
  readonly stations: readonly StationViews[];
}

const WIDE = 760;
const NARROW = 380;

/** All drawings of an assessment, for a page that is `width` CSS pixels wide. */
export function viewsOf(assessment: Assessment, width: number): Views {
  const across = width < WIDE * 0.8 ? NARROW : WIDE;
  const plans: readonly [string, string, Drawing | undefined][] = [
    ['booth', 'The booth from above', boothPlan(assessment, across)],
    ['room', 'The room from above', roomPlan(assessment, NARROW)],
    ['hall', 'From the booth to the stage', hallSection(assessment, across)],
  ];
  return {
    plans: plans.flatMap(([id, caption, drawing]) => (drawing ? [{ id, caption, drawing }] : [])),
    stations: assessment.booth.workstations.map(({ name }, index) => stationViews(assessment, name, index)),
  };
}

function stationViews(assessment: Assessment, name: string, index: number): StationViews {
  const { shown, between } = shownSides(assessment.sketch?.sides ?? [], name);
  const id = `station-${index + 1}`;
  const people = assessment.booth.workstations[index]!.people.map((person) => person.name);
  return {
    id,
    name,
    served: assessment.workstations.find((station) => station.name === name)?.served ?? [],
    views: shown.map((side) => {
      const drawing = sideView(assessment, side);
      return { id: `${id}-${people.indexOf(side.who) + 1}-${side.posture}`, caption: drawing.title, drawing, side };
    }),
    between,
  };
}

import type { Assessment, Served, SideSketch } from '@boothwright/fit';
import { boothPlan } from '../drawings/booth-plan.js';
import type { Drawing } from '../drawings/drawing.js';
import { hallSection, hasSights } from '../drawings/hall-section.js';
import { boothExtent, roomExtent } from '../drawings/plan-view.js';
import { roomPlan } from '../drawings/room-plan.js';
import { shownSides } from '../drawings/shown.js';
import { sideTitle, sideView } from '../drawings/side-view.js';

/** One drawing of a preview. */
export interface View {
  /** The same for the same drawing after a change of the text, unique on the page, fit for an `id`. */
  readonly id: string;
  readonly caption: string;
  /** What it is drawn of. */
  readonly assessment: Assessment;
  /** The person, of a side view. */
  readonly side?: SideSketch;
  /** Drawn when it is first asked for. */
  readonly draw: () => Drawing;
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
  const { sketch } = assessment;
  const plan = (id: string, caption: string, draw: () => Drawing | undefined): View => ({
    id,
    caption,
    assessment,
    draw: once(() => draw()!),
  });
  return {
    plans: [
      ...(sketch && boothExtent(assessment)
        ? [plan('booth', 'The booth from above', () => boothPlan(assessment, across))]
        : []),
      ...(sketch && roomExtent(assessment)
        ? [plan('room', 'The room from above', () => roomPlan(assessment, NARROW))]
        : []),
      ...(hasSights(assessment)
        ? [plan('hall', 'From the booth to the stage', () => hallSection(assessment, across))]
        : []),
    ],
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
    views: shown.map((side) => ({
      id: `${id}-${people.indexOf(side.who) + 1}-${side.posture}`,
      caption: sideTitle(side),
      assessment,
      side,
      draw: once(() => sideView(assessment, side)),
    })),
    between,
  };
}

function once(draw: () => Drawing): () => Drawing {
  let drawn: Drawing | undefined;
  return () => (drawn ??= draw());
}

import { listOf, type Assessment, type Verdict } from '@boothwright/fit';
import { boothPlan } from '../drawings/booth-plan.js';
import type { Drawing } from '../drawings/drawing.js';
import { hallSection } from '../drawings/hall-section.js';
import { roomPlan } from '../drawings/room-plan.js';
import { shownSides } from '../drawings/shown.js';
import { sideView } from '../drawings/side-view.js';
import { group, paragraph, section, soft, verdictSpan, type Block, type Figure } from './blocks.js';

/** Units of the paper: the plans go side by side over the width of the text, the section takes all of it, a phone shows the narrow ones. */
const WIDTHS = { room: 320, booth: 520, hall: 840, narrow: 380 } as const;

/** All drawings of an assessment; nothing if nothing can be drawn. */
export function drawings(assessment: Assessment): Block[] {
  if (!assessment.sketch) return [];
  const plans = [
    ...atBothWidths('The room from above', WIDTHS.room, (width) => roomPlan(assessment, width)),
    ...atBothWidths('The booth from above', WIDTHS.booth, (width) => boothPlan(assessment, width)),
  ];
  const hall = atBothWidths('From the booth to the stage', WIDTHS.hall, (width) => hallSection(assessment, width));
  const shown = [...figures(plans), ...figures(hall), ...sides(assessment)];
  return group('drawn', shown.length > 0 ? section('Drawings', [readingKey, ...shown]) : []);
}

function figures(shown: readonly Figure[]): Block[] {
  return shown.length === 0 ? [] : [{ kind: 'figures', figures: shown }];
}

function atBothWidths(caption: string, wide: number, draw: (width: number) => Drawing | undefined): readonly Figure[] {
  const drawing = draw(wide);
  return drawing ? [{ caption, drawing, narrow: draw(WIDTHS.narrow) }] : [];
}

/** Each person at each workstation from the side, but those whose eyes are between two that are drawn. */
function sides(assessment: Assessment): Block[] {
  const stations = assessment.booth.workstations.map(({ name }) => ({
    name,
    ...shownSides(assessment.sketch!.sides, name),
  }));
  const views = stations.flatMap(({ shown }) => shown.map((side) => sideView(assessment, side)));
  const between = stations.filter((station) => station.between.length > 0);
  return section(
    'From the side',
    [
      ...figures(views.map((drawing) => ({ caption: drawing.title, drawing }))),
      ...between.map((station) =>
        paragraph(
          `Between the lowest and the highest eyes that are drawn at ${station.name}: ${listOf(station.between)}.`,
        ),
      ),
    ],
    3,
  );
}

const marks: readonly Verdict[] = ['fail', 'marginal', 'unknown', 'pass'];

/** How to read the drawings. */
const readingKey: Block = paragraph(
  soft(
    [
      'Drawn to scale; the bar under each drawing tells which.',
      'People are the average of what is known of them, seat and desk set as suits them best.',
      'A bar on the staff of heights beside a person: nine in ten of such people have eye or elbow inside it.',
      'The dashed strip behind a desk is floor that people on seats take.',
      'Dotted arcs: what hands reach easily and, farther out, at most.',
      'Dashed lines from an eye: to a screen, or to the lowest point of the stage that is seen.',
      'A line with a stroke across each end: a length, from stroke to stroke.',
      'The signs of results:',
    ].join(' '),
  ),
  ...marks.map((verdict) => verdictSpan(verdict)),
);

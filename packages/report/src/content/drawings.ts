import { listOf, type Assessment } from '@boothwright/fit';
import { boothPlan } from '../drawings/booth-plan.js';
import type { Drawing } from '../drawings/drawing.js';
import { hallSection } from '../drawings/hall-section.js';
import { roomPlan } from '../drawings/room-plan.js';
import { readingKey } from '../drawings/section.js';
import { shownSides } from '../drawings/shown.js';
import { sideView } from '../drawings/side-view.js';
import { heading, list, paragraph, soft, type Block } from './blocks.js';

const WIDE = 760;
const NARROW = 380;

/** All drawings of an assessment, for paper; nothing if nothing can be drawn. */
export function drawings(assessment: Assessment): Block[] {
  const { sketch } = assessment;
  if (!sketch) return [];
  const blocks = [
    ...figure('The room from above', roomPlan(assessment, NARROW)),
    ...figure('The booth from above', boothPlan(assessment, WIDE)),
    ...figure('From the booth to the stage', hallSection(assessment, WIDE)),
    ...assessment.booth.workstations.flatMap(({ name }) => sides(assessment, name)),
  ];
  if (blocks.length === 0) return [];
  return [heading(2, 'Drawings'), ...list(readingKey.map((text) => [[soft(text)]])), ...blocks];
}

function figure(caption: string, drawing: Drawing | undefined): Block[] {
  return drawing ? [{ kind: 'drawings', drawings: [{ caption, drawing }] }] : [];
}

function sides(assessment: Assessment, workstation: string): Block[] {
  const { shown, between } = shownSides(assessment.sketch!.sides, workstation);
  if (shown.length === 0) return [];
  const views = shown.map((side) => sideView(assessment, side));
  const pairs = views
    .filter((_, index) => index % 2 === 0)
    .map((view, index) => [view, ...views.slice(2 * index + 1, 2 * index + 2)]);
  return [
    heading(3, `${workstation} from the side`),
    ...pairs.map((pair): Block => ({
      kind: 'drawings',
      drawings: pair.map((drawing) => ({ caption: drawing.title, drawing })),
    })),
    ...(between.length > 0
      ? [paragraph(`Between the lowest and the highest eyes that are drawn: ${listOf(between)}.`)]
      : []),
  ];
}

import type { Assessment } from '@boothwright/fit';
import type { Units } from '../words.js';
import type { Board } from './board.js';
import { drawDimension, drawScaleBar } from './dimension.js';
import type { Drawing, Fact } from './drawing.js';
import { ellipse, type Extent } from './geometry.js';
import { drawPieces, drawWalls } from './plan-parts.js';
import { planBoard, roomExtent } from './plan-view.js';
import { labelRoom } from './room-labels.js';
import { area, disc, line } from './shapes.js';
import { worstSights } from './side-words.js';
import { drawingUnits } from './units.js';
import { troubleWith } from './verdicts.js';

/** From a wall to the dimension line beside it, in units of the paper. */
const ABOVE = 16;
const BESIDE = 30;
const DOT = 2.6;

/** The whole room from above; nothing if the file says nothing of it. */
export function roomPlan(assessment: Assessment, width: number): Drawing | undefined {
  const extent = assessment.sketch && roomExtent(assessment);
  if (!extent) return undefined;
  const board = planBoard(extent, { top: 42, sides: 60, bottom: 50 }, { width, height: width * 1.5, scale: 8 });
  const units = drawingUnits(assessment.booth.show);

  drawScaleBar(board, assessment.booth.show, { x: 12, y: board.sheet.height - 11 }, width / 4);
  drawHall(board, assessment);
  drawWalls(board, assessment);
  drawPieces(board, assessment);
  drawSights(board, assessment);
  drawPeople(board, assessment);
  drawWalkways(board, assessment);
  drawRoomSize(board, assessment, extent, units);
  drawBoothPlace(board, assessment, units);
  labelRoom(board, assessment);

  const facts = factsOf(assessment, units);
  return {
    kind: 'room-plan',
    title: `${assessment.booth.name}: the room from above`,
    description: `The room from above, the stage at the upper edge. ${facts.map(({ what, value }) => `${what}: ${value}.`).join(' ')}`,
    ...board.finished(),
    facts,
  };
}

function drawHall(board: Board, { sketch }: Assessment): void {
  const { stage, rows, balcony, wheelchairSpaces } = sketch!.plan;
  if (stage) {
    board.add('stage', undefined, [area(stage.outline, 'medium', 'fill-wash')]);
    board.labels.avoid(
      stage.outline.map((corner) => board.onPaper(corner)),
      true,
    );
  }
  for (const row of rows) {
    board.add('row', undefined, [line(row, 'hair')]);
    board.labels.avoid(row.map((end) => board.onPaper(end)));
  }
  if (balcony) board.add('balcony', undefined, [line(balcony, 'thin', 'dashed', 'soft')]);
  for (const { name, outline } of wheelchairSpaces) {
    board.add('wheelchair-space', name, [area(outline, 'thin', 'dashed')]);
    board.labels.avoid(
      outline.map((corner) => board.onPaper(corner)),
      true,
    );
  }
}

function drawSights(board: Board, { sketch }: Assessment): void {
  for (const { workstation, eye, lands } of worstSights(sketch!.sights)) {
    board.add('sight', workstation, [line([eye, lands], 'hair', 'dashed', 'soft')]);
    board.labels.avoid([board.onPaper(eye), board.onPaper(lands)]);
  }
}

function drawPeople(board: Board, { sketch }: Assessment): void {
  const dot = DOT * board.sheet.scale;
  for (const { workstation, at, trunk, facing } of sketch!.plan.places) {
    const shape = trunk
      ? area(ellipse(trunk.at, trunk.breadth / 2, trunk.depth / 2, -facing), 'thin', 'fill-body')
      : disc(at, dot, 'fill-solid');
    board.add('person', workstation, [shape]);
  }
  for (const { name, at } of sketch!.plan.watchers)
    board.add('watchers', name, [disc(at, dot, 'fill-paper', 'medium')]);
}

function drawWalkways(board: Board, assessment: Assessment): void {
  for (const { name, across } of assessment.sketch!.plan.walkways) {
    const trouble = troubleWith(assessment, { kind: 'walkway', subject: name });
    board.add('walkway', name, [line(across, 'medium', ...(trouble ? [trouble] : []))], trouble);
    board.labels.avoid(across.map((end) => board.onPaper(end)));
  }
}

function drawRoomSize(board: Board, { layout }: Assessment, { top }: Extent, { length }: Units): void {
  if (!layout.room) return;
  const { width, depth } = layout.room;
  const above = Math.max(top, depth) + ABOVE * board.sheet.scale;
  const beside = width + BESIDE * board.sheet.scale;
  drawDimension(board, {
    kind: 'room-width',
    from: { x: 0, y: above },
    to: { x: width, y: above },
    label: { lines: [length(width)] },
  });
  drawDimension(board, {
    kind: 'room-depth',
    from: { x: beside, y: 0 },
    to: { x: beside, y: depth },
    label: { lines: [length(depth)] },
  });
}

/** From the walls that the file counts from to the corner that it places. */
function drawBoothPlace(board: Board, { booth, layout }: Assessment, { length }: Units): void {
  const [placement] = booth.placements;
  if (!placement || !layout.room) return;
  const { x, y } = placement.at.value;
  if (x > 0) drawDimension(board, { kind: 'booth-x', from: { x: 0, y }, to: { x, y }, label: { lines: [length(x)] } });
  if (y > 0) drawDimension(board, { kind: 'booth-y', from: { x, y: 0 }, to: { x, y }, label: { lines: [length(y)] } });
}

function factsOf({ booth, layout, sketch }: Assessment, { length }: Units): readonly Fact[] {
  const { room, placements } = booth;
  const at = placements[0]?.at.value;
  const { rows, doors } = sketch!.plan;
  return [
    ...(layout.room
      ? [{ what: 'Room', value: `${length(layout.room.width)} wide, ${length(layout.room.depth)} deep` }]
      : []),
    ...(room?.stage?.edge
      ? [{ what: 'Stage edge', value: `${length(room.stage.edge.value)} from the back wall` }]
      : []),
    ...(at
      ? [
          {
            what: 'Booth, near left corner',
            value: `${length(at.x)} from the left wall, ${length(at.y)} from the back wall`,
          },
        ]
      : []),
    ...(rows.length > 0 && room?.seating?.first
      ? [{ what: 'Nearest row', value: `${length(room.seating.first.value)} in front of the booth` }]
      : []),
    ...doors.map(({ name, opens }) => ({ what: `Door ${name}`, value: `opens ${opens}` })),
  ];
}

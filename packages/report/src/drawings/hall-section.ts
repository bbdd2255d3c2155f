import type { Assessment, HallBlock } from '@boothwright/fit';
import { postureWord, type Units } from '../words.js';
import { Board } from './board.js';
import { drawDimension, drawScaleBar, spotsAlong } from './dimension.js';
import type { Drawing, Fact } from './drawing.js';
import { rectangle, stroke } from './geometry.js';
import { drawHallSights, hallSights, stackHeight } from './hall-sights.js';
import type { Spot } from './labels.js';
import { area, disc, line } from './shapes.js';
import { stageLines } from './side-words.js';
import { drawingUnits } from './units.js';
import { verdictOn } from './verdicts.js';

const SIDES = 14;
const FOOT = 70;
/** Below the floor, where the dimension runs, in units of the paper. */
const BELOW = 30;
/** What is drawn above the highest line where the file does not say how high the room is, millimetres. */
const SKY = 1600;
const USUAL_STAGE = 2000;
const HEAD = 110;

/** The hall from the side, from the back wall to the stage, with what people see over whom; nothing without a line of sight. */
export function hallSection(assessment: Assessment, width: number): Drawing | undefined {
  if (!hasSights(assessment)) return undefined;
  const { hall } = assessment.sketch!;
  const units = drawingUnits(assessment.booth.show);
  const far = hall.depth ?? hall.stage!.edge + USUAL_STAGE;
  const top = hall.height ?? highest(assessment) + SKY;
  const scale = far / (width - 2 * SIDES);
  const free = { width: (far - hall.stage!.edge) / scale - SIDES, height: (top - (hall.stage!.height ?? 0)) / scale };
  const sights = hallSights(assessment, units, free.width, free.height);
  const above = SIDES + (sights.beside ? 0 : stackHeight(sights.labels));
  const height = top / scale + above + FOOT;
  const board = new Board({ left: -SIDES * scale, top: top + above * scale, scale, width, height });

  drawScaleBar(board, assessment.booth.show, { x: SIDES, y: height - 10 }, width / 5);
  drawShell(board, assessment, far);
  for (const block of hall.blocks) board.add(block.kind, block.name, blockShapes(block), undefined, block.workstation);
  drawCrowd(board, assessment);
  drawHallSights(board, sights, hall.height);
  drawDistance(board, assessment, units);
  labelHall(board, assessment, far);

  const facts = factsOf(assessment, units);
  return {
    kind: 'section',
    title: `${assessment.booth.name}: from the booth to the stage`,
    description: `The hall from the side, the back wall at the left, the stage at the right. ${facts.map(({ what, value }) => `${what}: ${value}.`).join(' ')}`,
    ...board.finished(),
    facts,
  };
}

/** Whether somebody looks at a stage. */
export function hasSights({ sketch }: Assessment): boolean {
  return sketch !== undefined && sketch.sights.length > 0 && sketch.hall.stage !== undefined;
}

function highest({ sketch }: Assessment): number {
  const { sights, hall } = sketch!;
  return Math.max(...sights.flatMap(({ eye, lands }) => [eye.z, lands.z]), ...hall.rows.map((row) => row.top));
}

function drawShell(board: Board, { sketch }: Assessment, far: number): void {
  const { depth, height, stage, balcony } = sketch!.hall;
  if (stage?.height !== undefined) {
    board.add('stage', undefined, [area(rectangle(stage.edge, 0, far, stage.height), 'medium', 'fill-wash')]);
  }
  const walls = depth === undefined ? [0] : [0, far];
  board.add('wall', undefined, [
    line(stroke(0, 0, far, 0), 'thick'),
    ...(height === undefined ? [] : [line(stroke(0, height, far, height), 'medium')]),
    ...(height === undefined ? [] : walls.map((x) => line(stroke(x, 0, x, height), 'thick'))),
  ]);
  if (balcony?.height === undefined) return;
  const balconyLine = stroke(0, balcony.height, balcony.edge, balcony.height);
  board.add('balcony', undefined, [line(balconyLine, 'thick', 'soft')]);
  const [p, q] = balconyLine.map((end) => board.onPaper(end));
  board.labels.avoid([p!, q!]);
  board.label({ kind: 'balcony', label: { lines: ['balcony'], soft: true }, spots: spotsAlong(p!, q!), priority: -1 });
}

function blockShapes({ kind, y, z }: HallBlock) {
  const middle = (y.min + y.max) / 2;
  if (kind === 'screen') return [line(stroke(middle, z.min, middle, z.max), 'medium')];
  const box = rectangle(y.min, z.min, y.max, z.max);
  return [kind === 'column' ? area(box, 'hair', 'soft') : area(box, 'thin', 'fill-wash')];
}

/** Everyone in a row as one figure; those who sit face the stage. */
function drawCrowd(board: Board, { sketch }: Assessment): void {
  for (const { y, top, standing } of sketch!.hall.rows) {
    const legs = standing
      ? []
      : [
          area(rectangle(y - HEAD, 400, y + 330, 530), 'hair', 'fill-body'),
          line(stroke(y + 290, 0, y + 290, 400), 'thin'),
        ];
    board.add('row', undefined, [
      ...legs,
      area(rectangle(y - HEAD, standing ? 0 : 430, y + HEAD, top - 2 * HEAD), 'hair', 'fill-body'),
      disc({ x: y, y: top - HEAD }, HEAD, 'hair', 'fill-body'),
    ]);
    board.labels.avoid(
      rectangle(y - HEAD, 0, y + HEAD, top).map((corner) => board.onPaper(corner)),
      true,
    );
  }
}

/** From the back wall to the stage, below the floor. */
function drawDistance(board: Board, { sketch }: Assessment, { length }: Units): void {
  const { edge } = sketch!.hall.stage!;
  const y = -BELOW * board.sheet.scale;
  const label = { lines: [length(edge)] };
  drawDimension(board, { kind: 'stage-distance', from: { x: 0, y }, to: { x: edge, y }, label });
}

/** What stands there, below the floor. */
function labelHall(board: Board, { sketch }: Assessment, far: number): void {
  const { stage, rows, blocks } = sketch!.hall;
  const put = (kind: string, text: string, y: number, soft = false) => {
    const at = board.onPaper({ x: y, y: 0 });
    const spots = [0, 20, -20, 45, -45, 70].map((shift): Spot => ({
      x: at.x + shift,
      y: at.y + 5,
      anchor: 'middle',
      hang: 'below',
      cost: Math.abs(shift),
    }));
    board.label({ kind, label: { lines: [text], soft }, spots });
  };
  const desk = blocks.find(({ kind }) => kind === 'desk');
  if (desk) put('booth', 'booth', (desk.y.min + desk.y.max) / 2);
  put('stage', 'stage', (stage!.edge + far) / 2);
  const [first] = rows;
  if (!first) return;
  const crowd = first.standing ? 'people who stand at times' : 'people on seats';
  put('row', crowd, (first.y + rows.at(-1)!.y) / 2, true);
}

function factsOf(assessment: Assessment, units: Units): readonly Fact[] {
  const { hall, sights } = assessment.sketch!;
  const { height, stage, rows } = hall;
  const { length } = units;
  const first = rows[0];
  return [
    ...(height === undefined ? [] : [{ what: 'Room height', value: length(height) }]),
    ...(stage?.height === undefined
      ? []
      : [{ what: 'Stage', value: `${length(stage.height)} high, its edge ${length(stage.edge)} from the back wall` }]),
    ...(first
      ? [
          {
            what: `People in front, ${first.standing ? 'standing' : 'seated'}`,
            value: `${length(first.top)} to the top of the head`,
          },
        ]
      : []),
    ...sights.map((sight) => {
      const { workstation, who, posture, eye } = sight;
      return {
        what: `${who}, ${postureWord(posture)} at ${workstation}`,
        value: `eye ${length(eye.z)} above the floor; stage ${stageLines(sight, units).join(', ')}`,
        verdict: verdictOn(assessment, { subject: workstation, who, posture, checks: ['see-over'] }),
      };
    }),
  ];
}

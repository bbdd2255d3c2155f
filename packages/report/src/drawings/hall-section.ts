import type { Assessment, HallBlock, StageSight } from '@boothwright/fit';
import { postureWord, unitsOf, type Units } from '../words.js';
import { Board } from './board.js';
import { drawDimension, drawScaleBar, spotsAlong } from './dimension.js';
import type { Drawing, Fact } from './drawing.js';
import { rectangle } from './geometry.js';
import type { Spot } from './labels.js';
import { stageLines, worstSights } from './side-words.js';
import { area, disc, line } from './shapes.js';
import { shortened, wrapped } from './text-width.js';
import { verdictOn } from './verdicts.js';

const LABEL_WIDTH = 150;
const SIDES = 14;
const FOOT = 70;
/** Below the floor, where the dimension runs, in units of the paper. */
const BELOW = 30;
/** The texts of the lines of sight need so much paper above the floor, each. */
const LABEL_HEIGHT = 64;
const BESIDE_STAGE = 60;
/** What is drawn above the highest line where the file does not say how high the room is, millimetres. */
const SKY = 1600;
const USUAL_STAGE = 2000;
/** Lines of sight that one drawing bears. */
const MOST_LINES = 3;
const EYE = 2.2;
const HEAD = 110;

/** The hall from the side, from the back wall to the stage, with what people see over whom; nothing without a line of sight. */
export function hallSection(assessment: Assessment, width: number): Drawing | undefined {
  const sights = assessment.sketch ? chosen(assessment.sketch.sights) : [];
  if (sights.length === 0) return undefined;
  const { hall } = assessment.sketch!;
  const units = unitsOf(assessment.booth.show);
  const far = hall.depth ?? hall.stage!.edge + USUAL_STAGE;
  const board = boardFor(assessment, sights, far, width);

  drawScaleBar(board, assessment.booth.show, { x: SIDES, y: board.sheet.height - 10 }, width / 5);
  drawShell(board, assessment, far);
  for (const block of hall.blocks) board.add(block.kind, block.name, blockShapes(block));
  drawCrowd(board, assessment);
  for (const sight of sights) drawSight(board, sight);
  for (const sight of sights) labelSight(board, assessment, sight, units);
  drawDistance(board, assessment, units);
  labelHall(board, assessment);

  const facts = factsOf(assessment, units);
  return {
    kind: 'section',
    title: `${assessment.booth.name}: from the booth to the stage`,
    description: `The hall from the side, the back wall at the left, the stage at the right. ${facts.map(({ what, value }) => `${what}: ${value}.`).join(' ')}`,
    ...board.finished(),
    facts,
  };
}

/** Of each workstation the person who sees least, the worst first. */
function chosen(sights: readonly StageSight[]): readonly StageSight[] {
  return [...worstSights(sights)].sort((a, b) => b.above - a.above).slice(0, MOST_LINES);
}

function boardFor({ sketch }: Assessment, sights: readonly StageSight[], far: number, width: number): Board {
  const { height, rows } = sketch!.hall;
  const heights = sights.flatMap(({ eye, lands }) => [eye.z, lands.z]);
  const top = Math.max(...heights, height ?? Math.max(...heights, ...rows.map((row) => row.top)) + SKY);
  const scale = far / (width - 2 * SIDES);
  const above = Math.max(SIDES, BESIDE_STAGE + sights.length * LABEL_HEIGHT - top / scale);
  return new Board({
    left: -SIDES * scale,
    top: top + above * scale,
    scale,
    width,
    height: top / scale + above + FOOT,
  });
}

function drawShell(board: Board, { sketch }: Assessment, far: number): void {
  const { depth, height, stage, balcony } = sketch!.hall;
  if (stage?.height !== undefined) {
    board.add('stage', undefined, [area(rectangle(stage.edge, 0, far, stage.height), 'medium', 'fill-wash')]);
    avoidBox(board, stage.edge, 0, far, stage.height);
  }
  const upright = (x: number) =>
    line(
      [
        { x, y: 0 },
        { x, y: height ?? 0 },
      ],
      'thick',
    );
  const walls = height === undefined ? [] : [upright(0), ...(depth === undefined ? [] : [upright(far)])];
  const roof =
    height === undefined
      ? []
      : [
          line(
            [
              { x: 0, y: height },
              { x: far, y: height },
            ],
            'medium',
          ),
        ];
  board.add('wall', undefined, [
    line(
      [
        { x: 0, y: 0 },
        { x: far, y: 0 },
      ],
      'thick',
    ),
    ...roof,
    ...walls,
  ]);
  if (height !== undefined) avoidBox(board, 0, 0, far, height);
  if (balcony?.height !== undefined) {
    const ends = [
      { x: 0, y: balcony.height },
      { x: balcony.edge, y: balcony.height },
    ];
    board.add('balcony', undefined, [line(ends, 'thick', 'soft')]);
    board.labels.avoid(ends.map((end) => board.onPaper(end)));
  }
}

function avoidBox(board: Board, left: number, bottom: number, right: number, top: number): void {
  board.labels.avoid(
    rectangle(left, bottom, right, top).map((corner) => board.onPaper(corner)),
    true,
  );
}

function blockShapes({ kind, y, z }: HallBlock) {
  const middle = (y.min + y.max) / 2;
  if (kind === 'screen')
    return [
      line(
        [
          { x: middle, y: z.min },
          { x: middle, y: z.max },
        ],
        'medium',
      ),
    ];
  return [area(rectangle(y.min, z.min, y.max, z.max), 'thin', kind === 'column' ? 'fill-solid' : 'fill-wash')];
}

/** Everyone in a row as one figure; those who sit face the stage. */
function drawCrowd(board: Board, { sketch }: Assessment): void {
  for (const { y, top, standing } of sketch!.hall.rows) {
    const trunk = rectangle(y - HEAD, standing ? 0 : 430, y + HEAD, top - 2 * HEAD);
    const legs = standing
      ? []
      : [
          area(rectangle(y - HEAD, 400, y + 330, 530), 'hair', 'fill-body'),
          line(
            [
              { x: y + 290, y: 0 },
              { x: y + 290, y: 400 },
            ],
            'thin',
          ),
        ];
    board.add('row', undefined, [
      ...legs,
      area(trunk, 'hair', 'fill-body'),
      disc({ x: y, y: top - HEAD }, HEAD, 'hair', 'fill-body'),
    ]);
    avoidBox(board, y - HEAD, 0, y + HEAD, top);
  }
}

/** Head and shoulders of who looks, the line to the stage, and where it passes over what decides. */
function drawSight(board: Board, { workstation, eye, lands, over }: StageSight): void {
  const { scale } = board.sheet;
  const from = { x: eye.y, y: eye.z };
  const to = { x: lands.y, y: lands.z };
  const head = { x: from.x - HEAD * 0.7, y: from.y };
  board.add('person', workstation, [
    area(rectangle(head.x - HEAD, from.y - 700, head.x + HEAD * 0.9, from.y - HEAD * 1.3), 'hair', 'fill-body'),
    disc(head, HEAD, 'thin', 'fill-body'),
  ]);
  board.add('sight', workstation, [
    line([from, to], 'thin', 'dashed'),
    disc(from, EYE * scale, 'fill-solid', 'no-line'),
    ...(over ? [disc({ x: over.y, y: over.z }, EYE * scale, 'fill-paper', 'thin')] : []),
    line(
      [
        { x: to.x, y: to.y - 4 * scale },
        { x: to.x, y: to.y + 4 * scale },
      ],
      'thick',
    ),
  ]);
  board.labels.avoid([board.onPaper(from), board.onPaper(to)]);
}

function labelSight(board: Board, assessment: Assessment, sight: StageSight, units: Units): void {
  const { workstation, who, posture, lands } = sight;
  const mark = verdictOn(assessment, { subject: workstation, who, posture, checks: ['see-over'] });
  const at = board.onPaper({ x: lands.y, y: lands.z });
  const seen = wrapped(stageLines(sight, units)[0]!, LABEL_WIDTH);
  const lines = [shortened(`${who}, ${postureWord(posture)}`, LABEL_WIDTH, true), ...seen];
  const spots = Array.from({ length: 24 }, (_, step) => 4 + step * 9).flatMap((rise): Spot[] => [
    { x: at.x - 10, y: at.y - rise, anchor: 'end', hang: 'above', cost: rise / 3 },
    { x: at.x + 8, y: at.y - rise, anchor: 'start', hang: 'above', cost: rise / 3 },
    { x: at.x, y: at.y - rise, anchor: 'middle', hang: 'above', cost: rise / 3 + 1 },
  ]);
  const label = { lines, strong: true, ...(mark && { mark }) };
  board.label({ kind: 'sight', name: workstation, label, spots, priority: 2, from: at });
}

/** From the back wall to the stage, below the floor. */
function drawDistance(board: Board, { sketch }: Assessment, { length }: Units): void {
  const { stage } = sketch!.hall;
  if (!stage) return;
  const y = -BELOW * board.sheet.scale;
  const label = { lines: [length(stage.edge)] };
  drawDimension(board, { kind: 'stage-distance', from: { x: 0, y }, to: { x: stage.edge, y }, label });
}

/** What stands there, below the floor. */
function labelHall(board: Board, { sketch }: Assessment): void {
  const { stage, depth, rows, balcony, blocks } = sketch!.hall;
  const put = (kind: string, text: string, y: number, soft = true) => {
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
  if (desk) put('booth', 'booth', (desk.y.min + desk.y.max) / 2, false);
  if (stage) put('stage', 'stage', (stage.edge + (depth ?? stage.edge + USUAL_STAGE)) / 2, false);
  if (rows.length > 0)
    put('row', rows[0]!.standing ? 'people who stand at times' : 'people on seats', (rows[0]!.y + rows.at(-1)!.y) / 2);
  if (balcony?.height === undefined) return;
  const [p, q] = [board.onPaper({ x: 0, y: balcony.height }), board.onPaper({ x: balcony.edge, y: balcony.height })];
  board.label({ kind: 'balcony', label: { lines: ['balcony'], soft: true }, spots: spotsAlong(p, q) });
}

function factsOf(assessment: Assessment, { length }: Units): readonly Fact[] {
  const { hall, sights } = assessment.sketch!;
  const { height, stage, rows } = hall;
  const units = { length } as Units;
  return [
    ...(height === undefined ? [] : [{ what: 'Room height', value: length(height) }]),
    ...(stage?.height === undefined
      ? []
      : [{ what: 'Stage', value: `${length(stage.height)} high, its edge ${length(stage.edge)} from the back wall` }]),
    ...(rows[0]
      ? [
          {
            what: rows[0].standing ? 'People in front, standing' : 'People in front, seated',
            value: `${length(rows[0].top)} to the top of the head`,
          },
        ]
      : []),
    ...sights.map((sight) => ({
      what: `${sight.who}, ${postureWord(sight.posture)} at ${sight.workstation}`,
      value: `eye ${length(sight.eye.z)} above the floor; stage ${stageLines(sight, units).join(', ')}`,
      verdict: verdictOn(assessment, {
        subject: sight.workstation,
        who: sight.who,
        posture: sight.posture,
        checks: ['see-over'],
      }),
    })),
  ];
}

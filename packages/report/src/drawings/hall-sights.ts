import type { Assessment, StageSight } from '@boothwright/fit';
import { postureWord, type Units } from '../words.js';
import type { Board } from './board.js';
import { LINE_HEIGHT, MARK_SIZE, type Point } from './drawing.js';
import { rectangle, stroke } from './geometry.js';
import { labelSize, MARK_GAP, spread, type Label } from './labels.js';
import { area, disc, line } from './shapes.js';
import { stageLines, worstSights } from './side-words.js';
import { shortened, wrapped } from './text-width.js';
import { verdictOn } from './verdicts.js';

/** Lines of sight that one drawing bears. */
const MOST_LINES = 3;
/** Texts beside the stage are at least so wide, above the hall so wide at most. */
const LEAST_WIDTH = 96;
const MOST_WIDTH = 150;
const BETWEEN = 6;
const ASIDE = 14;
const EYE = 2.2;
const HEAD = 110;

/** Lines of sight with their texts, and whether these stand beside the lines' ends or above the hall. */
export interface HallSights {
  readonly sights: readonly StageSight[];
  readonly labels: readonly Label[];
  readonly beside: boolean;
}

/** Of each workstation the person who sees least, the highest line first. `width` and `height` are what is free beside the stage's edge. */
export function hallSights(assessment: Assessment, units: Units, width: number, height: number): HallSights {
  const all = worstSights(assessment.sketch?.sights ?? []);
  const sights = [...all].sort((a, b) => b.lands.z - a.lands.z).slice(0, MOST_LINES);
  const narrow = sights.map((sight) => labelOf(assessment, sight, units, width));
  const beside = width >= LEAST_WIDTH && stackHeight(narrow) <= height;
  const labels = beside ? narrow : sights.map((sight) => labelOf(assessment, sight, units, MOST_WIDTH));
  return { sights, labels, beside };
}

/** How much paper labels take above one another. */
export function stackHeight(labels: readonly Label[]): number {
  return labels.reduce((sum, label) => sum + labelSize(label).height + BETWEEN, 0);
}

function labelOf(assessment: Assessment, sight: StageSight, units: Units, width: number): Label {
  const { workstation, who, posture } = sight;
  const mark = verdictOn(assessment, { subject: workstation, who, posture, checks: ['see-over'] });
  const heading = shortened(`${who}, ${postureWord(posture)}`, width - (mark ? MARK_SIZE + MARK_GAP : 0), true);
  const seen = wrapped(stageLines(sight, units)[0]!, width);
  return { lines: [heading, ...seen], strong: true, ...(mark && { mark }) };
}

/** Head and shoulders of who looks, the line to the stage, and where it passes over what decides; then the texts. */
export function drawHallSights(board: Board, { sights, labels, beside }: HallSights, roof: number | undefined): void {
  const ends = sights.map((sight) => drawSight(board, sight, roof));
  const edge = board.onPaper({ x: sights[0]!.lands.y, y: 0 });
  const wanted = ends.map(({ y }, index) => ({ middle: y, height: labelSize(labels[index]!).height + BETWEEN }));
  const upper = roof === undefined ? 0 : board.onPaper({ x: 0, y: roof }).y;
  const tops = beside ? spread(wanted, upper + BETWEEN, edge.y) : spread(wanted, 2, upper - 2);
  labels.forEach((label, index) => {
    const size = labelSize(label);
    const x = beside ? edge.x + ASIDE : Math.max(2, edge.x - ASIDE - size.width);
    const box = { x, y: tops[index]!, ...size };
    const from = { x: beside ? x - 3 : x + size.width + 3, y: box.y + LINE_HEIGHT / 2 };
    const { workstation } = sights[index]!;
    const leader = [ends[index]!, from].map((place) => board.inWorld(place));
    board.add('sight-leader', workstation, [line(leader, 'hair', 'soft')]);
    board.write('sight', workstation, { ...label, box, anchor: beside ? 'start' : 'end' });
  });
}

/** Gives back where on the paper the line ends. */
function drawSight(board: Board, sight: StageSight, roof: number | undefined): Point {
  const { workstation, eye, over } = sight;
  const { scale } = board.sheet;
  const head = { x: eye.y - HEAD * 0.7, y: eye.z };
  board.add('person', workstation, [
    area(rectangle(head.x - HEAD, eye.z - 700, head.x + HEAD * 0.9, eye.z - HEAD * 1.3), 'hair', 'fill-body'),
    disc(head, HEAD, 'thin', 'fill-body'),
  ]);
  const to = endOf(sight, roof);
  board.add('sight', workstation, [
    line(stroke(eye.y, eye.z, to.x, to.y), 'thin', 'dashed'),
    disc({ x: eye.y, y: eye.z }, EYE * scale, 'fill-solid', 'no-line'),
    ...(over ? [disc({ x: over.y, y: over.z }, EYE * scale, 'fill-paper', 'thin')] : []),
    line(stroke(to.x, to.y - 4 * scale, to.x, to.y + 4 * scale), 'thick'),
  ]);
  return board.onPaper(to);
}

/** Where the line meets the stage's edge, or the roof if it goes there before. */
function endOf({ eye, lands }: StageSight, roof = Infinity): Point {
  if (lands.z <= roof) return { x: lands.y, y: lands.z };
  const share = (roof - eye.z) / (lands.z - eye.z);
  return { x: eye.y + share * (lands.y - eye.y), y: roof };
}

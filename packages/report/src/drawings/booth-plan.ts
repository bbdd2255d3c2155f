import type { Assessment, PlaceSketch } from '@boothwright/fit';
import { listOf } from '@boothwright/fit';
import type { Units } from '../words.js';
import type { Board } from './board.js';
import { drawDimension, drawScaleBar, spotsAlong } from './dimension.js';
import type { Drawing, Fact, Point } from './drawing.js';
import { arc, between, extentOf } from './geometry.js';
import { spotsAround, type Label, type Spot } from './labels.js';
import { clothBeside, drawPieces, drawWalls, headingOf, personFromAbove } from './plan-parts.js';
import { drawSizes, sizeFacts } from './plan-sizes.js';
import { boothExtent, planBoard } from './plan-view.js';
import { bearingWords, clearWords, nameLabel, walkwayLabel } from './plan-words.js';
import { area, line } from './shapes.js';
import { shortened } from './text-width.js';
import { drawingUnits } from './units.js';
import { troubleWith, verdictOn } from './verdicts.js';

/** What a screen's place on the plan decides. */
const SCREEN_PLACE = ['screen-turn', 'screens-fit-desk'];
const NAME_WIDTH = 150;
/** Of the people of one place. */
const MOST_NAMES = 3;

/** The booth from above, with the people at their places and the ways around it; nothing if no desk has a place. */
export function boothPlan(assessment: Assessment, width: number): Drawing | undefined {
  const extent = assessment.sketch && boothExtent(assessment);
  if (!extent) return undefined;
  const edges = { top: 44, sides: 16, bottom: 40 };
  const board = planBoard(extent, edges, { width, height: Math.max(520, width * 0.85), scale: 4 });
  const units = drawingUnits(assessment.booth.show);
  const { places } = assessment.sketch.plan;

  drawScaleBar(board, assessment.booth.show, { x: 12, y: board.sheet.height - 11 }, width / 5);
  drawOccupied(board, assessment);
  drawWalls(board, assessment);
  drawSeating(board, assessment);
  drawBearings(board, assessment);
  drawPieces(board, assessment);
  drawSkirts(board, assessment);
  for (const place of places) drawPlace(board, place, units);
  drawSizes(board, assessment, units);
  drawWalkways(board, assessment, units);
  for (const place of places) labelPlace(board, assessment, place);
  labelPieces(board, assessment);

  const facts = factsOf(assessment, units);
  return {
    kind: 'booth-plan',
    title: `${assessment.booth.name}: the booth from above`,
    description: describe(assessment, facts),
    ...board.finished(),
    facts,
  };
}

function drawOccupied(board: Board, { layout }: Assessment): void {
  layout.occupied.forEach(({ workstation, outline }, index) => {
    board.add('occupied', workstation, [area(outline, 'fill-wash', 'no-line'), area(outline, 'hair', 'dashed')]);
    board.labels.avoid(
      outline.map((corner) => board.onPaper(corner)),
      true,
    );
    if (index > 0) return;
    const [a, b, c, d] = outline.map((corner) => board.onPaper(corner)) as [Point, Point, Point, Point];
    const spots = [0.14, 0.86, 0.3, 0.7].flatMap((along) =>
      [0.82, 0.5].map((away) => {
        const place = between(between(d, c, along), between(a, b, along), away);
        return { ...place, anchor: 'middle', hang: 'middle', cost: 0 } satisfies Spot;
      }),
    );
    board.label({
      kind: 'occupied',
      label: { lines: ['occupied seats'], soft: true },
      spots,
      priority: -2,
      dearest: 12,
    });
  });
}

function drawSeating(board: Board, { sketch }: Assessment): void {
  const [nearest] = sketch!.plan.rows;
  if (!nearest) return;
  const y = board.onPaper(nearest[0]).y;
  if (y < 0) return;
  board.add('row', undefined, [line(nearest, 'medium', 'chain', 'soft')]);
  const ends = [
    { x: 10, y },
    { x: board.sheet.width - 10, y },
  ] as const;
  board.labels.avoid(ends);
  board.label({ kind: 'row', label: { lines: ['nearest row'], soft: true }, spots: spotsAlong(...ends) });
}

/** The back wall by name, and the way to the stage. */
function drawBearings(board: Board, { layout }: Assessment): void {
  const { width } = board.sheet;
  const head = { x: width - 14, y: 8 };
  const tail = { x: head.x, y: 34 };
  const barbs = [-4, 4].map((side) => ({ x: head.x + side, y: head.y + 7 }));
  board.add('stage-arrow', undefined, [
    line(
      [tail, head].map((place) => board.inWorld(place)),
      'thin',
    ),
    line(
      [barbs[0]!, head, barbs[1]!].map((place) => board.inWorld(place)),
      'thin',
    ),
  ]);
  board.label({
    kind: 'stage-arrow',
    label: { lines: ['to the stage'], soft: true },
    spots: [{ x: head.x - 8, y: 20, anchor: 'end', hang: 'middle', cost: 0 }],
    priority: 8,
  });
  const wall = board.onPaper({ x: 0, y: 0 }).y;
  if (!layout.room || wall < 0 || wall > board.sheet.height) return;
  const spots = [0.5, 0.7, 0.3, 0.85].map((along): Spot => ({
    x: along * width,
    y: wall + 5,
    anchor: 'middle',
    hang: 'below',
    cost: 0,
  }));
  board.label({ kind: 'wall', label: { lines: ['back wall'], soft: true }, spots, dearest: 9 });
}

function drawSkirts(board: Board, assessment: Assessment): void {
  const { layout, sketch } = assessment;
  const desks = extentOf(layout.pieces.filter(({ kind }) => kind === 'desk').flatMap(({ outline }) => outline));
  if (!desks) return;
  const inside = { x: (desks.left + desks.right) / 2, y: (desks.bottom + desks.top) / 2 };
  for (const { name, runs } of sketch!.plan.skirts) {
    if (runs.length === 0) continue;
    const about = { kind: 'skirt', subject: name } as const;
    const cloths = runs.map((run) => clothBeside(run, inside, 3.5 * board.sheet.scale));
    board.add(
      'skirt',
      name,
      cloths.map((cloth) => line(cloth, 'medium', 'dotted')),
      troubleWith(assessment, about),
    );
    for (const cloth of cloths) board.labels.avoid(cloth.map((point) => board.onPaper(point)));
    const [p, q] = cloths[0]!.map((point) => board.onPaper(point)) as [Point, Point];
    const middle = board.onPaper(inside);
    const outside = spotsAlong(p, q).filter(
      ({ x, y }) =>
        Math.hypot(x - middle.x, y - middle.y) > Math.hypot((p.x + q.x) / 2 - middle.x, (p.y + q.y) / 2 - middle.y),
    );
    board.label({
      kind: 'skirt',
      name,
      label: nameLabel(assessment, `skirt ${name}`, about, { soft: true }),
      spots: outside,
    });
  }
}

function drawPlace(board: Board, place: PlaceSketch, { length }: Units): void {
  const { workstation, at, facing, reach, screens, controls, trunk } = place;
  for (const { name, outline } of controls) {
    board.add('control', name, [area(outline, 'thin', 'fill-paper')], undefined, workstation);
    board.labels.avoid(
      outline.map((corner) => board.onPaper(corner)),
      true,
    );
  }
  const ahead = 90 - facing;
  const often = arc(at, reach.often, ahead - 80, ahead + 80);
  board.add('reach', workstation, [
    line(often, 'dotted', 'soft'),
    ...(reach.farthest ? [line(arc(at, reach.farthest.radius, ahead - 60, ahead + 60), 'dotted', 'faint')] : []),
  ]);
  board.label({
    kind: 'reach',
    name: workstation,
    label: { lines: [`reach ${length(reach.often)}`], soft: true },
    spots: [often[0]!, often[often.length - 1]!].flatMap((end) => spotsAround(board.onPaper(end), 7, 3)),
    priority: -3,
    dearest: 24,
  });
  board.add('person', workstation, personFromAbove(place));
  if (trunk) {
    const middle = board.onPaper(trunk.at);
    const half = trunk.breadth / 2 / board.sheet.scale;
    board.labels.avoidArea({ x: middle.x - half, y: middle.y - half * 0.8, width: 2 * half, height: 1.6 * half });
  }
  for (const { name, face, middle, main } of screens) {
    board.add('bearing', name, [line([at, middle], 'hair', 'soft', 'dashed')], undefined, workstation);
    board.add('monitor', name, [line(face, 'thick', ...(main ? [] : (['soft'] as const)))], undefined, workstation);
    board.labels.avoid(face.map((end) => board.onPaper(end)));
    board.labels.avoid([board.onPaper(at), board.onPaper(middle)]);
  }
}

function drawWalkways(board: Board, assessment: Assessment, units: Units): void {
  for (const { name, across } of assessment.sketch!.plan.walkways) {
    if (!across.some((end) => isOnPaper(board, end))) continue;
    const label = walkwayLabel(assessment, name, units);
    drawDimension(board, { kind: 'walkway', name, from: across[0], to: across[1], label, verdict: label.mark });
  }
}

function isOnPaper(board: Board, point: Point): boolean {
  const { x, y } = board.onPaper(point);
  return x >= 0 && y >= 0 && x <= board.sheet.width && y <= board.sheet.height;
}

function labelPlace(board: Board, assessment: Assessment, place: PlaceSketch): void {
  const { workstation, people, screens, controls } = place;
  const mark = troubleWith(assessment, { kind: 'workstation', subject: workstation });
  const few = people.length > MOST_NAMES ? people.slice(0, MOST_NAMES - 1) : people;
  const rest = people.length > few.length ? [`and ${people.length - few.length} more`] : [];
  const names = [...few.map((name) => shortened(name, NAME_WIDTH)), ...rest];
  const label: Label = {
    lines: [shortened(workstation, NAME_WIDTH, true), ...names],
    strong: true,
    ...(mark && { mark }),
  };
  board.label({ kind: 'workstation', name: workstation, label, spots: besidePerson(board, place), priority: 3 });
  for (const screen of screens) {
    const { name, middle, face } = screen;
    const { lines, ...looks } = nameLabel(
      assessment,
      name,
      { kind: 'monitor', subject: name, checks: SCREEN_PLACE },
      { strong: true },
    );
    const spots = [
      ...spotsAlong(board.onPaper(face[0]), board.onPaper(face[1])),
      ...spotsAround(board.onPaper(middle), 8),
    ];
    board.label({
      kind: 'monitor',
      name,
      station: workstation,
      label: { lines: [...lines, bearingWords(screen)], ...looks },
      spots,
      priority: 2,
      from: board.onPaper(middle),
    });
  }
  for (const { name, outline } of controls) {
    const middle = board.onPaper(between(outline[0]!, outline[2]!, 0.5));
    const inside = { ...middle, anchor: 'middle', hang: 'middle', cost: -4 } as const;
    const spots = [inside, ...spotsAround(middle, 8)];
    board.label({
      kind: 'control',
      name,
      station: workstation,
      label: nameLabel(assessment, name, { kind: 'control', subject: name }),
      spots,
      priority: 1,
      from: middle,
    });
  }
}

/** Right and left of the trunk, then behind it. */
function besidePerson(board: Board, { at, trunk, facing }: PlaceSketch): Spot[] {
  if (!trunk) return spotsAround(board.onPaper(at), 8);
  const way = headingOf(facing);
  const behind = board.onPaper({ x: trunk.at.x - 280 * way.x, y: trunk.at.y - 280 * way.y });
  const sides = [1, -1].flatMap((side) =>
    [60, 120, 200].map((far, step): Spot => {
      const out = side * (trunk.breadth / 2 + far);
      const place = board.onPaper({
        x: trunk.at.x + out * way.y - 90 * way.x,
        y: trunk.at.y - out * way.x - 90 * way.y,
      });
      const right = place.x >= board.onPaper(trunk.at).x;
      return { ...place, anchor: right ? 'start' : 'end', hang: 'middle', cost: 3 * step + (side === 1 ? 0 : 1) };
    }),
  );
  return [...sides, ...spotsAround(behind, 4).map((spot) => ({ ...spot, cost: spot.cost + 6 }))];
}

function labelPieces(board: Board, assessment: Assessment): void {
  for (const { name, kind, outline } of assessment.layout.pieces) {
    const [a, b, c, d] = outline.map((corner) => board.onPaper(corner)) as [Point, Point, Point, Point];
    const middle = between(a, c, 0.5);
    if (middle.x < 0 || middle.y < 0 || middle.x > board.sheet.width || middle.y > board.sheet.height) continue;
    const inner = [0.12, 0.88, 0.25, 0.75, 0.5].flatMap((along) =>
      [0.85, 0.5, 0.2].map((away, turn): Spot => {
        const place = between(between(a, b, along), between(d, c, along), away);
        return { ...place, anchor: 'middle', hang: 'middle', cost: 2 * turn };
      }),
    );
    const label = nameLabel(assessment, `${kind} ${name}`, { kind, subject: name }, { soft: true });
    board.label({ kind, name, label, spots: [...inner, ...spotsAround(middle, 12)] });
  }
}

function factsOf(assessment: Assessment, units: Units): readonly Fact[] {
  const { plan } = assessment.sketch!;
  return [
    ...assessment.walkways.map(({ name }) => ({
      what: `Walkway ${name}`,
      value: clearWords(assessment, name, units),
      verdict: verdictOn(assessment, { kind: 'walkway', subject: name }),
    })),
    ...sizeFacts(assessment, units),
    ...plan.places.flatMap(({ workstation, screens, reach }) => [
      ...screens.map((screen) => ({
        what: `${screen.name} from ${workstation}`,
        value: bearingWords(screen),
        verdict: verdictOn(assessment, { kind: 'monitor', subject: screen.name, checks: SCREEN_PLACE }),
      })),
      {
        what: `Reach at ${workstation}`,
        value: `${units.length(reach.often)} for what is used all the time${
          reach.farthest ? `, ${units.length(reach.farthest.radius)} at most for the arms of ${reach.farthest.who}` : ''
        }`,
      },
    ]),
  ];
}

function describe(assessment: Assessment, facts: readonly Fact[]): string {
  const places = assessment.sketch!.plan.places.map(
    ({ workstation, people }) => `${listOf(people) || 'nobody'} at ${workstation}`,
  );
  const ways = facts.filter(({ what }) => what.startsWith('Walkway')).map(({ what, value }) => `${what}: ${value}.`);
  return `The booth from above, the stage beyond the upper edge: ${listOf(places)}. ${ways.join(' ')}`.trim();
}

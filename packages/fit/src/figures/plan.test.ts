import { describe, expect, it } from 'vitest';
import { assess } from '../assess/assess.js';
import type { Booth } from '../booth.js';
import { aBooth, aDesk, anOperator, aPlacement, aRoom, aSeat, aStation, given, nowhere } from '../testing/booths.js';
import { aColumn, aDoor, aSkirt, aWalkway, aWheelchairSpace } from '../testing/floor.js';
import { aMonitor, aScreen } from '../testing/screens.js';
import { STAGE_DEPTH, type PlanSketch } from './figures.js';

function booth(parts: Partial<Booth> = {}): Booth {
  return aBooth({
    operators: [anOperator('Noor', { stature: 1600 })],
    desks: [aDesk('Left', 1000), aDesk('Right', 1000)],
    seats: [aSeat('Tall', 700, { base: given(500) })],
    placements: [aPlacement(['Left', 'Right'], 3000, 2000)],
    workstations: [aStation('Sound', 'Left', 'Tall', ['Noor'])],
    room: aRoom(12_000, 20_000),
    ...parts,
  });
}

const planOf = (parts: Partial<Booth> = {}): PlanSketch => assess(booth(parts)).sketch!.plan;
const length = ([p, q]: readonly [{ x: number; y: number }, { x: number; y: number }]) =>
  Math.hypot(q.x - p.x, q.y - p.y);

describe('walkways', () => {
  const walkways = [
    aWalkway('Behind', ['booth', 'back-wall'], { serves: given(20) }),
    aWalkway('Beside', ['Right', 'right-wall'], { serves: given(20) }),
    aWalkway('Front', ['booth', 'seating'], { serves: given(20) }),
    aWalkway('Narrowed', ['Right', 'back-wall'], {
      serves: given(20),
      projections: [{ origin: nowhere, height: given(1000), reach: given(150) }],
    }),
  ];
  const room = aRoom(12_000, 20_000, {
    columns: [aColumn('Pillar', 8000, 2200, 300, 300)],
    seating: { origin: nowhere, first: given(1200), standing: false },
  });
  const assessment = assess(booth({ walkways, room }));

  it.each(['Behind', 'Beside', 'Front', 'Narrowed'])('%s is as long across as it is clear', (name) => {
    const { across } = assessment.sketch!.plan.walkways.find((one) => one.name === name)!;
    const { clear } = assessment.walkways.find((one) => one.name === name)!;
    expect(clear).toBeGreaterThan(0);
    expect(length(across)).toBeCloseTo(clear!, 6);
  });

  it('is measured from behind the occupied seat, in the middle of the desk', () => {
    const { across } = assessment.sketch!.plan.walkways[0]!;
    expect(across[0].x).toBeCloseTo(3750, 6);
    expect(across[0].y).toBeCloseTo(2000 - 482.6, 6);
    expect(across[1].y).toBeCloseTo(0, 6);
  });

  it('is left out where one side has no place', () => {
    expect(planOf({ walkways: [aWalkway('Nowhere', ['booth', 'stage'])] }).walkways).toEqual([]);
  });
});

describe('places', () => {
  const screens = [aScreen('Cues', 600, 'centre', 1200, { turn: given(-30) })];
  const workstations = [aStation('Sound', 'Left', 'Tall', ['Noor'], { screens, lean: given(100) })];

  it.each([
    ['towards the stage', 0, { x: 3750, y: 2100 }, { x: 3750, y: 1900 }],
    ['to the right', 90, { x: 3100, y: 1250 }, { x: 2900, y: 1250 }],
    ['back', 180, { x: 2250, y: 1900 }, { x: 2250, y: 2100 }],
  ] as const)('stand over the near edge of a desk that faces %s', (_, turn, at, behind) => {
    const placements = [aPlacement(['Left'], 3000, 2000, turn)];
    const [place] = planOf({ placements, workstations }).places;
    expect(place!.at.x).toBeCloseTo(at.x, 6);
    expect(place!.at.y).toBeCloseTo(at.y, 6);
    expect(place!.facing).toBeCloseTo(turn, 6);
    const { trunk } = place!;
    const way = { x: behind.x - at.x, y: behind.y - at.y };
    expect((trunk!.at.x - at.x) * way.x + (trunk!.at.y - at.y) * way.y).toBeGreaterThan(0);
  });

  it('have their screens where they stand', () => {
    const [place] = planOf({ monitors: [aMonitor('Cues')], workstations }).places;
    const [screen] = place!.screens;
    expect(screen!.bearing).toBeCloseTo(-30, 6);
    expect(screen!.middle.x).toBeCloseTo(3750 - 500 * Math.tan(Math.PI / 6), 6);
    expect(screen!.middle.y).toBeCloseTo(2600, 6);
    expect(length(screen!.face)).toBeCloseTo(400, 6);
  });

  it('have their controls where they stand: straight ahead, or so far from the left end', () => {
    const control = {
      name: 'Faders',
      origin: nowhere,
      setback: given(200),
      ...{ depth: given(100), width: given(400), height: given(0), use: given('constant' as const) },
    };
    const controls = [control, { ...control, name: 'Spare', at: given(300) }, { ...control, setback: undefined }];
    const [place] = planOf({ workstations: [aStation('Sound', 'Left', 'Tall', ['Noor'], { controls })] }).places;
    expect(place!.controls.map(({ name, outline }) => [name, outline[0], outline[2]])).toEqual([
      ['Faders', { x: 3550, y: 2200 }, { x: 3950, y: 2300 }],
      ['Spare', { x: 3100, y: 2200 }, { x: 3500, y: 2300 }],
    ]);
  });

  it('are drawn for the broadest who works there, and without a body where nobody does', () => {
    const operators = [
      anOperator('Noor', { stature: 1600, forearmForearmBreadth: 480 }),
      anOperator('Tobias', { stature: 1850, forearmForearmBreadth: 560 }),
    ];
    const breadthOf = (...people: string[]) =>
      planOf({ operators, workstations: [aStation('Sound', 'Left', 'Tall', people)] }).places[0]!.trunk?.breadth;
    expect([breadthOf('Noor', 'Tobias'), breadthOf('Tobias', 'Noor'), breadthOf('Noor'), breadthOf()]).toEqual([
      560,
      560,
      480,
      undefined,
    ]);
  });

  it('tell how far hands reach', () => {
    const [place] = planOf().places;
    expect(place!.reach.often).toBe(400);
    expect(place!.reach.farthest!.who).toBe('Noor');
    expect(place!.reach.farthest!.radius).toBeGreaterThan(400);
  });
});

describe('the room', () => {
  it('has its stage up to the stage wall, as wide as it is or as the room', () => {
    const stage = { origin: nowhere, edge: given(15_000), height: given(900) };
    expect(planOf({ room: aRoom(12_000, 20_000, { stage }) }).stage).toEqual({
      outline: [
        { x: 0, y: 15_000 },
        { x: 12_000, y: 15_000 },
        { x: 12_000, y: 20_000 },
        { x: 0, y: 20_000 },
      ],
      widthIsSaid: false,
    });
    const { depth: _, ...open } = aRoom(12_000, 20_000, { stage: { ...stage, width: given(6000) } });
    expect(planOf({ room: open }).stage!.outline).toEqual([
      { x: 3000, y: 15_000 },
      { x: 9000, y: 15_000 },
      { x: 9000, y: 15_000 + STAGE_DEPTH },
      { x: 3000, y: 15_000 + STAGE_DEPTH },
    ]);
  });

  it.each([
    ['back-wall', 'in', 'left', [1000, 0, 1900, 0], [1900, 0], [1900, 900]],
    ['back-wall', 'out', 'right', [1000, 0, 1900, 0], [1000, 0], [1000, -900]],
    ['stage-wall', 'in', 'left', [1000, 20_000, 1900, 20_000], [1000, 20_000], [1000, 19_100]],
    ['left-wall', 'in', 'right', [0, 1000, 0, 1900], [0, 1900], [900, 1900]],
    ['right-wall', 'out', 'right', [12_000, 1000, 12_000, 1900], [12_000, 1000], [12_900, 1000]],
  ] as const)('has a door in the %s that opens %s, hinged on the %s', (wall, opens, hinge, opening, at, leaf) => {
    const doors = [aDoor('Main', wall, 1000, 900, { opens: given(opens), hinge: given(hinge) })];
    const [door] = planOf({ room: aRoom(12_000, 20_000, { doors }) }).doors;
    expect(door!.opening).toEqual([
      { x: opening[0], y: opening[1] },
      { x: opening[2], y: opening[3] },
    ]);
    expect(door!.hinge).toEqual({ x: at[0], y: at[1] });
    expect(door!.leaf).toEqual({ x: leaf[0], y: leaf[1] });
  });

  it('has rows across it, and wheelchair spaces', () => {
    const { rows, wheelchairSpaces } = planOf({
      room: aRoom(12_000, 20_000, {
        seating: { origin: nowhere, first: given(1000), pitch: given(900), rows: given(3), standing: false },
        wheelchairSpaces: [aWheelchairSpace('Bay', 500, 500)],
      }),
    });
    expect(rows.map(([p, q]) => [p.x, p.y, q.x])).toEqual([
      [0, 3700, 12_000],
      [0, 4600, 12_000],
      [0, 5500, 12_000],
    ]);
    expect(wheelchairSpaces[0]!.outline[2]).toEqual({ x: 1414, y: 1720 });
  });

  it('has watchers where they are, and leaves out what has no place', () => {
    const watcher = { name: 'Back', origin: nowhere, at: given({ x: 500, y: 600 }), posture: given('sit' as const) };
    const unplaced = { at: undefined };
    const plan = planOf({
      room: aRoom(12_000, 20_000, {
        watchers: [watcher, { ...watcher, name: 'Lost', ...unplaced }],
        wheelchairSpaces: [{ ...aWheelchairSpace('Lost', 0, 0), ...unplaced }],
        doors: [{ ...aDoor('Lost', 'back-wall', 0, 900), ...unplaced }],
      }),
    });
    expect(plan.watchers).toEqual([{ name: 'Back', at: { x: 500, y: 600 } }]);
    expect([plan.wheelchairSpaces, plan.doors]).toEqual([[], []]);
  });
});

describe('a skirt', () => {
  it('runs along far edges, and along ends that no other desk of it meets', () => {
    const sides = given(['front', 'ends'] as const);
    const [skirt] = planOf({ skirts: [aSkirt('Cloth', ['Left', 'Right'], { sides })] }).skirts;
    expect(skirt!.runs.map(length)).toEqual([1500, 700, 1500, 700]);
    const ends = skirt!.runs.filter((run) => length(run) === 700).map(([p]) => p.x);
    expect(ends).toEqual([3000, 6000]);
  });

  it('runs along the front alone unless the file says more', () => {
    const [skirt] = planOf({ skirts: [aSkirt('Cloth', ['Left'])] }).skirts;
    expect(skirt!.runs).toEqual([
      [
        { x: 3000, y: 2700 },
        { x: 4500, y: 2700 },
      ],
    ]);
  });
});

describe('the balcony', () => {
  const balcony = { origin: nowhere, edge: given(3000) };
  const shown = (parts: Partial<Booth>) =>
    planOf({ room: { ...aRoom(12_000, 20_000, { balcony }), width: undefined }, ...parts }).balcony;

  it('reaches over all that is placed where the width of the room is not said', () => {
    expect(shown({})!.map(({ y }) => y)).toEqual([3000, 3000]);
    expect(shown({})![1].x).toBeGreaterThan(5000);
  });

  it('is left out where nothing says how far it reaches', () => {
    expect(shown({ placements: [] })).toBeUndefined();
  });
});

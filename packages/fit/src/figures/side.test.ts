import { describe, expect, it } from 'vitest';
import { assess } from '../assess/assess.js';
import type { Assessment } from '../assessment.js';
import type { Booth, Desk, Monitor, ScreenUse, Skirt } from '../booth.js';
import {
  aBooth,
  aCrowd,
  aDesk,
  aMeasuredOperator,
  anOperator,
  aSeat,
  aStation,
  given,
  nowhere,
  range,
  ringAt,
  ringBelow,
} from '../testing/booths.js';
import { aRack, under } from '../testing/floor.js';
import { wholeBody } from '../testing/findings.js';
import { aMonitor, aScreen } from '../testing/screens.js';
import type { SideSketch } from './figures.js';

const body = wholeBody({
  stature: 1650,
  sittingHeight: 870,
  sittingEyeHeight: 760,
  sittingElbowHeight: 230,
  thighClearance: 160,
  poplitealHeight: 400,
  sittingKneeHeight: 520,
  standingShoulderHeight: 1350,
  standingElbowHeight: 1030,
  standingEyeHeight: 1540,
});
const noor = aMeasuredOperator('Noor', body);

function sitting(parts: Partial<Booth> = {}): Assessment {
  return assess(
    aBooth({
      operators: [noor],
      desks: [aDesk('Left', 760)],
      seats: [aSeat('Tall', 520)],
      workstations: [aStation('Sound', 'Left', 'Tall', ['Noor'])],
      ...parts,
    }),
  );
}

const sideOf = (assessment: Assessment): SideSketch => assessment.sketch!.sides[0]!;
const measured = ({ findings }: Assessment, check: string) => findings.find((one) => one.check === check)!.measured;

describe('someone who sits', () => {
  const { body: joints, eye, elbow } = sideOf(sitting());

  it('has every height of the body above the seat, the slump taken off eye and shoulder', () => {
    expect(joints.eye).toEqual({ x: 0, z: 520 + 760 - 40 });
    expect(joints.crown.z).toBe(520 + 870 - 40);
    expect(joints.shoulder).toEqual({ x: 0, z: 520 + 870 - (1650 - 1350) - 40 });
    expect(joints.elbow.z).toBe(520 + 230);
    expect(eye).toEqual({ height: 1240, low: 1240, high: 1240 });
    expect(elbow).toEqual({ height: 750, low: 750, high: 750 });
  });

  it('keeps the length of upper arm and forearm', () => {
    const { shoulder, elbow: joint, hand } = joints;
    const upperArm = 870 - (1650 - 1350) - 230;
    expect(Math.hypot(joint.x - shoulder.x, joint.z - shoulder.z)).toBeCloseTo(upperArm, 6);
    expect(Math.hypot(hand.x - joint.x, hand.z - joint.z)).toBeCloseTo(body.forearmHandLength, 6);
    expect(hand.z).toBe(760);
  });

  it.each([
    ['on the floor, too low', {}, 520, 520 - 425, 95],
    ['on a ring in reach', ringBelow(400), 520, 120, 0],
    ['on a ring too far below', ringBelow(450), 520, 95, 25],
    ['on a ring that pushes the knees up', ringAt(150), 520, 150, 0],
  ] as const)('has the feet %s', (_, ring, seat, sole, hang) => {
    const { body: low } = sideOf(sitting({ seats: [aSeat('Tall', seat, ring)] }));
    expect(low.toe.z).toBeCloseTo(sole, 6);
    expect(low.feetHang).toBeCloseTo(hang, 6);
    expect(low.toe.x - low.heel.x).toBeCloseTo(body.footLength, 6);
  });

  it('leans where the workstation says', () => {
    const station = aStation('Sound', 'Left', 'Tall', ['Noor'], { lean: given(150) });
    expect(sideOf(sitting({ workstations: [station] })).body.eye.x).toBe(150);
  });
});

describe('someone who stands', () => {
  const {
    body: joints,
    eye,
    seat,
    thighRoom,
  } = sideOf(sitting({ workstations: [aStation('Sound', 'Left', undefined, ['Noor'])] }));

  it('has every height of the body above the floor, with shoes', () => {
    expect(joints.eye).toEqual({ x: 0, z: 1565 });
    expect(eye.height).toBe(1565);
    expect(joints.elbow).toEqual({ x: 0, z: 1055 });
    expect(joints.crown.z).toBe(1675);
    expect(joints.shoulder.z).toBe(1375);
    expect(joints.heel.z).toBe(0);
  });

  it('has neither seat nor thighs under the desk', () => {
    expect(seat).toBeUndefined();
    expect(thighRoom).toBeUndefined();
  });
});

describe('what is drawn is what was judged', () => {
  const monitor: Monitor = aMonitor('Cues');
  const screen: ScreenUse = aScreen('Cues', 600, 'centre', 1100, { turn: given(30) });
  const assessment = sitting({
    operators: [anOperator('Noor', { stature: 1650 })],
    desks: [
      aDesk('Left', [700, 800], {
        hanging: [{ kind: 'tray', origin: nowhere, drop: given(60), fromEdge: given(100), depth: given(200) }],
      }),
    ],
    seats: [aSeat('Tall', [450, 600], { kind: 'chair', ...ringBelow(420) })],
    monitors: [monitor],
    workstations: [aStation('Sound', 'Left', 'Tall', ['Noor'], { screens: [screen] })],
  });
  const side = sideOf(assessment);

  it('the work against the elbow', () => {
    expect(side.workAboveElbow).toBeCloseTo(measured(assessment, 'seated-elbow')!, 6);
  });

  it('the room above the thigh, under the tray', () => {
    const { room, x, underside } = side.thighRoom!;
    expect(room).toBeCloseTo(measured(assessment, 'thigh-room')!, 6);
    expect(underside).toBeCloseTo(side.desk.height - 25 - 60, 6);
    expect(x).toBe(200);
  });

  it('the room above the thigh, or the least gap for anyone where that decides', () => {
    const under = (height: number, thigh: number) => {
      const operators = [aMeasuredOperator('Noor', wholeBody({ thighClearance: thigh }))];
      const desks = [aDesk('Left', height)];
      const seats = [aSeat('Tall', 450, { kind: 'chair' })];
      const workstations = [aStation('Sound', 'Left', 'Tall', ['Noor'])];
      return assess(aBooth({ operators, desks, seats, workstations }));
    };
    const told = (height: number, thigh: number) => {
      const found = under(height, thigh);
      const { measured: value, verdict } = found.findings.find(({ check }) => check === 'thigh-room')!;
      const { room, least } = sideOf(found).thighRoom!;
      return { value, verdict, room, least };
    };
    // A top of 25 over a seat of 450: 165 from the seat, where 178 is the least, 25 above the thigh.
    const slim = told(640, 140);
    expect(slim).toMatchObject({ verdict: 'fail', value: 165, room: 25, least: { seat: 450, gap: 165 } });
    expect(slim.least!.wanted).toBeCloseTo(177.8, 6);
    const stout = told(640, 190);
    expect(stout).toMatchObject({ verdict: 'fail', value: -25, room: -25 });
    expect(stout.least).toBeUndefined();
    expect(told(680, 140)).toMatchObject({ verdict: 'pass', room: 65, least: undefined });
  });

  it('the room at the knees: to the far edge, or to what stands before it', () => {
    expect(side.kneeRoom).toEqual({ deep: 700, wide: 1500, end: 'the far edge' });
    const racks = [{ ...aRack('Power', 8, under('Left', 500, 450)) }];
    expect(sideOf(sitting({ racks })).kneeRoom).toMatchObject({ deep: 450, end: 'the rack Power' });
  });

  it('the distance to the screen, swung into the drawing', () => {
    const [{ distance, centre, bearing, gaze }] = side.screens as [SideSketch['screens'][0]];
    expect(distance).toBeCloseTo(measured(assessment, 'screen-distance')!, 6);
    expect(Math.hypot(centre.x - side.body.eye.x, centre.z - side.body.eye.z)).toBeCloseTo(distance, 6);
    expect(bearing).toBeCloseTo(30, 6);
    expect((Math.atan2(centre.z - side.body.eye.z, centre.x) * 180) / Math.PI).toBeCloseTo(gaze, 6);
  });

  it('a screen on an arm where each sets it, with how far it goes', () => {
    const height = { line: 'centre', over: 'desk', distance: range(50, 500) } as const;
    const arm = aScreen('Cues', 700, 'centre', 0, { height });
    const sketches = sitting({
      operators: [noor, aMeasuredOperator('Olaf', { ...body, sittingEyeHeight: 860 })],
      monitors: [aMonitor('Cues')],
      workstations: [aStation('Sound', 'Left', 'Tall', ['Noor', 'Olaf'], { screens: [arm] })],
    }).sketch!.sides;
    const screens = sketches.map(({ screens: [screen] }) => screen!);
    // Over a desk at 760, 300 high. Both have it 15° below their eyes.
    for (const { reach, gaze } of screens) {
      expect(reach).toEqual({ min: 660, max: 1410 });
      expect(gaze).toBeCloseTo(-15, 6);
    }
    expect(screens[1]!.centre.z - screens[0]!.centre.z).toBeCloseTo(100, 6);
    expect(side.screens[0]!.reach).toBeUndefined();
  });

  it('holds the average inside the spread', () => {
    for (const { height, low, high } of [side.eye, side.elbow]) {
      expect(low).toBeLessThanOrEqual(height + 1);
      expect(high).toBeGreaterThanOrEqual(height - 1);
    }
  });
});

describe('spreads', () => {
  it('widen with what is not known', () => {
    const width = (booth: Partial<Booth>) => {
      const { eye } = sideOf(sitting({ desks: [aDesk('Left', 1050)], ...booth }));
      return eye.high - eye.low;
    };
    const standing = (who: string) => [aStation('Sound', 'Left', undefined, [who])];
    const known = width({ workstations: standing('Noor') });
    const stature = width({ operators: [anOperator('Noor', { stature: 1650 })], workstations: standing('Noor') });
    const crowd = width({ crowds: [aCrowd('Rota', 0.5)], workstations: standing('Rota') });
    expect(known).toBe(0);
    expect(stature).toBeGreaterThan(5);
    expect(crowd).toBeGreaterThan(4 * stature);
  });
});

describe('a skirt', () => {
  const cloth = (sides: readonly ('front' | 'ends')[], drop = 735): Skirt => ({
    name: 'Cloth',
    origin: nowhere,
    on: [{ name: 'Left', origin: nowhere }],
    sides: given(sides),
    drop: given(drop),
  });
  const skirt = (sides: readonly ('front' | 'ends')[]) => sideOf(sitting({ skirts: [cloth(sides)] })).skirts;

  it('hangs on the far edge, its hem above the floor', () => {
    expect(skirt(['front'])).toEqual([{ name: 'Cloth', x: 700, top: 760, hem: 25 }]);
  });

  it('is not seen from the side where it hangs on the ends alone', () => {
    expect(skirt(['ends'])).toEqual([]);
  });

  it('is the new one where nothing else of the workstation changed', () => {
    const { booth, sketch } = sitting({ skirts: [cloth(['front'])] });
    const [before] = sketch!.sides;
    const after = sideOf(assess({ ...booth, skirts: [cloth(['front'], 600)] }));
    expect(after.body).toBe(before!.body);
    expect(after.skirts).toEqual([{ name: 'Cloth', x: 700, top: 760, hem: 160 }]);
  });
});

describe('the sketch', () => {
  it('is made once, when it is asked for', () => {
    const assessment = sitting();
    expect(assessment.sketch).toBe(assessment.sketch);
    expect(structuredClone(assessment).sketch).toEqual(assessment.sketch);
  });

  it('leaves out whom it cannot place', () => {
    const { height: _, ...desk } = aDesk('Left', 760);
    expect(sitting({ desks: [desk] }).sketch!.sides).toEqual([]);
  });
});

describe('the desk', () => {
  const deskOf = (parts: Partial<Desk>) => sideOf(sitting({ desks: [aDesk('Left', 760, parts)] })).desk;
  const hanging = (parts: object) =>
    deskOf({ hanging: [{ kind: 'tray', origin: nowhere, fromEdge: given(50), ...parts }] });

  it('shows what hangs below it: to where it says, or to the far edge; nothing of which the drop is not said', () => {
    expect(hanging({ drop: given(80), depth: given(300) }).hanging).toEqual([
      { kind: 'tray', from: 50, to: 350, drop: 80 },
    ]);
    expect(hanging({ drop: given(80) }).hanging).toEqual([{ kind: 'tray', from: 50, to: 700, drop: 80 }]);
    expect(hanging({ depth: given(300) }).hanging).toEqual([]);
  });

  it('shows its legs, as thick as it says or as legs usually are', () => {
    const legs = { origin: nowhere, inset: given(100) };
    expect(deskOf({ legs: { ...legs, depth: given(500), thickness: given(40) } }).legs).toEqual({
      from: 100,
      to: 600,
      thickness: 40,
    });
    expect(deskOf({ legs }).legs).toEqual({ from: 100, to: 100, thickness: 50 });
    expect(deskOf({}).legs).toBeUndefined();
  });

  it('shows a closed front with the room for toes that it leaves', () => {
    const toeSpace = { origin: nowhere, depth: given(110), height: given(120) };
    expect(deskOf({ closed: true, toeSpace }).front).toEqual({ toeDepth: 110, toeHeight: 120 });
    expect(deskOf({ closed: true }).front).toEqual({ toeDepth: 0, toeHeight: 0 });
    expect(deskOf({ toeSpace }).front).toBeUndefined();
  });

  it('has its controls where they stand, but those of which that is not said', () => {
    const control = {
      name: 'Faders',
      origin: nowhere,
      setback: given(200),
      ...{ depth: given(150), width: given(400), height: given(60), use: given('constant' as const) },
    };
    const station = aStation('Sound', 'Left', 'Tall', ['Noor'], {
      controls: [control, { ...control, name: 'Spare', setback: undefined }],
    });
    expect(sideOf(sitting({ workstations: [station] })).controls).toEqual([
      { name: 'Faders', from: 200, to: 350, height: 60 },
    ]);
  });
});

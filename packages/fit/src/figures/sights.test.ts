import { describe, expect, it } from 'vitest';
import { assess } from '../assess/assess.js';
import {
  aBooth,
  aCrowd,
  aDesk,
  anOperator,
  aPlacement,
  aRoom,
  aSeat,
  aStation,
  given,
  nowhere,
  fixed,
} from '../testing/booths.js';
import { aPlatform, aRack } from '../testing/floor.js';
import { aMonitor, aScreen } from '../testing/screens.js';

const booth = aBooth({
  operators: [anOperator('Noor', { stature: 1600 }), anOperator('Tobias', { stature: 1850 })],
  crowds: [aCrowd('Rota', 0.5)],
  desks: [aDesk('Left', 1000), aDesk('Right', 1000)],
  seats: [aSeat('Tall', 700)],
  monitors: [aMonitor('Cues')],
  platforms: [aPlatform('Riser', 300, { at: given({ x: 0, y: 0 }) })],
  placements: [aPlacement(['Left', 'Right'], 3000, 1500)],
  workstations: [
    aStation('Sound', 'Left', 'Tall', ['Noor', 'Tobias'], {
      postures: given(['sit', 'stand'] as const),
      screens: [
        aScreen('Cues', 600, 'bottom', 150, { height: { line: 'bottom', over: 'desk', distance: fixed(150) } }),
      ],
    }),
    aStation('Words', 'Right', undefined, ['Rota']),
  ],
  room: aRoom(12_000, 20_000, {
    stage: { origin: nowhere, edge: given(16_000), height: given(900), width: given(8000) },
    seating: { origin: nowhere, first: given(1000), pitch: given(900), rows: given(10), standing: true },
  }),
});
const { sketch, findings } = assess(booth);

describe('lines of sight to the stage', () => {
  it('say of everyone what the check says', () => {
    const judged = findings.filter(({ check }) => check === 'see-over');
    expect(judged).toHaveLength(5);
    for (const { operator, posture, subject, measured } of judged) {
      const sight = sketch!.sights.find(
        (one) => one.who === operator && one.posture === posture && one.workstation === subject.name,
      );
      expect(sight!.above).toBeCloseTo(measured!, 9);
    }
  });

  it('run straight from the eye over what decides to the stage', () => {
    const hidden = sketch!.sights.filter(({ over }) => over);
    expect(hidden.length).toBeGreaterThan(0);
    for (const { eye, lands, over, rise } of hidden) {
      const at = (over!.y - eye.y) / (lands.y - eye.y);
      expect(over!.x).toBeCloseTo(eye.x + at * (lands.x - eye.x), 6);
      expect(over!.z).toBeCloseTo(eye.z + at * (lands.z - eye.z), 6);
      expect(Math.tan((rise * Math.PI) / 180) * Math.hypot(lands.x - eye.x, lands.y - eye.y)).toBeCloseTo(
        lands.z - eye.z,
        6,
      );
    }
  });

  it('start at the eye above the floor that the desk stands on, and end at the stage', () => {
    for (const { eye, lands, above, who, posture, workstation } of sketch!.sights) {
      const side = sketch!.sides.find(
        (one) => one.who === who && one.posture === posture && one.workstation === workstation,
      )!;
      const floor = workstation === 'Sound' ? 300 : 0;
      expect(eye.z).toBeCloseTo(side.eye.height + floor, 9);
      expect(lands).toMatchObject({ y: 16_000, z: 900 + above });
    }
  });

  it('are none without a stage', () => {
    const { stage: _, ...room } = booth.room!;
    expect(assess({ ...booth, room }).sketch!.sights).toEqual([]);
  });
});

describe('the hall from the side', () => {
  it('has rows, stage, screens and pieces where they are', () => {
    const { hall } = sketch!;
    expect(hall.stage).toEqual({ edge: 16_000, height: 900 });
    expect(hall.rows[0]).toEqual({ y: 1500 + 700 + 1000, top: 1800, standing: true });
    expect(hall.rows).toHaveLength(10);
    expect(hall.blocks).toContainEqual({
      name: 'Left',
      kind: 'desk',
      y: { min: 1500, max: 2200 },
      z: { min: 300, max: 1300 },
    });
    expect(hall.blocks).toContainEqual({
      name: 'Riser',
      kind: 'platform',
      y: { min: 0, max: 3000 },
      z: { min: 0, max: 300 },
    });
    const screen = hall.blocks.find(({ kind }) => kind === 'screen')!;
    expect(screen.z.min).toBeCloseTo(300 + 1000 + 150, 6);
    expect(screen.z.max).toBeCloseTo(300 + 1000 + 150 + 300, 6);
  });

  it('has ceiling, balcony and racks where the file says them', () => {
    const balcony = { origin: nowhere, edge: given(6000), height: given(3000) };
    const hallOf = (parts: object) =>
      assess({
        ...booth,
        racks: [aRack('Tower', 20, { frame: given(100) }), aRack('Unsaid', 20, { units: undefined })],
        placements: [...booth.placements, aPlacement(['Tower', 'Unsaid'], 8000, 5000)],
        room: aRoom(12_000, 20_000, { height: given(5000), balcony, ...parts }),
      }).sketch!.hall;
    expect(hallOf({})).toMatchObject({ height: 5000, balcony: { edge: 6000, height: 3000 }, rows: [] });
    const { height: _, ...open } = balcony;
    expect(hallOf({ balcony: open }).balcony).toEqual({ edge: 6000 });
    const racks = hallOf({}).blocks.filter(({ kind }) => kind === 'rack');
    expect(racks.map(({ name, z }) => [name, z])).toEqual([['Tower', { min: 0, max: 20 * 44.45 + 100 }]]);
  });
});

import { describe, expect, it } from 'vitest';
import type { Booth } from '../booth.js';
import {
  aBooth,
  aDesk,
  anOperator,
  aSeat,
  aStation,
  byDefault,
  given,
  ringAt,
  ringBelow,
  fixed,
  range,
} from '../testing/booths.js';
import { wholeBody } from '../testing/findings.js';
import { aMonitorOf, aRack, aScreenAt, aSkirt, under } from '../testing/floor.js';
import { advise } from './advise.js';

const wantsOf = (item: string, parts: Partial<Booth>) => {
  const { shopping } = advise(aBooth({ show: 'mm', ...parts }));
  return shopping.find((line) => line.item === item);
};

describe('shopping: what is bought beside desks and seats for people', () => {
  it('a screen by its size, shape and pixels, as far as the file says them', () => {
    const workstations = [aStation('Sound', 'Left', undefined, [], { screens: [aScreenAt('Cues', 500, 300)] })];
    const monitors = (parts: object) => [{ ...aMonitorOf('Cues', 400, 300), ...parts }];
    expect(wantsOf('screen Cues', { workstations, monitors: monitors({}) })).toEqual({
      item: 'screen Cues',
      wants: ['500 mm diagonal', '400:300'],
      workstations: ['Sound'],
    });
    const usual = { aspect: byDefault({ across: 16, down: 9 }), pixels: given({ across: 1920, down: 1080 }) };
    expect(wantsOf('screen Cues', { monitors: monitors(usual) })).toEqual({
      item: 'screen Cues',
      wants: ['500 mm diagonal', '1920 × 1080 pixels'],
      workstations: [],
    });
  });

  it('a rack for the workstations above it, a loose one for none', () => {
    const parts = { desks: [aDesk('Left', 750)], workstations: [aStation('Sound', 'Left', undefined, [])] };
    expect(wantsOf('rack Power', { ...parts, racks: [aRack('Power', 12, under('Left'))] })).toEqual({
      item: 'rack Power',
      wants: ['12 rack units high', '550 mm wide', '500 mm deep'],
      workstations: ['Sound'],
    });
    expect(wantsOf('rack Power', { ...parts, racks: [aRack('Power', 12, { width: undefined })] })).toMatchObject({
      wants: ['12 rack units high', '500 mm deep'],
      workstations: [],
    });
  });

  it.each<[string, number | readonly [number, number], string]>([
    ['a fixed desk', 750, 'drop 731 mm, to end 19 mm above the floor'],
    ['a desk that moves', [700, 900], 'drop 681 mm, to end 19 mm above the floor with the desk at its lowest'],
  ])('a skirt that ends above the floor at %s', (_, height, drop) => {
    const skirts = [aSkirt('Cloth', ['Left'], { length: given(3000) })];
    const workstations = [aStation('Sound', 'Left', undefined, [])];
    expect(wantsOf('skirt Cloth', { desks: [aDesk('Left', height)], skirts, workstations })).toEqual({
      item: 'skirt Cloth',
      wants: [drop, '3000 mm of cloth', 'with its flame certificate'],
      workstations: ['Sound'],
    });
  });

  it('a skirt on nothing of known height by its certificate alone', () => {
    expect(wantsOf('skirt Cloth', { skirts: [aSkirt('Cloth', [])] })!.wants).toEqual(['with its flame certificate']);
  });

  it('a desk with the top that the file names', () => {
    expect(wantsOf('desk Left', { desks: [aDesk('Left', [700, 900], { top: given(30) })] })!.wants).toEqual([
      'work surface adjustable over at least 700 to 900 mm',
      '1500 mm wide',
      '700 mm deep',
      'top at most 30 mm thick',
    ]);
  });

  it('a seat that nobody uses as the file has it: a chair without a ring, a stool with one at either place', () => {
    const seats = [
      aSeat('Low', [400, 500], { kind: 'chair' }),
      aSeat('Tall', 700, ringAt(250)),
      aSeat('High', 800, ringBelow(420)),
    ];
    expect(wantsOf('chair Low', { seats })!.wants).toEqual(['seat adjustable over at least 400 to 500 mm']);
    expect(wantsOf('stool Tall', { seats })!.wants).toEqual([
      'seat 700 mm above the floor',
      'foot ring 250 mm above the floor',
    ]);
    expect(wantsOf('stool High', { seats })!.wants).toEqual([
      'seat 800 mm above the floor',
      'foot ring 420 mm below the seat',
    ]);
  });

  it('an arm for a screen whose height is a range, once for all who need the same', () => {
    const at = (min: number, max: number) => {
      const height = { line: 'bottom', over: 'desk', distance: range(min, max) } as const;
      return { screens: [aScreenAt('Cues', 750, 600, { height })] };
    };
    const wants = (...reach: readonly (readonly [number, number])[]) =>
      wantsOf('screen Cues', {
        monitors: [aMonitorOf('Cues', 500, 300)],
        workstations: reach.map(([min, max], index) => aStation(`W${index}`, 'Left', 'Low', ['Noor'], at(min, max))),
      })!.wants.slice(2);
    expect(wants([100, 100])).toEqual([]);
    expect(wants([100, 350], [100, 350])).toEqual(['an arm that each sets to bottom 100 to 350 mm above the desk']);
    expect(wants([100, 350], [50, 200])).toHaveLength(2);
  });
});

describe('what to measure next, for screens', () => {
  it.each([
    ['standing', undefined, 'standingEyeHeight', 25],
    ['seated', 'Low', 'sittingEyeHeight', 360],
  ] as const)('of somebody %s of whom all else is known, it is the eye', (_, seat, dimension, below) => {
    const { sittingEyeHeight: _sitting, standingEyeHeight: _standing, ...known } = wholeBody({});
    const eye = wholeBody({})[dimension];
    const height = { line: 'top', over: 'floor', distance: fixed(eye + below) } as const;
    const { measure } = advise(
      aBooth({
        operators: [anOperator('Noor', known, 'female')],
        desks: [aDesk('Left', seat ? 620 : 950)],
        seats: [aSeat('Low', 400, { kind: 'chair' })],
        monitors: [aMonitorOf('Cues', 500, 100)],
        workstations: [
          aStation('Sound', 'Left', seat, ['Noor'], { screens: [aScreenAt('Cues', 750, 600, { height })] }),
        ],
      }),
    );
    expect(measure).toMatchObject([{ operator: 'Noor', dimension }]);
  });
});

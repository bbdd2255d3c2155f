import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeScene } from '../scene/scene.js';
import { eyesAt } from '../scene/viewing.js';
import {
  aBooth,
  aDesk,
  aMeasuredOperator,
  anOperator,
  aSeat,
  aStation,
  given,
  ringBelow,
  fixed,
} from '../testing/booths.js';
import { findingOf, wholeBody } from '../testing/findings.js';
import { aMonitor, aScreen } from '../testing/screens.js';
import { checks } from '../checks/catalogue.js';
import { allSettings, largestGap, pick, smallestGap } from './settings.js';

const standing = (min: number, max: number) => allSettings({ min: 0, max: 0 }, { min, max });

describe('what a person sets who may choose', () => {
  it.each([
    ['the wanted gap', 100, NaN, { seat: 500, desk: 600 }],
    ['the nearest to it', 900, NaN, { seat: 400, desk: 900 }],
    ['the wanted desk, where no gap is wanted', NaN, 850, { seat: 500, desk: 850 }],
    ['the gap before the desk', 100, 850, { seat: 500, desk: 600 }],
    ['the nearer end for a desk that is wanted lower than it goes', NaN, 300, { seat: 500, desk: 500 }],
    ['and higher', NaN, 2000, { seat: 500, desk: 900 }],
    ['the middle, where nothing is wanted', NaN, NaN, { seat: 500, desk: 700 }],
  ])('is %s', (_, gap, desk, setting) => {
    expect(pick(allSettings({ min: 400, max: 600 }, { min: 500, max: 900 }), gap, desk)).toEqual(setting);
  });

  it('lies in the region, whatever is wanted', () => {
    const height = fc.double({ min: 0, max: 2000, noNaN: true });
    const range = fc.tuple(height, height).map(([a, b]) => ({ min: Math.min(a, b), max: Math.max(a, b) }));
    const wanted = fc.oneof(fc.constant(NaN), fc.double({ min: -3000, max: 3000, noNaN: true }));
    fc.assert(
      fc.property(range, range, wanted, wanted, (seats, desks, gap, desk) => {
        const region = allSettings(seats, desks);
        const chosen = pick(region, gap, desk);
        expect(chosen.seat).toBeGreaterThanOrEqual(seats.min - 1e-6);
        expect(chosen.seat).toBeLessThanOrEqual(seats.max + 1e-6);
        expect(chosen.desk).toBeGreaterThanOrEqual(desks.min - 1e-6);
        expect(chosen.desk).toBeLessThanOrEqual(desks.max + 1e-6);
        expect(chosen.desk - chosen.seat).toBeGreaterThanOrEqual(smallestGap(region) - 1e-6);
        expect(chosen.desk - chosen.seat).toBeLessThanOrEqual(largestGap(region) + 1e-6);
      }),
    );
  });

  it('leaves a seat of any height at its known end', () => {
    expect(pick({ ...standing(900, 900), seatMax: Infinity }, NaN, 900)).toEqual({ seat: 0, desk: 900 });
  });
});

describe('the mean body and everybody that a body may be set a desk alike', () => {
  /** All of the body is known, so everybody is the mean body: an elbow of 1000, shod 1025. */
  const eyes = (height: number | readonly [number, number], posture: 'sit' | 'stand') => {
    const booth = aBooth({
      operators: [aMeasuredOperator('Noor', wholeBody({ standingElbowHeight: 1000 }))],
      desks: [aDesk('Left', height)],
      seats: [aSeat('Tall', [400, 560])],
      workstations: [aStation('Sound', 'Left', 'Tall', ['Noor'], { postures: given([posture]) })],
    });
    const scene = makeScene(booth, checks);
    return eyesAt(scene, scene.stations[0]!)[0]!;
  };

  it.each([
    // Controls are wanted 100 to 50 mm below the elbow; Panero & Zelnik 1979, Table 1, sets a counter 76 mm below it.
    ['standing, to the middle of the preferred band', [700, 1300], 'stand', 1025 - 75],
    ['standing, at a desk that does not go so low', [1000, 1300], 'stand', 1000],
    ['standing, at a desk that does not go so high', [700, 900], 'stand', 900],
    ['standing, at a fixed desk', 1100, 'stand', 1100],
  ] as const)('%s', (_, height, posture, desk) => {
    const { desk: mean, all } = eyes(height, posture);
    expect(mean).toBeCloseTo(desk, 6);
    for (const each of all.desk) expect(each).toBeCloseTo(desk, 6);
  });

  it('sitting likewise', () => {
    const { desk, eye, all } = eyes([600, 800], 'sit');
    for (const each of all.desk) expect(each).toBeCloseTo(desk, 6);
    for (const each of all.eye) expect(each).toBeCloseTo(eye, 6);
  });

  it('so a screen over an adjustable desk is judged where the finding says that it is', () => {
    const judge = (above: number) => {
      const height = { line: 'top', over: 'desk', distance: fixed(above) } as const;
      const screens = [aScreen('Cues', 500, 'top', 1, { height })];
      const booth = aBooth({
        operators: [aMeasuredOperator('Noor', wholeBody({ standingElbowHeight: 1000, standingEyeHeight: 1475 }))],
        desks: [aDesk('Left', [700, 1300])],
        monitors: [aMonitor('Cues')],
        workstations: [aStation('Sound', 'Left', undefined, ['Noor'], { screens })],
      });
      return findingOf(booth, 'screen-height');
    };
    // The desk at 950 and the eye at 1500: a top edge 550 above the desk is level with it, and 10 more is above.
    expect(judge(550)).toMatchObject({ verdict: 'pass', share: 1 });
    expect(judge(560)).toMatchObject({ verdict: 'marginal', share: 0 });
  });
});

it.each(['controls', 'writing', 'keyboard', 'precision'] as const)(
  'an outer limit holds all of its preferred band: who is inside one is inside the other (%s)',
  (task) => {
    const seats = [
      aSeat('Tall', [400, 560]),
      aSeat('Ringed', [600, 800], ringBelow(425)),
      aSeat('Office', 450, { kind: 'chair' }),
    ];
    const booth = aBooth({
      operators: [anOperator('Noor', { stature: 1600 })],
      desks: [aDesk('Left', [700, 1100])],
      seats,
      workstations: seats.map(({ name }) =>
        aStation(name, 'Left', name, ['Noor'], { postures: given(['sit', 'stand'] as const), task: given(task) }),
      ),
    });
    const scene = makeScene(booth, checks);
    const demands = scene.stations.flatMap((station) =>
      (['sit', 'stand'] as const).flatMap((posture) => scene.rules(station, posture).flatMap((rule) => rule.demands)),
    );
    expect(demands.length).toBeGreaterThan(20);
    for (const { preferred, outer } of demands) {
      expect(outer.min).toBeLessThanOrEqual(preferred.min);
      expect(outer.max).toBeGreaterThanOrEqual(preferred.max);
    }
  },
);

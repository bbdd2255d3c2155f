import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checks } from '../checks/catalogue.js';
import { aBooth, aDesk, aSeat, aStation, anOperator, given } from '../testing/booths.js';
import { aMonitor, aScreen } from '../testing/screens.js';
import type { Range } from '../units.js';
import { makeScene } from './scene.js';
import { goodRises, risesAt } from './screen-angles.js';
import { anglesOf, linesFor, linesOf, shareOver } from './screen-lines.js';
import { eyesAt, viewsAt, type View } from './viewing.js';

/** A screen of 400 by 300 on an arm, and somebody of whom only the stature is known. */
function onAnArm(between: Range, setback = 700, over: 'desk' | 'floor' = 'floor') {
  const height = { line: 'centre', over, distance: given(between) } as const;
  const booth = aBooth({
    operators: [anOperator('Noor', { stature: 1650 }, 'female')],
    desks: [aDesk('Left', 1000)],
    seats: [aSeat('Tall', [600, 760])],
    monitors: [aMonitor('Cues')],
    workstations: [
      aStation('Sound', 'Left', 'Tall', ['Noor'], {
        postures: given(['sit', 'stand']),
        screens: [aScreen('Cues', setback, 'centre', 0, { height })],
      }),
    ],
  });
  const scene = makeScene(booth, checks);
  const station = scene.stations[0]!;
  return { view: viewsAt(station).views[0]!, eyes: eyesAt(scene, station) };
}

const ranges = fc
  .tuple(fc.integer({ min: 800, max: 1500 }), fc.nat(500))
  .map(([min, more]): Range => ({ min, max: min + more }));
const looks = fc.record({
  posture: fc.constantFrom('sit' as const, 'stand' as const),
  eye: fc.integer({ min: 900, max: 2000 }),
  desk: fc.constant(1000),
});

/** How far the middle of a screen is from the angle at which it is best: 15° below eye level seated, 10° standing. */
function off(view: View, centre: number, { eye, posture }: { eye: number; posture: 'sit' | 'stand' }): number {
  const best = view.level * Math.tan(((posture === 'sit' ? 15 : 10) * Math.PI) / 180);
  return Math.abs(eye - centre - best);
}

describe('a screen on an arm', () => {
  it('is set within the reach of the arm, as near to the best angle as the preferred bounds and the arm let it', () => {
    fc.assert(
      fc.property(ranges, looks, fc.integer({ min: 300, max: 1500 }), (between, eyes, setback) => {
        const { view } = onAnArm(between, setback);
        const { centre } = linesFor(view, eyes);
        expect(centre).toBeGreaterThanOrEqual(between.min);
        expect(centre).toBeLessThanOrEqual(between.max);
        const { min, max } = goodRises(view, 0);
        const isGood = (height: number) => eyes.eye - height >= min - 1e-9 && eyes.eye - height <= max + 1e-9;
        const heights = Array.from(
          { length: 101 },
          (_, step) => between.min + ((between.max - between.min) * step) / 100,
        );
        if (!heights.some(isGood)) return;
        expect(isGood(centre)).toBe(true);
        for (const height of heights.filter(isGood))
          expect(off(view, centre, eyes)).toBeLessThanOrEqual(off(view, height, eyes) + 1e-9);
      }),
    );
  });

  it('is one that stands where the arm has no reach', () => {
    fc.assert(
      fc.property(fc.integer({ min: 800, max: 1500 }), looks, (height, eyes) => {
        const { view } = onAnArm({ min: height, max: height });
        expect(linesFor(view, eyes)).toEqual({ top: height + 150, centre: height, bottom: height - 150 });
      }),
    );
  });

  it('reaches from its lowest to its highest, over what its height is measured from', () => {
    const { view } = onAnArm({ min: 200, max: 500 }, 700, 'desk');
    expect(linesOf(view, 1000, 'lowest')).toEqual({ top: 1350, centre: 1200, bottom: 1050 });
    expect(linesOf(view, 1000, 'highest')).toEqual({ top: 1650, centre: 1500, bottom: 1350 });
  });

  it('has a share of eyes so high over it that counting says too', () => {
    const wanted = fc.tuple(fc.integer({ min: -300, max: 600 }), fc.integer({ min: 1, max: 500 }));
    fc.assert(
      fc.property(ranges, fc.constantFrom('desk' as const, 'floor' as const), wanted, (between, over, [min, more]) => {
        const shifted = over === 'desk' ? { min: between.min - 1000, max: between.max - 1000 } : between;
        const { view, eyes } = onAnArm(shifted, 700, over);
        // Not at a height that many set, where rounding would decide.
        const rises = [{ min: min + 0.123, max: min + more + 0.123 }];
        for (const one of eyes) {
          const { people } = one.person;
          const counted = one.all.eye.reduce((sum, eye, person) => {
            const { centre } = linesFor(view, { posture: one.posture, eye, desk: one.all.desk[person]! });
            return eye - centre >= rises[0]!.min && eye - centre <= rises[0]!.max ? sum + people.weights[person]! : sum;
          }, 0);
          expect(shareOver(one, view, rises)).toBeCloseTo(counted, 9);
        }
      }),
      { numRuns: 30 },
    );
  });

  it('never counts anybody twice where two ranges of distance are good', () => {
    const { view, eyes } = onAnArm({ min: 1000, max: 1600 }, 400);
    for (const one of eyes) {
      const either = risesAt(view, { min: 405, max: 900 });
      expect(either).toHaveLength(2);
      expect(shareOver(one, view, either)).toBeLessThanOrEqual(1 + 1e-9);
      expect(shareOver(one, view, [either[1]!])).toBeCloseTo(1, 9);
    }
  });

  it('is seen by each at the preferred angle', () => {
    const { view, eyes } = onAnArm({ min: 700, max: 1700 });
    expect(eyes.map((one) => anglesOf(view, one).centre)).toEqual([expect.closeTo(-15, 6), expect.closeTo(-12.1, 1)]);
  });
});

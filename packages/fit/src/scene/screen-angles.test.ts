import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aBooth, aDesk, aMeasuredOperator, aStation, given } from '../testing/booths.js';
import { wholeBody } from '../testing/findings.js';
import { aMonitor, aScreen } from '../testing/screens.js';
import { checks } from '../checks/catalogue.js';
import { makeScene } from './scene.js';
import { degrees, radians, type Range } from '../units.js';
import { bearableRises, goodRises, risesAt, SLACK, squareRises } from './screen-angles.js';
import { anglesOf } from './screen-lines.js';
import { viewsAt } from './viewing.js';

function viewAt(setback: number, height: number, tilt: number) {
  const screens = [aScreen('Cues', setback, 'centre', height, { tilt: given(tilt) })];
  const booth = aBooth({
    operators: [aMeasuredOperator('Noor', wholeBody({}))],
    desks: [aDesk('Left', 1000)],
    monitors: [aMonitor('Cues')],
    workstations: [aStation('Sound', 'Left', undefined, ['Noor'], { screens })],
  });
  return viewsAt(makeScene(booth, checks).stations[0]!).views[0]!;
}

describe('how high an eye must be over the middle of a screen', () => {
  it('is what the angles of its edges say', () => {
    const setbacks = fc.integer({ min: 100, max: 3000 });
    const eyes = fc.integer({ min: 800, max: 2000 });
    fc.assert(
      fc.property(setbacks, fc.integer({ min: 700, max: 2200 }), fc.nat(60), eyes, (setback, height, tilt, eye) => {
        const view = viewAt(setback, height, tilt);
        const rise = eye - height;
        const { top, centre, bottom } = anglesOf(view, { posture: 'stand', eye, desk: 0 });
        const [good, bearable] = [goodRises(view), bearableRises(view)];
        const isGood = top <= SLACK && centre <= SLACK && centre >= -30 - SLACK && bottom >= -33 - SLACK;
        expect(rise >= good.min && rise <= good.max).toBe(isGood);
        expect(rise >= bearable.min && rise <= bearable.max).toBe(top <= 20 + SLACK && bottom >= -60 - SLACK);
      }),
    );
  });

  it('is what its distance from the middle says', () => {
    const setbacks = fc.integer({ min: 0, max: 3000 });
    const eyes = fc.integer({ min: 0, max: 4000 });
    fc.assert(
      fc.property(setbacks, eyes, fc.nat(2000), fc.nat(2000), (setback, eye, near, deep) => {
        const view = viewAt(setback, 2000, 0);
        const rise = eye - 2000;
        const distance = Math.hypot(view.level, rise);
        const [min, max] = [near + 0.5, near + deep + 0.5];
        expect(isWithin(rise, risesAt(view, { min, max }))).toBe(distance >= min && distance <= max);
      }),
    );
  });

  it('is what the angle between its face and the eye says', () => {
    const setbacks = fc.integer({ min: 1, max: 3000 });
    const turns = fc.integer({ min: -120, max: 120 });
    const eyes = fc.integer({ min: 0, max: 4000 });
    const limits = fc.constantFrom(20.1, 45.1);
    fc.assert(
      fc.property(
        setbacks,
        fc.integer({ min: -90, max: 90 }),
        turns,
        eyes,
        limits,
        (setback, tilt, swing, eye, limit) => {
          const view = { ...viewAt(setback, 2000, tilt), swing };
          const rise = eye - 2000;
          const along =
            Math.cos(radians(tilt)) * Math.cos(radians(swing)) * view.level + Math.sin(radians(tilt)) * rise;
          const angle = degrees(Math.acos(along / Math.hypot(view.level, rise)));
          fc.pre(Math.abs(angle - limit) > 1e-6);
          expect(isWithin(rise, squareRises(view, limit))).toBe(angle <= limit);
        },
      ),
      { numRuns: 1000 },
    );
  });
});

function isWithin(rise: number, ranges: readonly Range[]): boolean {
  return ranges.some(({ min, max }) => rise >= min && rise <= max);
}

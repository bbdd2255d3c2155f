import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aBooth, aDesk, aMeasuredOperator, aStation, given } from '../testing/booths.js';
import { wholeBody } from '../testing/findings.js';
import { aMonitor, aScreen } from '../testing/screens.js';
import { checks } from '../checks/catalogue.js';
import { makeScene } from './scene.js';
import { anglesOf, bearableRises, goodRises, SLACK } from './screen-angles.js';
import { linesOf, viewsAt } from './viewing.js';

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
        const rise = eye - linesOf(view, 0).centre;
        const { top, centre, bottom } = anglesOf(view, 0, eye);
        const [good, bearable] = [goodRises(view), bearableRises(view)];
        const isGood = top <= SLACK && centre <= SLACK && centre >= -30 - SLACK && bottom >= -33 - SLACK;
        expect(rise >= good.least && rise <= good.most).toBe(isGood);
        expect(rise >= bearable.least && rise <= bearable.most).toBe(top <= 20 + SLACK && bottom >= -60 - SLACK);
      }),
    );
  });
});

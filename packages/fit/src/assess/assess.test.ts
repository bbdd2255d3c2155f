import { describe, expect, it } from 'vitest';
import { aBooth, aDesk, aMeasuredOperator, aStation } from '../testing/booths.js';
import { wholeBody } from '../testing/findings.js';
import { aMonitor, aScreen } from '../testing/screens.js';
import { assess } from './assess.js';

/** A standing eye 1500 above the floor, and the middle of a screen 300 below it. */
function looking(setback: number) {
  return aBooth({
    operators: [aMeasuredOperator('Noor', wholeBody({ standingEyeHeight: 1475 }))],
    desks: [aDesk('Left', 1000)],
    monitors: [aMonitor('Cues')],
    workstations: [
      aStation('Sound', 'Left', undefined, ['Noor'], { screens: [aScreen('Cues', setback, 'centre', 1200)] }),
    ],
  });
}

describe('the screens of an assessment', () => {
  it('are as far from the eye as Pythagoras says: 300, 400, 500', () => {
    const [screen, ...more] = assess(looking(400)).screens!;
    expect(more).toEqual([]);
    expect(screen).toMatchObject({ workstation: 'Sound', monitor: 'Cues' });
    expect(screen!.distances).toEqual([{ who: 'Noor', posture: 'stand', distance: 500 }]);
  });

  it('are as far as the check of the viewing distance measures', () => {
    const { screens, findings } = assess(looking(777));
    const finding = findings.find(({ check }) => check === 'screen-distance');
    expect(screens![0]!.distances[0]!.distance).toBe(finding!.measured);
  });

  it('are absent where none is placed', () => {
    expect(assess({ ...looking(400), workstations: [] }).screens).toBeUndefined();
  });
});

describe('of people with one name the first counts, whatever was assessed before', () => {
  const noor = (standingEyeHeight: number) => aMeasuredOperator('Noor', wholeBody({ standingEyeHeight }));
  const distanceIn = (booth: Parameters<typeof assess>[0]) => assess(booth).screens![0]!.distances[0]!.distance;
  const [at400, other] = [looking(400), noor(1875)];

  it.each([
    ['the first alone', [noor(1475)], 500],
    ['another after it', [noor(1475), other], 500],
    ['another before it', [other, noor(1475)], Math.hypot(400, 700)],
    // 1575 and the shoe of 25 are 400 above the middle of the screen.
    ['the first changed, the other as it was', [noor(1575), other], Math.hypot(400, 400)],
  ])('%s', (_, operators, distance) => {
    expect(distanceIn({ ...at400, operators })).toBeCloseTo(distance, 6);
  });
});

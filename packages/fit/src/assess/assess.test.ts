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

import { describe, expect, it } from 'vitest';
import type { Booth } from '../booth.js';
import { aBooth, aDesk, aMeasuredOperator, aStation } from '../testing/booths.js';
import { wholeBody } from '../testing/findings.js';
import { aMonitor, aScreen } from '../testing/screens.js';
import { assess, assessing } from './assess.js';

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

describe('in steps', () => {
  const booth = aBooth({
    operators: [aMeasuredOperator('Noor', wholeBody({})), aMeasuredOperator('Tobias', wholeBody({ stature: 1900 }))],
    desks: [aDesk('Left', 1000), aDesk('Right', 720)],
    monitors: [aMonitor('Cues')],
    workstations: [
      aStation('Sound', 'Left', undefined, ['Noor'], { screens: [aScreen('Cues', 500, 'centre', 1200)] }),
      aStation('Words', 'Right', undefined, ['Tobias']),
    ],
  });
  const lower = { ...booth, desks: [aDesk('Left', 900), booth.desks[1]!] };
  const copy = (one: Booth) => structuredClone(one);

  it('each workstation is one, and what they come to is the assessment', () => {
    const fresh = copy(booth);
    const steps = assessing(fresh);
    let count = 0;
    let step = steps.next();
    for (; !step.done; step = steps.next()) count++;
    expect(count).toBeGreaterThan(fresh.workstations.length);
    expect(step.value.findings).toEqual(assess(copy(booth)).findings);
  });

  it('other booths of the same things may be assessed in between', () => {
    const [one, other] = [assessing(booth), assessing(lower)];
    let [a, b] = [one.next(), other.next()];
    while (!a.done || !b.done) {
      expect(assess(lower).findings).toEqual(assess(copy(lower)).findings);
      if (!a.done) a = one.next();
      if (!b.done) b = other.next();
    }
    expect(a.value.findings).toEqual(assess(copy(booth)).findings);
    expect(b.value.findings).toEqual(assess(copy(lower)).findings);
    expect(a.value.findings).not.toEqual(b.value.findings);
  });
});

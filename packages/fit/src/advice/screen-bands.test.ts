import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assess } from '../assess/assess.js';
import type { Booth, Crowd, Operator } from '../booth.js';
import { aBooth, aCrowd, aDesk, aMeasuredOperator, anOperator, aStation, given, fixed } from '../testing/booths.js';
import { wholeBody } from '../testing/findings.js';
import { aMonitor, aScreen } from '../testing/screens.js';
import { advise } from './advise.js';

/** People who stand at one desk and look at one screen, its bottom edge so far above the desk. */
function booth(people: { operators?: readonly Operator[]; crowds?: readonly Crowd[] }, bottom: number): Booth {
  const { operators = [], crowds = [] } = people;
  const screens = [aScreen('Cues', 600, 'bottom', bottom, { height: heightOf(bottom) })];
  const names = [...operators, ...crowds].map(({ name }) => name);
  return aBooth({
    operators,
    crowds,
    desks: [aDesk('Left', 1000)],
    monitors: [aMonitor('Cues', 400)],
    workstations: [aStation('Sound', 'Left', undefined, names, { postures: given(['stand'] as const), screens })],
  });
}

function heightOf(bottom: number) {
  return { line: 'bottom', over: 'desk', distance: fixed(bottom) } as const;
}

function screenBand(subject: Booth) {
  return advise(subject).stations[0]!.bands.find(({ part }) => part === 'screen')!;
}

function verdictAt(people: Parameters<typeof booth>[0], bottom: number) {
  return assess(booth(people, bottom)).findings.find(({ check }) => check === 'screen-height')!.verdict;
}

describe('the band of a screen’s height', () => {
  it('of a measured person is exact: inside passes, 2 mm outside does not', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1350, max: 1800 }), fc.integer({ min: 0, max: 500 }), (eye, now) => {
        const people = { operators: [aMeasuredOperator('Noor', wholeBody({ standingEyeHeight: eye }))] };
        const { band, basis } = screenBand(booth(people, now)).each[0]!;
        expect(basis).toBe('measured');
        if (!band) return;
        expect(verdictAt(people, band.max)).toBe('pass');
        expect(verdictAt(people, band.max + 3)).not.toBe('pass');
        expect(verdictAt(people, band.min)).toBe('pass');
        if (band.min > 5) expect(verdictAt(people, band.min - 5)).not.toBe('pass');
      }),
      { numRuns: 25 },
    );
  });

  it('does not depend on where the screen hangs now', () => {
    const people = { operators: [anOperator('Noor', { stature: 1600 })] };
    const [low, high] = [screenBand(booth(people, 50)), screenBand(booth(people, 400))];
    expect(low.each[0]!.basis).toBe('average');
    expect(low.each[0]!.band!.min).toBeCloseTo(high.each[0]!.band!.min, 6);
    expect(low.each[0]!.band!.max).toBeCloseTo(high.each[0]!.band!.max, 6);
  });

  it('of a crowd serves as many as it asks for', () => {
    const people = { crowds: [aCrowd('Volunteers', 0.5, 0.5)] };
    const { band, basis } = screenBand(booth(people, 100)).each[0]!;
    expect(basis).toBe('share');
    expect(verdictAt(people, band!.min)).toBe('pass');
    expect(verdictAt(people, band!.max)).toBe('pass');
    expect(verdictAt(people, band!.max + 10)).not.toBe('pass');
  });

  it('of two people is what both bands hold, and none where they do not meet', () => {
    const person = (name: string, eye: number) => aMeasuredOperator(name, wholeBody({ standingEyeHeight: eye }));
    const near = screenBand(booth({ operators: [person('Noor', 1500), person('Priya', 1560)] }, 100));
    expect(near.all!.min).toBeCloseTo(Math.max(...near.each.map(({ band }) => band!.min)), 6);
    expect(near.all!.max).toBeCloseTo(Math.min(...near.each.map(({ band }) => band!.max)), 6);
    const far = screenBand(booth({ operators: [person('Noor', 1350), person('Tobias', 1800)] }, 100));
    expect(far.all).toBeUndefined();
  });
});

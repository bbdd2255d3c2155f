import { describe, expect, it } from 'vitest';
import { aBooth, aCrowd, aDesk, anOperator, aSeat, aStation, byDefault, given } from '../testing/booths.js';
import { findingsOf } from '../testing/findings.js';
import { aMonitor, aScreen } from '../testing/screens.js';

const operators = [anOperator('Noor', { stature: 1600 })];
const desks = [aDesk('Left', 720)];
const seats = [aSeat('Low', 430, { kind: 'chair' })];

describe('a finding names what a default supplied', () => {
  const silent = aBooth({
    operators,
    desks,
    seats,
    shoe: byDefault(25),
    slump: byDefault(40),
    workstations: [aStation('Words', 'Left', 'Low', ['Noor'])],
  });

  it('where the file is silent', () => {
    expect(findingsOf(silent, 'feet-supported').map(({ defaults }) => defaults)).toEqual([['shoes of 25 mm']]);
    expect(findingsOf(silent, 'thigh-room').map(({ defaults }) => defaults)).toEqual([['a top of 25 mm']]);
  });

  it('and not where it says so itself', () => {
    const said = { ...silent, shoe: given(30), desks: [aDesk('Left', 720, { top: given(30) })] };
    expect(findingsOf(said, 'feet-supported').map(({ defaults }) => defaults)).toEqual([[]]);
    expect(findingsOf(said, 'thigh-room').map(({ defaults }) => defaults)).toEqual([[]]);
  });

  it('of a screen: from the workstation where it stands, a slump only of those who sit', () => {
    const screens = [aScreen('Cues', 600, 'bottom', 800, { tilt: byDefault(0) })];
    const looking = (posture: 'sit' | 'stand') => ({
      ...silent,
      monitors: [aMonitor('Cues', 500)],
      workstations: [aStation('Words', 'Left', 'Low', ['Noor'], { postures: given([posture]), screens })],
    });
    const [seated] = findingsOf(looking('sit'), 'screen-height');
    expect(seated!.defaults).toContain('people sit 40 mm lower than upright');
    expect(seated!.defaults).toContain('a picture of 4:3');
    expect(seated!.defaults).toContain('a screen that leans back 0°');
    const [standing] = findingsOf(looking('stand'), 'screen-height');
    expect(standing!.defaults.join()).not.toContain('upright');
  });

  it('of a crowd: its mixture and what it wants', () => {
    const crowds = [{ ...aCrowd('All', 0.5), women: byDefault(0.5) }];
    const booth = { ...silent, crowds, workstations: [aStation('Words', 'Left', 'Low', ['All'])] };
    const [served] = findingsOf(booth, 'crowd-served');
    expect(served!.defaults).toContain('50% women');
    expect(served!.defaults.join()).not.toContain('to be served');
  });

  it('has nothing to name where nothing can be said', () => {
    const booth = {
      ...silent,
      workstations: [aStation('Words', 'Left', undefined, ['Noor'], { postures: given(['sit']) })],
    };
    for (const { defaults, verdict } of findingsOf(booth, 'feet-supported')) {
      expect(verdict).toBe('unknown');
      expect(defaults).toEqual([]);
    }
  });
});

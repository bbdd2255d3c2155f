import { describe, expect, it } from 'vitest';
import type { Booth, Control, ScreenUse } from '../../booth.js';
import { aBooth, aDesk, anOperator, aStation, byDefault, given, nowhere } from '../../testing/booths.js';
import { findingOf, findingsOf } from '../../testing/findings.js';
import { aMonitor, aScreen } from '../../testing/floor.js';
import { outside } from '../../testing/outside.js';
import { POUND } from '../../units.js';

const arm = (rating: number): Partial<ScreenUse> => ({ rating: given(rating) });

function onArm(weight: number | undefined, rating: number, parts: Partial<Booth> = {}) {
  const weighing = weight === undefined ? {} : { weight: given(weight) };
  return aBooth({
    operators: [anOperator('Noor', { stature: 1630 })],
    desks: [aDesk('Left', 1000)],
    monitors: [aMonitor('Cues', 500, 300, weighing)],
    workstations: [
      aStation('Sound', 'Left', undefined, ['Noor'], { screens: [aScreen('Cues', 750, 500, arm(rating))] }),
    ],
    ...parts,
  });
}

describe('load: a screen on an arm', () => {
  it.each<[string, number, number, string, number]>([
    ['4 kg on an arm for 9', 4, 9, 'pass', 9],
    ['exactly its rating', 9, 9, 'pass', 9],
    ['9.2 kg on an arm for 9', 9.2, 9, 'fail', 9],
    [
      outside('VESA FDMI part D, in secondary sources', '14 kg is what 75 and 100 mm patterns are for'),
      14,
      20,
      'pass',
      20,
    ],
    [outside('VESA FDMI part D, in secondary sources', 'more than 14 kg is not'), 15, 20, 'marginal', 14],
    [
      outside('VESA FDMI part E, in secondary sources', '22.7 kg is for the pattern of 200 × 100 mm'),
      22.7,
      30,
      'marginal',
      14,
    ],
    ['21 kg on an arm for 20', 21, 20, 'fail', 20],
  ])('%s', (_, weight, rating, verdict, limit) => {
    const finding = findingOf(onArm(weight, rating), 'load');
    expect(finding).toMatchObject({ verdict, measured: weight, limit, unit: 'kg' });
    expect(finding.margin).toBeCloseTo(limit - weight, 9);
  });

  it('writes weights as the file’s readers do', () => {
    const finding = findingOf(onArm(20 * POUND, 15 * POUND, { show: 'in' }), 'load');
    expect(finding.message).toContain('Cues weighs 20 lb on an arm for 15 lb: 5 lb too much');
  });

  it('asks for the weight, and asks nothing of a screen on a stand', () => {
    expect(findingOf(onArm(undefined, 9), 'load')).toMatchObject({
      verdict: 'unknown',
      missing: { property: 'weight', of: 'monitor Cues' },
    });
    const standing = [aStation('Sound', 'Left', undefined, ['Noor'], { screens: [aScreen('Cues', 750, 500)] })];
    expect(findingsOf(onArm(30, 1, { workstations: standing }), 'load')).toEqual([]);
  });
});

describe('load: things on a desk', () => {
  const control = (name: string, weight?: number): Control => ({
    name,
    origin: nowhere,
    depth: byDefault(0),
    width: byDefault(0),
    height: byDefault(0),
    use: byDefault('constant'),
    ...(weight !== undefined && { weight: given(weight) }),
  });
  /** Two workstations at one desk: both watch Cues, one has a console, the other a keyboard. */
  function desk(rating: number | undefined, console: number, keyboard?: number, screen?: number) {
    const parts = { screens: [aScreen('Cues', 750, 500)] };
    const weighing = screen === undefined ? {} : { weight: given(screen) };
    return aBooth({
      operators: [anOperator('Noor', { stature: 1630 })],
      desks: [aDesk('Left', 1000, rating === undefined ? {} : { rating: given(rating) }), aDesk('Other', 1000)],
      monitors: [aMonitor('Cues', 500, 300, weighing)],
      workstations: [
        aStation('Sound', 'Left', undefined, ['Noor'], { ...parts, controls: [control('Console', console)] }),
        aStation('Words', 'Left', undefined, ['Noor'], { ...parts, controls: [control('Keyboard', keyboard)] }),
        aStation('Far', 'Other', undefined, ['Noor'], { controls: [control('Heavy', 500)] }),
      ],
    });
  }

  it.each<[number, string, number]>([
    [26, 'pass', 0],
    [25, 'pass', 0],
    [24, 'fail', 1],
  ])('20 + 1 + 4 kg on a desk for %d kg: %s', (rating, verdict, over) => {
    const finding = findingOf(desk(rating, 20, 1, 4), 'load');
    expect(finding).toMatchObject({ verdict, measured: 25, limit: rating, subject: { kind: 'desk', name: 'Left' } });
    expect(finding.terms).toBe('4 kg Cues + 20 kg Console + 1 kg Keyboard = 25 kg');
    if (over > 0) expect(finding.message).toContain(`${over} kg too much`);
  });

  it('what is too heavy already is, whatever else is unknown; else it asks', () => {
    expect(findingOf(desk(15, 20, undefined, 4), 'load')).toMatchObject({ verdict: 'fail', measured: 24 });
    expect(findingOf(desk(50, 20, undefined, 4), 'load')).toMatchObject({
      verdict: 'unknown',
      missing: { property: 'weight', of: 'control Keyboard' },
    });
    expect(findingOf(desk(50, 20, 1), 'load')).toMatchObject({ missing: { of: 'monitor Cues' } });
  });

  it('asks nothing of a desk without a rating', () => {
    expect(findingsOf(desk(undefined, 20, 1, 4), 'load')).toEqual([]);
  });
});

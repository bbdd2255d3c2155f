import { describe, expect, it } from 'vitest';
import type { Booth, Control, ScreenUse } from '../../booth.js';
import { aBooth, aDesk, anOperator, aStation, byDefault, given, nowhere } from '../../testing/booths.js';
import { findingOf, findingsOf } from '../../testing/findings.js';
import { aMonitorOf, aScreenAt } from '../../testing/floor.js';
import { outside } from '../../testing/outside.js';
import { POUND } from '../../units.js';
import { told } from '../../testing/told.js';

const arm = (rating: number): Partial<ScreenUse> => ({ rating: given(rating) });

function onArm(weight: number | undefined, rating: number, parts: Partial<Booth> = {}) {
  const weighing = weight === undefined ? {} : { weight: given(weight) };
  return aBooth({
    operators: [anOperator('Noor', { stature: 1630 })],
    desks: [aDesk('Left', 1000)],
    monitors: [aMonitorOf('Cues', 500, 300, weighing)],
    workstations: [
      aStation('Sound', 'Left', undefined, ['Noor'], { screens: [aScreenAt('Cues', 750, 500, arm(rating))] }),
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
    const standing = [aStation('Sound', 'Left', undefined, ['Noor'], { screens: [aScreenAt('Cues', 750, 500)] })];
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
    const parts = { screens: [aScreenAt('Cues', 750, 500)] };
    const weighing = screen === undefined ? {} : { weight: given(screen) };
    return aBooth({
      operators: [anOperator('Noor', { stature: 1630 })],
      desks: [aDesk('Left', 1000, rating === undefined ? {} : { rating: given(rating) }), aDesk('Other', 1000)],
      monitors: [aMonitorOf('Cues', 500, 300, weighing)],
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

describe('load: what a reader is told', () => {
  const tell = (...args: Parameters<typeof onArm>) => told(onArm(...args), 'load');

  it('of a screen on an arm', () => {
    expect(tell(5, 8)).toMatchInlineSnapshot(`
      "pass, monitor Cues
      Cues weighs 5 kg on an arm for 8 kg: within its rating.
      : 5 against 8 kg, margin 3
      at workstations.Sound.screens.0.rating, by the maker’s rating, as the file states it
      see monitors.Cues.weight: what Cues weighs"
    `);
    expect(tell(10, 8)).toMatchInlineSnapshot(`
      "fail, monitor Cues
      Cues weighs 10 kg on an arm for 8 kg: 2 kg too much. It sinks or falls. Take a stronger arm.
      : 10 against 8 kg, margin -2
      at workstations.Sound.screens.0.rating, by the maker’s rating, as the file states it
      see monitors.Cues.weight: what Cues weighs"
    `);
    expect(tell(20, 25)).toMatchInlineSnapshot(`
      "marginal, monitor Cues
      Cues weighs 20 kg on an arm for 25 kg, and a 75 or 100 mm mount is made for 14 kg. See that both have a larger pattern.
      : 20 against 14 kg, margin -6
      at workstations.Sound.screens.0.rating, by VESA FDMI part D
      see monitors.Cues.weight: what Cues weighs"
    `);
  });

  it('where its weight is not said', () => {
    expect(tell(undefined, 8)).toMatchInlineSnapshot(`
      "unknown, monitor Cues
      Cannot say whether its arm carries Cues. Add \`weight\` to monitor Cues, such as \`weight 12lb\`.
      at workstations.Sound.screens.0.monitor, by VESA FDMI part D
      ask weight of monitor Cues, as weight 12lb, at monitors.Cues"
    `);
  });

  it('of a desk', () => {
    expect(tell(5, 8, { desks: [aDesk('Left', 1000, { rating: given(40) })] })).toMatchInlineSnapshot(`
      "pass, monitor Cues
      Cues weighs 5 kg on an arm for 8 kg: within its rating.
      : 5 against 8 kg, margin 3
      at workstations.Sound.screens.0.rating, by the maker’s rating, as the file states it
      see monitors.Cues.weight: what Cues weighs

      pass, desk Left
      On Left stand 5 kg, and its rating is 40 kg.
      = 5 kg Cues = 5 kg
      : 5 against 40 kg, margin 35
      at desks.Left.rating, by the maker’s rating, as the file states it"
    `);
    expect(tell(50, 80, { desks: [aDesk('Left', 1000, { rating: given(40) })] })).toMatchInlineSnapshot(`
      "marginal, monitor Cues
      Cues weighs 50 kg on an arm for 80 kg, and a 75 or 100 mm mount is made for 14 kg. See that both have a larger pattern.
      : 50 against 14 kg, margin -36
      at workstations.Sound.screens.0.rating, by VESA FDMI part D
      see monitors.Cues.weight: what Cues weighs

      fail, desk Left
      On Left stand 50 kg, and its rating is 40 kg: 10 kg too much. Move something elsewhere, or take a stronger desk.
      = 50 kg Cues = 50 kg
      : 50 against 40 kg, margin -10
      at desks.Left.rating, by the maker’s rating, as the file states it"
    `);
    expect(tell(undefined, 8, { desks: [aDesk('Left', 1000, { rating: given(40) })] })).toMatchInlineSnapshot(`
      "unknown, monitor Cues
      Cannot say whether its arm carries Cues. Add \`weight\` to monitor Cues, such as \`weight 12lb\`.
      at workstations.Sound.screens.0.monitor, by VESA FDMI part D
      ask weight of monitor Cues, as weight 12lb, at monitors.Cues

      unknown, desk Left
      Cannot say whether Left carries what stands on it. Add \`weight\` to monitor Cues, such as \`weight 12lb\`.
      at desks.Left, by VESA FDMI part D
      ask weight of monitor Cues, as weight 12lb, at monitors.Cues"
    `);
  });
});

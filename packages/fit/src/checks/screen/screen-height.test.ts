import { describe, expect, it } from 'vitest';
import type { Booth, ScreenUse } from '../../booth.js';
import { aBooth, aDesk, aMeasuredOperator, anOperator, aSeat, aStation, byDefault } from '../../testing/booths.js';
import { findingOf, findingsOf, wholeBody } from '../../testing/findings.js';
import { aMonitor, aScreen } from '../../testing/screens.js';
import { outside } from '../../testing/outside.js';

const EYE = 1500;

/** A standing eye 1500 above the floor, 1000 from a screen that is 300 high. */
function looking(screen: ScreenUse, parts: Partial<Booth> = {}): Booth {
  return aBooth({
    operators: [aMeasuredOperator('Noor', wholeBody({ standingEyeHeight: EYE - 25 }))],
    desks: [aDesk('Left', 1000)],
    monitors: [aMonitor('Cues')],
    workstations: [aStation('Sound', 'Left', undefined, ['Noor'], { screens: [screen] })],
    ...parts,
  });
}

const judge = (screen: ScreenUse, parts: Partial<Booth> = {}) => findingOf(looking(screen, parts), 'screen-height');
/** A height seen at an angle from eye level, 1000 away. */
const at = (angle: number) => EYE + 1000 * Math.tan((angle * Math.PI) / 180);

describe('screen-height: top 0 / +20, middle 0..−30, bottom −33 / −60', () => {
  it.each([
    [outside('Panero & Zelnik 1979, 9.2', 'the top edge at eye level'), aScreen('Cues', 1000, 'top', at(0)), 'pass'],
    ['a tenth of a degree is allowed', aScreen('Cues', 1000, 'top', at(0.09)), 'pass'],
    ['above eye level', aScreen('Cues', 1000, 'top', at(1)), 'marginal'],
    [
      outside('NUREG-0700 Rev. 2, 11.1.2-6', 'the top edge 20° above'),
      aScreen('Cues', 1000, 'top', at(20)),
      'marginal',
    ],
    ['more than 20° above', aScreen('Cues', 1000, 'top', at(21)), 'fail'],
    [outside('CCOHS, monitor positioning', 'the middle 15° below'), aScreen('Cues', 1000, 'centre', at(-15)), 'pass'],
    [
      outside('Panero & Zelnik 1979, 9.2', 'the bottom edge 33° below'),
      aScreen('Cues', 1000, 'bottom', at(-33)),
      'pass',
    ],
    ['the bottom lower', aScreen('Cues', 1000, 'bottom', at(-34)), 'marginal'],
    [outside('ANSI/HFS 100-1988', 'the bottom edge 60° below'), aScreen('Cues', 1000, 'bottom', at(-60)), 'marginal'],
    ['the bottom beyond 60° below', aScreen('Cues', 1000, 'bottom', at(-61)), 'fail'],
  ])('%s', (_, screen, verdict) => {
    expect(judge(screen).verdict).toBe(verdict);
  });

  it('the middle decides on a small screen: 30° below is the lowest', () => {
    const monitors = [aMonitor('Cues', 20)];
    expect(judge(aScreen('Cues', 1000, 'centre', at(-30)), { monitors }).verdict).toBe('pass');
    const lower = judge(aScreen('Cues', 1000, 'centre', at(-31)), { monitors });
    expect(lower).toMatchObject({ verdict: 'marginal', limit: -30 });
    expect(lower.measured).toBeCloseTo(-31);
  });

  it.each([
    // What decides, and the bound that it is held to.
    ['the top edge', aScreen('Cues', 1000, 'top', at(5)), 5, 0],
    ['the top edge, beyond the outer limit', aScreen('Cues', 1000, 'top', at(25)), 25, 20],
    ['the bottom edge', aScreen('Cues', 1000, 'bottom', at(-40)), -40, -33],
    ['the bottom edge, beyond the outer limit', aScreen('Cues', 1000, 'bottom', at(-70)), -70, -60],
  ])('%s decides', (_, screen, measured, limit) => {
    const finding = judge(screen);
    expect(finding.measured).toBeCloseTo(measured);
    expect(finding.limit).toBe(limit);
    expect(finding.margin).toBeLessThan(0);
  });

  it('a seated eye is lower by the slump', () => {
    const seated = (slump: number) =>
      judge(aScreen('Cues', 1, 'centre', 1), {
        slump: byDefault(slump),
        seats: [aSeat('Low', 400)],
        operators: [aMeasuredOperator('Noor', wholeBody({ sittingEyeHeight: 740 }))],
        workstations: [aStation('Sound', 'Left', 'Low', ['Noor'], { screens: [aScreen('Cues', 600, 'top', 1120)] })],
      });
    expect(seated(0)).toMatchObject({ verdict: 'pass', posture: 'sit' });
    expect(seated(40).verdict).toBe('marginal');
    expect(seated(40).message).toContain('seated');
  });

  it('leaning the screen back brings its edges together', () => {
    const tilted = judge(aScreen('Cues', 1000, 'centre', 1300, { tilt: byDefault(60) }));
    expect(tilted.terms).toContain('top −7°, middle −11°, bottom −15°');
  });

  it.each([
    ['lowers', aScreen('Cues', 1000, 'top', at(15)), 'Lower Cues to top'],
    ['raises', aScreen('Cues', 1000, 'bottom', at(-50)), 'Raise Cues to bottom'],
  ])('%s the screen to a height that passes', (_, screen, words) => {
    const finding = judge(screen);
    expect(finding.message).toContain(words);
    const text = finding.remedies[0]!.changes[0]!.text;
    const { line } = screen.height!;
    expect(judge(aScreen('Cues', 1000, line, Number.parseInt(text))).verdict).toBe('pass');
  });

  it('one height cannot suit eyes far apart: each gets a finding, and uncertain eyes a share', () => {
    const operators = [
      anOperator('Noor', { stature: 1600 }, 'female'),
      aMeasuredOperator('Tobias', wholeBody({ standingEyeHeight: 1800 })),
    ];
    const screens = [aScreen('Cues', 600, 'top', 1500)];
    const workstations = [aStation('Sound', 'Left', undefined, ['Noor', 'Tobias'], { screens })];
    const findings = findingsOf(looking(screens[0]!, { operators, workstations }), 'screen-height');
    expect(findings.map(({ operator }) => operator)).toEqual(['Noor', 'Tobias']);
    expect(findings[0]!.share).toBeGreaterThan(0.5);
    expect(findings[0]!.share).toBeLessThan(1);
    expect(findings[1]!.verdict).toBe('marginal');
  });

  it.each([
    ['setback', { ...aScreen('Cues', 1, 'centre', 1500), setback: undefined }, 'monitor Cues'],
    ['bottom', { ...aScreen('Cues', 500, 'centre', 1), height: undefined }, 'monitor Cues'],
  ])('asks for %s instead of guessing', (property, screen, of) => {
    const { setback, height, ...rest } = screen;
    const said = { ...rest, ...(setback && { setback }), ...(height && { height }) };
    expect(judge(said)).toMatchObject({ verdict: 'unknown', missing: { property, of } });
  });

  it('asks for the diagonal', () => {
    const { diagonal: _, ...monitor } = aMonitor('Cues');
    const finding = judge(aScreen('Cues', 1000, 'centre', 1400), { monitors: [monitor] });
    expect(finding).toMatchObject({ verdict: 'unknown', missing: { property: 'diagonal', of: 'monitor Cues' } });
  });
});

import { describe, expect, it } from 'vitest';
import type { Booth, ScreenUse, Workstation } from '../../booth.js';
import { aBooth, aDesk, anOperator, aStation, byDefault, given } from '../../testing/booths.js';
import { findingOf, wholeBody } from '../../testing/findings.js';
import { aMonitor, aScreen } from '../../testing/screens.js';
import { outside } from '../../testing/outside.js';
import { told } from '../../testing/told.js';

/** The operator stands at the middle of a desk 1500 wide. */
function turned(parts: Partial<ScreenUse>, station: Partial<Workstation> = {}): Booth {
  const screens = [aScreen('Cues', 600, 'centre', 1400, parts)];
  return aBooth({
    operators: [anOperator('Noor', { stature: wholeBody({}).stature })],
    desks: [aDesk('Left', 1000)],
    monitors: [aMonitor('Cues')],
    workstations: [aStation('Sound', 'Left', undefined, ['Noor'], { screens, ...station })],
  });
}

const judge = (...place: Parameters<typeof turned>) => findingOf(turned(...place), 'screen-turn');
const main = { main: byDefault(true) };
const other = { main: byDefault(false) };

describe('screen-turn: main screen 15° / 35°, others 35° / 60°', () => {
  it.each([
    // NUREG-0700 Rev. 3, 11.2.1.1-6.
    [outside('NUREG-0700 Rev. 3, 11.2.1.1-6', 'T18: 36° for a screen watched often is too far'), main, -36, 'fail'],
    [outside('NUREG-0700 Rev. 3, 11.2.1.1-6', 'T18: 15° is preferred'), main, 15, 'pass'],
    [outside('NUREG-0700 Rev. 3, 11.2.1.1-6', 'T18: 55° for another, the head turning'), other, 55, 'marginal'],
    ['straight ahead', main, 0, 'pass'],
    ['15° left', main, -15, 'pass'],
    ['beyond 15°', main, 15.3, 'marginal'],
    ['35° left', main, -35, 'marginal'],
    ['other screen at 35°', other, -35, 'pass'],
    ['other screen beyond 35°', other, 35.3, 'marginal'],
    ['other screen at 60°', other, 60, 'marginal'],
    ['other screen beyond 60°', other, -60.3, 'fail'],
    ['behind the operator', other, 170, 'fail'],
  ] as const)('%s', (_, role, turn, verdict) => {
    const finding = judge({ ...role, turn: given(turn) });
    expect(finding.verdict).toBe(verdict);
    expect(finding.measured).toBeCloseTo(Math.abs(turn));
  });

  it.each([
    // Right triangles: 600 ahead, so much aside.
    ['450 aside of 600 ahead, right', { at: given(750 + 450) }, {}, Math.atan(0.75), 'fail'],
    ['the same to the left', { at: given(750 - 450) }, {}, Math.atan(0.75), 'fail'],
    ['the operator stands before it', { at: given(1200) }, { at: given(1200) }, 0, 'pass'],
    [
      'leaning over the desk widens the angle',
      { at: given(900) },
      { lean: byDefault(300) },
      Math.atan(0.5),
      'marginal',
    ],
  ] as const)('%s', (_, screen, station, angle, verdict) => {
    const finding = judge({ ...main, ...screen }, station);
    expect(finding.measured).toBeCloseTo((angle * 180) / Math.PI);
    expect(finding.verdict).toBe(verdict);
  });

  it('is one finding for all who work there', () => {
    expect(judge({ turn: given(40) })).not.toHaveProperty('operator');
  });

  it('says to which side, and offers the nearest turn that passes', () => {
    const finding = judge({ ...main, turn: given(-40) });
    expect(finding.message).toContain('40° to the left');
    expect(finding.remedies[0]!.changes[0]!.text).toBe('15deg left');
    expect(judge({ ...main, turn: given(-15) }).verdict).toBe('pass');
  });

  it('takes a screen of which nothing is said as straight ahead, and says so', () => {
    expect(judge(main)).toMatchObject({ verdict: 'pass', measured: 0, assumptions: ['Cues stands straight ahead'] });
    expect(judge({ ...main, turn: given(0) }).assumptions).toEqual([]);
  });
});

describe('screen-turn: what a reader is told', () => {
  const tell = (...args: Parameters<typeof turned>) => told(turned(...args), 'screen-turn');

  it('where it is an easy look', () => {
    expect(tell({ ...main, turn: given(-10) })).toMatchInlineSnapshot(`
      "pass, monitor Cues
      The main screen Cues stands 10° from straight ahead at Sound: an easy look.
      : 10 against 15 deg, margin 5
      at workstations.Sound.screens.0.turn, by NUREG-0700 Rev. 3, 11.2.1.1-6
      default eyes and shoulders 0 mm over the desk’s edge"
    `);
    expect(tell({ ...other })).toMatchInlineSnapshot(`
      "pass, monitor Cues
      The screen Cues stands 0° from straight ahead at Sound: an easy look.
      : 0 against 35 deg, margin 35
      at workstations.Sound.screens.0.monitor, by NUREG-0700 Rev. 3, 11.2.1.1-6
      granted Cues stands straight ahead
      default eyes and shoulders 0 mm over the desk’s edge"
    `);
  });

  it('where the neck stays turned', () => {
    expect(tell({ ...main, turn: given(-30) })).toMatchInlineSnapshot(`
      "marginal, monitor Cues
      The main screen Cues stands 30° to the left at Sound, so the neck stays turned. Bring it within 15°.
      : 30 against 15 deg, margin -15
      at workstations.Sound.screens.0.turn, by NUREG-0700 Rev. 3, 11.2.1.1-6
      do Turn Cues to 15°: an easy look | workstations.Sound.screens.0.turn := 15deg left
      default eyes and shoulders 0 mm over the desk’s edge"
    `);
    expect(tell({ ...other, turn: given(70) })).toMatchInlineSnapshot(`
      "fail, monitor Cues
      The screen Cues stands 70° to the right at Sound, so the neck stays turned. Bring it within 35°.
      : 70 against 60 deg, margin -10
      at workstations.Sound.screens.0.turn, by NUREG-0700 Rev. 3, 11.2.1.1-6
      do Turn Cues to 35°: an easy look | workstations.Sound.screens.0.turn := 35deg right
      default eyes and shoulders 0 mm over the desk’s edge"
    `);
    expect(tell({ ...other, at: given(0) })).toMatchInlineSnapshot(`
      "marginal, monitor Cues
      The screen Cues stands 51° to the left at Sound, so the neck stays turned. Bring it within 35°.
      : 51.34 against 35 deg, margin -16.34
      at workstations.Sound.screens.0.at, by NUREG-0700 Rev. 3, 11.2.1.1-6
      default eyes and shoulders 0 mm over the desk’s edge"
    `);
  });
});

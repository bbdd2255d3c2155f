import { describe, expect, it } from 'vitest';
import type { Booth, ScreenUse, Workstation } from '../../booth.js';
import {
  aBooth,
  aDesk,
  aMeasuredOperator,
  anOperator,
  aSeat,
  aStation,
  byDefault,
  given,
} from '../../testing/booths.js';
import { findingOf, findingsOf, wholeBody } from '../../testing/findings.js';
import { aMonitor, aScreen } from '../../testing/screens.js';
import { outside } from '../../testing/outside.js';

/** A standing eye 1500 above the floor. */
function looking(screen: ScreenUse, station: Partial<Workstation> = {}, parts: Partial<Booth> = {}): Booth {
  return aBooth({
    operators: [aMeasuredOperator('Noor', wholeBody({ standingEyeHeight: 1475, standingElbowHeight: 1000 }))],
    desks: [aDesk('Left', 1000)],
    monitors: [aMonitor('Cues')],
    workstations: [aStation('Sound', 'Left', undefined, ['Noor'], { screens: [screen], ...station })],
    ...parts,
  });
}

const judge = (...place: Parameters<typeof looking>) => findingOf(looking(...place), 'screen-distance');

describe('screen-distance: eye to the middle, preferred 500..1000, outer at least 400', () => {
  it.each([
    [outside('OSHA Computer Workstations, monitors', 'nearest 20 in'), 508, 'pass'],
    [outside('OSHA Computer Workstations, monitors', 'farthest 1000 mm'), 1000, 'pass'],
    ['OSHA prints 40 in beside 1000 mm: the millimetres hold', 1016, 'marginal'],
    ['nearest preferred', 500, 'pass'],
    ['1 mm nearer is allowed', 499, 'pass'],
    ['2 mm is not', 498, 'marginal'],
    [outside('ISO 9241-5:1998, from memory', 'nearest 400 mm'), 400, 'marginal'],
    ['1 mm nearer is allowed there too', 399, 'marginal'],
    ['too near', 398, 'fail'],
    ['1 mm farther is allowed', 1001, 'pass'],
    ['2 mm is not', 1002, 'marginal'],
    ['very far is marginal: the text can grow', 2500, 'marginal'],
  ] as const)('%s: %d mm level with the eye is %s', (_, setback, verdict) => {
    const finding = judge(aScreen('Cues', setback, 'centre', 1500));
    expect(finding).toMatchObject({ verdict, operator: 'Noor', posture: 'stand' });
    expect(finding.measured).toBeCloseTo(setback);
  });

  it.each([
    // Two right triangles: 300-400-500 down, and the same to the side.
    ['below the eye', aScreen('Cues', 400, 'centre', 1200), 500],
    ['above the eye', aScreen('Cues', 400, 'centre', 1800), 500],
    ['to the side', aScreen('Cues', 400, 'centre', 1500, { at: given(1050) }), 500],
    ['its bottom said', aScreen('Cues', 400, 'bottom', 1050), 500],
    ['its top said', aScreen('Cues', 400, 'top', 1350), 500],
    ['over the desk', aScreen('Cues', 400, 'centre', 200, centreOverDesk(200)), 500],
    ['turned 60°', aScreen('Cues', 400, 'centre', 1500, { turn: given(60) }), 800],
  ])('%s', (_, screen, distance) => {
    expect(judge(screen).measured).toBeCloseTo(distance);
  });

  it('an operator who leans over the desk is nearer', () => {
    expect(judge(aScreen('Cues', 550, 'centre', 1500), { lean: byDefault(100) })).toMatchObject({
      verdict: 'marginal',
    });
    expect(judge(aScreen('Cues', 550, 'centre', 1500), { lean: byDefault(-100) })).toMatchObject({ verdict: 'pass' });
  });

  it('a seated eye goes with the seat, less the slump', () => {
    const seated = {
      seats: [aSeat('Low', 400)],
      operators: [aMeasuredOperator('Noor', wholeBody({ sittingEyeHeight: 740 }))],
      workstations: [aStation('Sound', 'Left', 'Low', ['Noor'], { screens: [aScreen('Cues', 400, 'centre', 800)] })],
    };
    expect(judge(aScreen('Cues', 1, 'centre', 1), {}, seated).measured).toBeCloseTo(500);
  });

  it('an eye that is not measured gives a share', () => {
    const operators = [anOperator('Noor', { stature: 1650 }, 'female')];
    const finding = judge(aScreen('Cues', 200, 'centre', 1100), {}, { operators });
    expect(finding.verdict).toBe('marginal');
    expect(finding.share).toBeGreaterThan(0.75);
    expect(finding.share).toBeLessThan(0.89);
    expect(finding.shareAtLimit).toBeGreaterThan(0.99);
  });

  it('says what to do, and the setback that it names passes', () => {
    const near = judge(aScreen('Cues', 420, 'centre', 1500));
    expect(near.message).toContain('nearer than 500 mm tires the eyes. Move it back: set its setback to');
    const [, setback] = /setback to (\d+) mm/.exec(near.message)!;
    expect(judge(aScreen('Cues', Number(setback), 'centre', 1500)).verdict).toBe('pass');
    expect(near.remedies[0]!.changes[0]!.text).toBe(`${setback}mm`);
    expect(judge(aScreen('Cues', 1200, 'centre', 1500)).message).toContain('Bring it nearer');
  });

  it.each([
    ['setback', { ...aScreen('Cues', 1, 'centre', 1500), setback: undefined }, 'monitor Cues'],
    ['bottom', { ...aScreen('Cues', 500, 'centre', 1), height: undefined }, 'monitor Cues'],
  ])('asks for %s instead of guessing', (property, screen, of) => {
    const { setback, height, ...rest } = screen;
    const said = { ...rest, ...(setback && { setback }), ...(height && { height }) };
    expect(judge(said)).toMatchObject({ verdict: 'unknown', missing: { property, of } });
  });

  it('asks for the seat height of a seated operator', () => {
    const seat = { kind: 'stool', name: 'Low', origin: aSeat('Low', 1).origin } as const;
    const screens = [aScreen('Cues', 500, 'centre', 1200)];
    const workstations = [aStation('Sound', 'Left', 'Low', ['Noor'], { screens })];
    const finding = findingOf(looking(screens[0]!, {}, { seats: [seat], workstations }), 'screen-distance');
    expect(finding).toMatchObject({ verdict: 'unknown', missing: { property: 'seat' } });
  });

  it('an adjustable desk, set 75 mm below the elbow, takes what stands on it along', () => {
    const desks = [aDesk('Left', [900, 1100])];
    const screen = aScreen('Cues', 600, 'bottom', 0, {
      height: { line: 'bottom', over: 'desk', distance: given(100) },
    });
    const findings = findingsOf(
      looking(screen, { postures: byDefault(['stand'] as const) }, { desks }),
      'screen-distance',
    );
    expect(findings).toHaveLength(1);
    expect(findings[0]!.measured).toBeCloseTo(Math.hypot(600, 1500 - (950 + 250)), 0);
  });
});

function centreOverDesk(distance: number): Partial<ScreenUse> {
  return { height: { line: 'centre', over: 'desk', distance: given(distance) } };
}

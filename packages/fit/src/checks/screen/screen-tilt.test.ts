import { describe, expect, it } from 'vitest';
import type { Booth, ScreenUse } from '../../booth.js';
import { aBooth, aDesk, aMeasuredOperator, anOperator, aStation, given, fixed } from '../../testing/booths.js';
import { findingOf, findingsOf, wholeBody } from '../../testing/findings.js';
import { aMonitor, aScreen } from '../../testing/screens.js';
import { outside } from '../../testing/outside.js';
import { told } from '../../testing/told.js';

/** A standing eye 1500 above the floor; the middle of the screen lower by so many degrees, 1000 away. */
function facing(down: number, parts: Partial<ScreenUse> = {}, booth: Partial<Booth> = {}): Booth {
  const height = 1500 - 1000 * Math.tan((down * Math.PI) / 180);
  const screens = [aScreen('Cues', 1000, 'centre', height, parts)];
  return aBooth({
    operators: [aMeasuredOperator('Noor', wholeBody({ standingEyeHeight: 1475 }))],
    desks: [aDesk('Left', 1000)],
    monitors: [aMonitor('Cues')],
    workstations: [aStation('Sound', 'Left', undefined, ['Noor'], { screens })],
    ...booth,
  });
}

const judge = (...place: Parameters<typeof facing>) => findingOf(facing(...place), 'screen-tilt');
const tilt = (angle: number): Partial<ScreenUse> => ({ tilt: given(angle) });
/** The operator stands at the middle of a desk 1500 wide: so many degrees aside, and the face looks so many aside. */
function aside(bearing: number, turn?: number): Partial<ScreenUse> {
  const at = given(750 + 1000 * Math.tan((bearing * Math.PI) / 180));
  return turn === undefined ? { at } : { at, turn: given(turn) };
}

describe('screen-tilt: the face within 20° of square to the line of sight, or within 45°', () => {
  it.each([
    // NUREG-0700 Rev. 3: 90° between face and line of sight is ideal, 45° the least; from square that is 0° and 45°.
    [outside('NUREG-0700 Rev. 3, 11.2.1.1', 'T19: 90° between face and line of sight is ideal'), 0, tilt(0), 'pass', 0],
    [outside('NUREG-0700 Rev. 3, 11.2.1.1', 'T19: 40° is too little'), 0, tilt(50), 'fail', 50],
    [outside('NUREG-0700 Rev. 3, 11.2.1.1', '45° is the least'), 0, tilt(45), 'marginal', 45],
    ['beyond it', 0, tilt(45.3), 'fail', 45.3],
    ['20° from square', 0, tilt(20), 'pass', 20],
    ['beyond 20°', 0, tilt(20.3), 'marginal', 20.3],
    ['leaning forward counts alike', 0, tilt(-46), 'fail', 46],
    // Panero & Zelnik 9.2: square to a line of sight 15° down; Kodak: lean it back to 15° for that.
    [
      outside('Panero & Zelnik 1979, 9.2; Kodak 1983', 'square to a line of sight 15° down, leaned back 15°'),
      15,
      tilt(15),
      'pass',
      0,
    ],
    ['15° down, upright', 15, tilt(0), 'pass', 15],
    ['30° down, upright', 30, tilt(0), 'marginal', 30],
    ['30° down, leaned back 45°', 30, tilt(45), 'pass', 15],
    ['50° down, upright', 50, tilt(0), 'fail', 50],
    ['15° up, leaned back 15°', -15, tilt(15), 'marginal', 30],
  ] as const)('%s', (_, down, screen, verdict, measured) => {
    const finding = judge(down, screen);
    expect(finding.measured).toBeCloseTo(measured);
    expect(finding).toMatchObject({ verdict, operator: 'Noor', posture: 'stand' });
  });

  it.each([
    ['turned to, it faces the operator', { turn: given(40) }, 0, 'pass'],
    ['aside, it faces straight across the desk', aside(40), 40, 'marginal'],
    ['aside and swung round', aside(40, 40), 0, 'pass'],
    ['aside and swung half way', aside(40, 20), 20, 'pass'],
    ['aside and swung away', aside(40, -10), 50, 'fail'],
    ['to the left likewise', aside(-40), 40, 'marginal'],
  ] as const)('%s', (_, screen, measured, verdict) => {
    const finding = judge(0, screen);
    expect(finding.measured).toBeCloseTo(measured);
    expect(finding.verdict).toBe(verdict);
  });

  it('lean and swing add up as directions do, not as numbers', () => {
    const cosine = Math.cos((30 * Math.PI) / 180) * Math.cos((40 * Math.PI) / 180);
    expect(judge(0, { ...aside(40), ...tilt(30) }).measured).toBeCloseTo((Math.acos(cosine) * 180) / Math.PI);
  });

  it('says that it took the face to look straight across', () => {
    expect(judge(0, aside(40)).assumptions).toEqual(['Cues faces straight across the desk']);
    expect(judge(0, aside(40, 40)).assumptions).toEqual([]);
  });

  it('leans it to the eye, and the angle that it names passes', () => {
    const finding = judge(30, tilt(-20));
    expect(finding.message).toContain('50° past Noor standing');
    expect(finding.message).toContain('Lean it to the eye: `tilt 30deg back`.');
    expect(finding.remedies[0]!.changes[0]!.text).toBe('30deg back');
    expect(judge(30, tilt(30)).verdict).toBe('pass');
    expect(judge(-30, tilt(20)).remedies[0]!.changes[0]!.text).toBe('30deg forward');
  });

  it('one lean for all who look at it, where one is square enough for each', () => {
    const both = (tall: number) => {
      const operators = [
        aMeasuredOperator('Noor', wholeBody({ standingEyeHeight: 1475 })),
        aMeasuredOperator('Tobias', wholeBody({ standingEyeHeight: tall })),
      ];
      const screens = [aScreen('Cues', 1000, 'centre', 1000, tilt(0))];
      const workstations = [aStation('Sound', 'Left', undefined, ['Noor', 'Tobias'], { screens })];
      return findingsOf(facing(0, {}, { operators, workstations }), 'screen-tilt').map(({ remedies }) => remedies[0]!);
    };
    // Eyes 500 and 700 above the middle, 1000 away: 27° and 35°.
    expect(both(1675).map(({ changes, safe }) => [changes[0]!.text, safe])).toEqual([
      ['31deg back', true],
      ['31deg back', true],
    ]);
    // 500 and 2000 above it: 27° and 63°, each 18° from midway.
    expect(both(2975)[0]!.changes[0]!.text).toBe('45deg back');
    // 500 and 4000: 27° and 76° are too far apart.
    expect(both(4975).map(({ changes, safe }) => [changes[0]!.text, safe])).toEqual([
      ['27deg back', false],
      ['76deg back', false],
    ]);
  });

  it('swings it round if that is the larger fault', () => {
    const finding = judge(5, aside(-50));
    expect(finding.message).toContain('Swing its face round: `turn 50deg left`.');
    expect(finding.remedies).toEqual([]);
    expect(judge(5, aside(-50, 0)).remedies[0]!.changes[0]!.text).toBe('50deg left');
    expect(judge(5, aside(-50, -50)).verdict).toBe('pass');
  });

  it('an eye that is not measured gives a share', () => {
    const operators = [anOperator('Noor', { stature: 1650 }, 'female')];
    const finding = judge(20, { height: { line: 'centre', over: 'floor', distance: fixed(1190) } }, { operators });
    expect(finding.verdict).toBe('marginal');
    expect(finding.share).toBeGreaterThan(0.1);
    expect(finding.share).toBeLessThan(0.9);
    expect(finding.shareAtLimit).toBe(1);
  });

  it('asks where the screen stands', () => {
    const { height: _, ...screen } = aScreen('Cues', 1000, 'centre', 1);
    const workstations = [aStation('Sound', 'Left', undefined, ['Noor'], { screens: [screen] })];
    expect(judge(0, {}, { workstations })).toMatchObject({ verdict: 'unknown', missing: { property: 'bottom' } });
  });
});

describe('screen-tilt: what a reader is told', () => {
  const tell = (...args: Parameters<typeof facing>) => told(facing(...args), 'screen-tilt');

  it('where it faces the eye, and where it is to be leaned', () => {
    expect(tell(0)).toMatchInlineSnapshot(`
      "pass, monitor Cues, Noor, stand
      Cues faces Noor standing, within 0° of square.
      : 0 against 20 deg, margin 20, shares 1 and 1
      at workstations.Sound.screens.0.monitor, by NUREG-0700 Rev. 3, 11.2.1.1 (from MIL-STD-1472G)
      see operators.Noor: what is known of Noor
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a screen that leans back 0°"
    `);
    expect(tell(30)).toMatchInlineSnapshot(`
      "marginal, monitor Cues, Noor, stand
      Cues faces 30° past Noor standing, so its picture looks slanted and pale. Lean it to the eye: \`tilt 30deg back\`.
      : 30 against 20 deg, margin -10, shares 0 and 1
      at workstations.Sound.screens.0.monitor, by NUREG-0700 Rev. 3, 11.2.1.1 (from MIL-STD-1472G)
      see operators.Noor: what is known of Noor
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a screen that leans back 0°"
    `);
    expect(tell(50)).toMatchInlineSnapshot(`
      "fail, monitor Cues, Noor, stand
      Cues faces 50° past Noor standing, so its picture looks slanted and pale. Lean it to the eye: \`tilt 50deg back\`.
      : 50 against 45 deg, margin -5, shares 0 and 0
      at workstations.Sound.screens.0.monitor, by NUREG-0700 Rev. 3, 11.2.1.1 (from MIL-STD-1472G)
      see operators.Noor: what is known of Noor
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a screen that leans back 0°"
    `);
    expect(tell(-30, tilt(5))).toMatchInlineSnapshot(`
      "marginal, monitor Cues, Noor, stand
      Cues faces 35° past Noor standing, so its picture looks slanted and pale. Lean it to the eye: \`tilt 30deg forward\`.
      : 35 against 20 deg, margin -15, shares 0 and 1
      at workstations.Sound.screens.0.tilt, by NUREG-0700 Rev. 3, 11.2.1.1 (from MIL-STD-1472G)
      see operators.Noor: what is known of Noor
      do Set the tilt of Cues to 30deg forward: it faces everyone who looks at it there | workstations.Sound.screens.0.tilt := 30deg forward
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge"
    `);
  });

  it('where it is to be swung round', () => {
    expect(tell(0, aside(30, 0))).toMatchInlineSnapshot(`
      "marginal, monitor Cues, Noor, stand
      Cues faces 30° past Noor standing, so its picture looks slanted and pale. Swing its face round: \`turn 30deg right\`.
      : 30 against 20 deg, margin -10, shares 0 and 1
      at workstations.Sound.screens.0.turn, by NUREG-0700 Rev. 3, 11.2.1.1 (from MIL-STD-1472G)
      see operators.Noor: what is known of Noor
      do Set the turn of Cues to 30deg right: it faces everyone who looks at it there | workstations.Sound.screens.0.turn := 30deg right
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a screen that leans back 0°"
    `);
    expect(tell(0, aside(-50, 0))).toMatchInlineSnapshot(`
      "fail, monitor Cues, Noor, stand
      Cues faces 50° past Noor standing, so its picture looks slanted and pale. Swing its face round: \`turn 50deg left\`.
      : 50 against 45 deg, margin -5, shares 0 and 0
      at workstations.Sound.screens.0.turn, by NUREG-0700 Rev. 3, 11.2.1.1 (from MIL-STD-1472G)
      see operators.Noor: what is known of Noor
      do Set the turn of Cues to 50deg left: it faces everyone who looks at it there | workstations.Sound.screens.0.turn := 50deg left
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a screen that leans back 0°"
    `);
    expect(tell(0, aside(-50))).toMatchInlineSnapshot(`
      "fail, monitor Cues, Noor, stand
      Cues faces 50° past Noor standing, so its picture looks slanted and pale. Swing its face round: \`turn 50deg left\`.
      : 50 against 45 deg, margin -5, shares 0 and 0
      at workstations.Sound.screens.0.monitor, by NUREG-0700 Rev. 3, 11.2.1.1 (from MIL-STD-1472G)
      see operators.Noor: what is known of Noor
      granted Cues faces straight across the desk
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a screen that leans back 0°"
    `);
  });

  it('to eyes far apart', () => {
    expect(
      tell(30, tilt(0), {
        operators: [
          aMeasuredOperator('Noor', wholeBody({ standingEyeHeight: 1375 })),
          aMeasuredOperator('Tobias', wholeBody({ standingEyeHeight: 1875 })),
        ],
        workstations: [
          aStation('Sound', 'Left', undefined, ['Noor', 'Tobias'], {
            screens: [aScreen('Cues', 500, 'centre', 1200, tilt(0))],
          }),
        ],
      }),
    ).toMatchInlineSnapshot(`
      "marginal, monitor Cues, Noor, stand
      Cues faces 22° past Noor standing, so its picture looks slanted and pale. Lean it to the eye: \`tilt 38deg back\`.
      : 21.8 against 20 deg, margin -1.8, shares 0 and 1
      at workstations.Sound.screens.0.tilt, by NUREG-0700 Rev. 3, 11.2.1.1 (from MIL-STD-1472G)
      see operators.Noor: what is known of Noor
      do Set the tilt of Cues to 38deg back: it faces everyone who looks at it there | workstations.Sound.screens.0.tilt := 38deg back
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge

      fail, monitor Cues, Tobias, stand
      Cues faces 54° past Tobias standing, so its picture looks slanted and pale. Lean it to the eye: \`tilt 38deg back\`.
      : 54.46 against 45 deg, margin -9.46, shares 0 and 0
      at workstations.Sound.screens.0.tilt, by NUREG-0700 Rev. 3, 11.2.1.1 (from MIL-STD-1472G)
      see operators.Tobias: what is known of Tobias
      do Set the tilt of Cues to 38deg back: it faces everyone who looks at it there | workstations.Sound.screens.0.tilt := 38deg back
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge"
    `);
  });

  it('to eyes so far apart that no lean suits both', () => {
    // 400 from the screen, level with its middle and 600 above it: 0° and 56°, midway 28° from either.
    expect(
      tell(0, tilt(0), {
        operators: [
          aMeasuredOperator('Noor', wholeBody({ standingEyeHeight: 1275 })),
          aMeasuredOperator('Tobias', wholeBody({ standingEyeHeight: 1875 })),
        ],
        workstations: [
          aStation('Sound', 'Left', undefined, ['Noor', 'Tobias'], {
            screens: [aScreen('Cues', 400, 'centre', 1300, tilt(25))],
          }),
        ],
      }),
    ).toMatchInlineSnapshot(`
      "marginal, monitor Cues, Noor, stand
      Cues faces 25° past Noor standing, so its picture looks slanted and pale. Lean it to the eye: \`tilt 0deg back\`.
      : 25 against 20 deg, margin -5, shares 0 and 1
      at workstations.Sound.screens.0.tilt, by NUREG-0700 Rev. 3, 11.2.1.1 (from MIL-STD-1472G)
      see operators.Noor: what is known of Noor
      weigh Set the tilt of Cues to 0deg back: it faces Noor standing | workstations.Sound.screens.0.tilt := 0deg back
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge

      marginal, monitor Cues, Tobias, stand
      Cues faces 31° past Tobias standing, so its picture looks slanted and pale. Lean it to the eye: \`tilt 56deg back\`.
      : 31.31 against 20 deg, margin -11.31, shares 0 and 1
      at workstations.Sound.screens.0.tilt, by NUREG-0700 Rev. 3, 11.2.1.1 (from MIL-STD-1472G)
      see operators.Tobias: what is known of Tobias
      weigh Set the tilt of Cues to 56deg back: it faces Tobias standing | workstations.Sound.screens.0.tilt := 56deg back
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge"
    `);
  });

  it('swings it round where that is the larger fault, though it leans too', () => {
    // Swung by 30° and leaning 40°, where 15° would do: 25° too many.
    const [leaning, swung] = [judge(15, { ...aside(30, 0), ...tilt(40) }), judge(15, { ...aside(20, 0), ...tilt(40) })];
    expect(leaning.message).toContain('Swing its face round');
    expect(swung.message).toContain('Lean it to the eye');
  });

  it('where something is missing', () => {
    const bare = aScreen('Cues', 1000, 'centre', 1, { height: undefined });
    const workstations = [aStation('Sound', 'Left', undefined, ['Noor'], { screens: [bare] })];
    expect(tell(0, {}, { workstations })).toMatchInlineSnapshot(`
      "unknown, monitor Cues
      Cannot say how squarely the eye meets Cues at Sound. Add \`bottom\` to monitor Cues, such as \`bottom 100mm above desk\`.
      at workstations.Sound.screens.0.monitor, by NUREG-0700 Rev. 3, 11.2.1.1 (from MIL-STD-1472G)
      ask bottom of monitor Cues, as bottom 100mm above desk, at workstations.Sound.screens.0"
    `);
  });
});

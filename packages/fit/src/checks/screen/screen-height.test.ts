import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Finding } from '../../assessment.js';
import type { Booth, ScreenUse } from '../../booth.js';
import {
  aBooth,
  aCrowd,
  aDesk,
  aMeasuredOperator,
  anOperator,
  aSeat,
  aStation,
  byDefault,
  given,
  nowhere,
  fixed,
} from '../../testing/booths.js';
import { findingOf, findingsOf, wholeBody } from '../../testing/findings.js';
import { aMonitor, aScreen } from '../../testing/screens.js';
import type { Range } from '../../units.js';
import { outside } from '../../testing/outside.js';
import { told } from '../../testing/told.js';

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

describe('screen-height: what a reader is told', () => {
  const tell = (...args: Parameters<typeof looking>) => told(looking(...args), 'screen-height');

  it('where the screen is at a good height, too high, and too low', () => {
    expect(tell(aScreen('Cues', 1000, 'centre', at(-15)))).toMatchInlineSnapshot(`
      "pass, monitor Cues, Noor, stand
      Cues is at a good height for Noor standing: its middle is 15° below eye level.
      = top −7°, middle −15°, bottom −23° from eye level
      : -6.73 against 0 deg, margin 6.73, shares 1 and 1
      at workstations.Sound.screens.0.height.distance, by Panero & Zelnik 1979, 9.1 and 9.2
      see operators.Noor: what is known of Noor
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a picture of 4:3; a screen that leans back 0°"
    `);
    expect(tell(aScreen('Cues', 1000, 'top', at(5)))).toMatchInlineSnapshot(`
      "marginal, monitor Cues, Noor, stand
      For Noor standing, Cues stands badly: its top edge is 5° above eye level, so the head tips back. Lower Cues to top 1475 mm above the floor: suits Noor standing.
      = top 5°, middle −4°, bottom −12° from eye level
      : 5 against 0 deg, margin -5, shares 0 and 1
      at workstations.Sound.screens.0.height.distance, by Panero & Zelnik 1979, 9.1 and 9.2
      see operators.Noor: what is known of Noor
      do Lower Cues to top 1475 mm above the floor: suits Noor standing | workstations.Sound.screens.0.height.distance := 1475mm
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a picture of 4:3; a screen that leans back 0°"
    `);
    expect(tell(aScreen('Cues', 1000, 'bottom', at(-50)))).toMatchInlineSnapshot(`
      "marginal, monitor Cues, Noor, stand
      For Noor standing, Cues stands badly: its middle is 46° below eye level and its bottom edge is 50° below eye level, so the neck bends. Raise Cues to bottom 1175 mm above the floor: suits Noor standing.
      = top −42°, middle −46°, bottom −50° from eye level
      : -50 against -33 deg, margin -17, shares 0 and 1
      at workstations.Sound.screens.0.height.distance, by Panero & Zelnik 1979, 9.1 and 9.2
      see operators.Noor: what is known of Noor
      do Raise Cues to bottom 1175 mm above the floor: suits Noor standing | workstations.Sound.screens.0.height.distance := 1175mm
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a picture of 4:3; a screen that leans back 0°"
    `);
    expect(tell(aScreen('Cues', 1000, 'bottom', at(-61)))).toMatchInlineSnapshot(`
      "fail, monitor Cues, Noor, stand
      For Noor standing, Cues stands badly: its middle is 59° below eye level and its bottom edge is 61° below eye level, so the neck bends. Raise Cues to bottom 1175 mm above the floor: suits Noor standing.
      = top −56°, middle −59°, bottom −61° from eye level
      : -61 against -60 deg, margin -1, shares 0 and 0
      at workstations.Sound.screens.0.height.distance, by Panero & Zelnik 1979, 9.1 and 9.2
      see operators.Noor: what is known of Noor
      do Raise Cues to bottom 1175 mm above the floor: suits Noor standing | workstations.Sound.screens.0.height.distance := 1175mm
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a picture of 4:3; a screen that leans back 0°"
    `);
  });

  it('of a large one, whose edges are far apart', () => {
    expect(tell(aScreen('Cues', 500, 'centre', at(0)), { monitors: [aMonitor('Cues', 1500)] })).toMatchInlineSnapshot(`
      "fail, monitor Cues, Noor, stand
      For Noor standing, Cues stands badly: its top edge is 42° above eye level and its bottom edge is 42° below eye level, so the head tips back.
      = top 42°, middle 0°, bottom −42° from eye level
      : 41.99 against 20 deg, margin -21.99, shares 0 and 0
      at workstations.Sound.screens.0.height.distance, by Panero & Zelnik 1979, 9.1 and 9.2
      see operators.Noor: what is known of Noor
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a picture of 4:3; a screen that leans back 0°"
    `);
  });

  it('of a small one, whose middle decides', () => {
    expect(tell(aScreen('Cues', 1000, 'centre', at(-31)), { monitors: [aMonitor('Cues', 20)] })).toMatchInlineSnapshot(`
      "marginal, monitor Cues, Noor, stand
      For Noor standing, Cues stands badly: its middle is 31° below eye level, so the neck bends. Raise Cues to centre 1325 mm above the floor: suits Noor standing.
      = top −31°, middle −31°, bottom −31° from eye level
      : -31 against -30 deg, margin -1, shares 0 and 1
      at workstations.Sound.screens.0.height.distance, by Panero & Zelnik 1979, 9.1 and 9.2
      see operators.Noor: what is known of Noor
      do Raise Cues to centre 1325 mm above the floor: suits Noor standing | workstations.Sound.screens.0.height.distance := 1325mm
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a picture of 4:3; a screen that leans back 0°"
    `);
    expect(tell(aScreen('Cues', 1000, 'centre', at(0.05)), { monitors: [aMonitor('Cues', 1)] })).toMatchInlineSnapshot(`
      "pass, monitor Cues, Noor, stand
      Cues is at a good height for Noor standing: its middle is 0° above eye level.
      = top 0°, middle 0°, bottom 0° from eye level
      : 0.07 against 0 deg, margin -0.07, shares 1 and 1
      at workstations.Sound.screens.0.height.distance, by Panero & Zelnik 1979, 9.1 and 9.2
      see operators.Noor: what is known of Noor
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a picture of 4:3; a screen that leans back 0°"
    `);
  });

  it('above a desk', () => {
    expect(tell(aScreen('Cues', 1000, 'top', 1, { height: { line: 'top', over: 'desk', distance: fixed(700) } })))
      .toMatchInlineSnapshot(`
        "marginal, monitor Cues, Noor, stand
        For Noor standing, Cues stands badly: its top edge is 11° above eye level, so the head tips back. Lower Cues to top 475 mm above the desk: suits Noor standing.
        = top 11°, middle 3°, bottom −6° from eye level
        : 11.31 against 0 deg, margin -11.31, shares 0 and 1
        at workstations.Sound.screens.0.height.distance, by Panero & Zelnik 1979, 9.1 and 9.2
        see operators.Noor: what is known of Noor
        do Lower Cues to top 475 mm above the desk: suits Noor standing | workstations.Sound.screens.0.height.distance := 475mm
        default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a picture of 4:3; a screen that leans back 0°"
      `);
    expect(tell(aScreen('Cues', 1000, 'top', 1, { height: { line: 'bottom', over: 'desk', distance: fixed(500) } })))
      .toMatchInlineSnapshot(`
        "marginal, monitor Cues, Noor, stand
        For Noor standing, Cues stands badly: its top edge is 17° above eye level, so the head tips back. Lower Cues to bottom 175 mm above the desk: suits Noor standing.
        = top 17°, middle 9°, bottom 0° from eye level
        : 16.7 against 0 deg, margin -16.7, shares 0 and 1
        at workstations.Sound.screens.0.height.distance, by Panero & Zelnik 1979, 9.1 and 9.2
        see operators.Noor: what is known of Noor
        do Lower Cues to bottom 175 mm above the desk: suits Noor standing | workstations.Sound.screens.0.height.distance := 175mm
        default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a picture of 4:3; a screen that leans back 0°"
      `);
    expect(tell(aScreen('Cues', 1000, 'top', 1, { height: { line: 'centre', over: 'desk', distance: fixed(700) } })))
      .toMatchInlineSnapshot(`
        "marginal, monitor Cues, Noor, stand
        For Noor standing, Cues stands badly: its top edge is 19° above eye level, so the head tips back. Lower Cues to centre 325 mm above the desk: suits Noor standing.
        = top 19°, middle 11°, bottom 3° from eye level
        : 19.29 against 0 deg, margin -19.29, shares 0 and 1
        at workstations.Sound.screens.0.height.distance, by Panero & Zelnik 1979, 9.1 and 9.2
        see operators.Noor: what is known of Noor
        do Lower Cues to centre 325 mm above the desk: suits Noor standing | workstations.Sound.screens.0.height.distance := 325mm
        default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a picture of 4:3; a screen that leans back 0°"
      `);
  });

  it('to eyes far apart', () => {
    expect(
      told(
        {
          ...looking(aScreen('Cues', 700, 'centre', 1500)),
          operators: [anOperator('Noor', { stature: 1500 }), anOperator('Tobias', { stature: 1900 })],
          workstations: [
            aStation('Sound', 'Left', undefined, ['Noor', 'Tobias'], {
              screens: [aScreen('Cues', 700, 'centre', 1500)],
            }),
          ],
        },
        'screen-height',
      ),
    ).toMatchInlineSnapshot(`
      "marginal, monitor Cues, Noor, stand
      For Noor standing, Cues stands badly: its top edge is 18° above eye level, so the head tips back. Put Cues on an arm that each sets to centre 1255 to 1675 mm above the floor: suits everyone who looks at it. Lower Cues to centre 1270 mm above the floor: suits Noor standing.
      = top 18°, middle 6°, bottom −6° from eye level
      : 18.05 against 0 deg, margin -18.05, shares 0 and 1
      at workstations.Sound.screens.0.height.distance, by Panero & Zelnik 1979, 9.1 and 9.2
      see operators.Noor: what is known of Noor
      weigh Put Cues on an arm that each sets to centre 1255 to 1675 mm above the floor: suits everyone who looks at it | workstations.Sound.screens.0.height.distance := 1255mm..1675mm
      do Lower Cues to centre 1270 mm above the floor: suits Noor standing | workstations.Sound.screens.0.height.distance := 1270mm
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a picture of 4:3; a screen that leans back 0°

      marginal, monitor Cues, Tobias, stand
      For Tobias standing, Cues stands badly: its top edge is 13° below eye level, close to the limit, and eye heights differ. Put Cues on an arm that each sets to centre 1255 to 1675 mm above the floor: suits everyone who looks at it. Raise Cues to centre 1655 mm above the floor: suits Tobias standing.
      = top −13°, middle −24°, bottom −33° from eye level
      : -33.07 against -33 deg, margin -0.07, shares 0.55 and 1
      at workstations.Sound.screens.0.height.distance, by Panero & Zelnik 1979, 9.1 and 9.2
      see operators.Tobias: what is known of Tobias
      weigh Put Cues on an arm that each sets to centre 1255 to 1675 mm above the floor: suits everyone who looks at it | workstations.Sound.screens.0.height.distance := 1255mm..1675mm
      do Raise Cues to centre 1655 mm above the floor: suits Tobias standing | workstations.Sound.screens.0.height.distance := 1655mm
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a picture of 4:3; a screen that leans back 0°"
    `);
  });

  it('where something is missing', () => {
    expect(tell(aScreen('Cues', 1000, 'top', 1, { height: undefined }))).toMatchInlineSnapshot(`
      "unknown, monitor Cues
      Cannot say how high the eye looks at Cues at Sound. Add \`bottom\` to monitor Cues, such as \`bottom 100mm above desk\`.
      at workstations.Sound.screens.0.monitor, by Panero & Zelnik 1979, 9.1 and 9.2
      ask bottom of monitor Cues, as bottom 100mm above desk, at workstations.Sound.screens.0"
    `);
  });
});

/** Somebody whose eye stands so high, in shoes of 25. */
function withEye(eye: number) {
  return aMeasuredOperator(`P${eye}`, wholeBody({ standingEyeHeight: eye - 25 }));
}

describe('screen-height: one height for several', () => {
  /** Eyes so high, 1000 from a screen 300 high: its top edge suits an eye from 349 below it (its bottom edge 33° down) up to it. */
  const lookedAtBy = (top: number, ...eyes: readonly number[]) =>
    looking(aScreen('Cues', 1000, 'top', top), {
      operators: eyes.map(withEye),
      workstations: [
        aStation(
          'Sound',
          'Left',
          undefined,
          eyes.map((eye) => `P${eye}`),
          { screens: [aScreen('Cues', 1000, 'top', top)] },
        ),
      ],
    });
  const offered = (...args: Parameters<typeof lookedAtBy>) =>
    findingsOf(lookedAtBy(...args), 'screen-height').flatMap(({ operator, remedies }) =>
      remedies
        .filter(({ changes }) => changes.length > 0)
        .map(({ title, changes, safe }) => [operator, title, changes[0]!.text, safe]),
    );

  it.each<[string, readonly [number, ...number[]], number]>([
    // Best is a middle 10° down: the top edge 26 below an eye. Midway between two eyes, but no higher than the lower one.
    ['the eyes near each other: best for both', [1700, 1500, 1520], 1485],
    ['farther apart: as high as the lower eye allows', [1700, 1500, 1600], 1500],
    ['as far apart as one height suits', [1900, 1500, 1845], 1500],
    ['three of them', [1900, 1500, 1560, 1620], 1500],
  ])('%s', (_, args, height) => {
    expect(new Set(offered(...args).map(([, , text]) => text))).toEqual(new Set([`${height}mm`]));
    expect(
      findingsOf(lookedAtBy(height, ...args.slice(1)), 'screen-height').map(({ verdict }) => verdict),
    ).not.toContain('marginal');
    expect(offered(...args).every(([, , , safe]) => safe)).toBe(true);
  });

  it('eyes too far apart for one height: an arm, and each their own where nobody loses by it', () => {
    expect(told(lookedAtBy(1880, 1500, 1900), 'screen-height')).toMatchInlineSnapshot(`
      "fail, monitor Cues, P1500, stand
      For P1500 standing, Cues stands badly: its top edge is 21° above eye level, so the head tips back. Put Cues on an arm that each sets to top 1470 to 1875 mm above the floor: suits everyone who looks at it.
      = top 21°, middle 13°, bottom 5° from eye level
      : 20.81 against 20 deg, margin -0.81, shares 0 and 0
      at workstations.Sound.screens.0.height.distance, by Panero & Zelnik 1979, 9.1 and 9.2
      see operators.P1500: what is known of P1500
      weigh Put Cues on an arm that each sets to top 1470 to 1875 mm above the floor: suits everyone who looks at it | workstations.Sound.screens.0.height.distance := 1470mm..1875mm
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a picture of 4:3; a screen that leans back 0°

      pass, monitor Cues, P1900, stand
      Cues is at a good height for P1900 standing: its middle is 10° below eye level.
      = top −1°, middle −10°, bottom −18° from eye level
      : -1.15 against 0 deg, margin 1.15, shares 1 and 1
      at workstations.Sound.screens.0.height.distance, by Panero & Zelnik 1979, 9.1 and 9.2
      see operators.P1900: what is known of P1900
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a picture of 4:3; a screen that leans back 0°"
    `);
    // Where it suits neither nobody loses by either.
    const arm: readonly unknown[] = [expect.stringContaining('on an arm'), '1470mm..1875mm', false];
    expect(offered(2000, 1500, 1900)).toEqual([
      ['P1500', ...arm],
      ['P1500', expect.stringContaining('suits P1500 standing'), '1475mm', true],
      ['P1900', ...arm],
      ['P1900', expect.stringContaining('suits P1900 standing'), '1875mm', true],
    ]);
  });

  it.each<[string, readonly [number, ...number[]], string | undefined]>([
    // P1500 sees a top edge well from 1151 to 1500, P1900 from 1551 to 1900; best is 26 below the eye.
    ['two whose heights do not meet', [1880, 1500, 1900], '1470 to 1875 mm'],
    ['and one between them', [1880, 1500, 1700, 1900], '1470 to 1875 mm'],
    ['whoever is highest or lowest counts', [1880, 1500, 2000, 1900], '1470 to 1975 mm'],
    ['none where one height suits all', [1900, 1500, 1845], undefined],
    ['none for one person', [1900, 1500], undefined],
  ])('an arm for eyes too far apart: %s', (_, args, range) => {
    const [{ message }] = findingsOf(lookedAtBy(...args), 'screen-height') as [Finding];
    const wanted =
      range && `Put Cues on an arm that each sets to top ${range} above the floor: suits everyone who looks at it.`;
    if (wanted) expect(message).toContain(wanted);
    else expect(message).not.toContain('arm');
  });

  it('nor where a large screen is so near that no height would suit one of them', () => {
    const far = aScreen('Wall', 1000, 'top', 2300);
    const near = { ...far, setback: given(400) };
    const at = (screen: ScreenUse) => {
      const booth = lookedAtBy(2300, 1500, 1900);
      const workstations = booth.workstations.map((station) => ({ ...station, screens: [screen] }));
      return findingsOf({ ...booth, monitors: [aMonitor('Wall', 700)], workstations }, 'screen-height')[0]!.message;
    };
    expect(at(far)).toContain('arm');
    expect(at(near)).not.toContain('arm');
  });

  it('nor where it would have to reach below the desk', () => {
    const at = (bottom: number) => {
      const height = { line: 'bottom', over: 'desk', distance: fixed(bottom) } as const;
      const screen = aScreen('Cues', 1000, 'bottom', bottom, { height });
      const booth = lookedAtBy(1880, 1250, 1800);
      const workstations = booth.workstations.map((station) => ({ ...station, screens: [screen] }));
      return { ...booth, workstations };
    };
    const onDesk = (height: number) =>
      findingsOf({ ...at(300), desks: [aDesk('Left', height)] }, 'screen-height')[0]!.message;
    // 10° below eyes 250 over the desk is 76 too low for half of a screen 300 high; over a desk 100 lower it is 24 above.
    expect(onDesk(900)).toContain('Put Cues on an arm that each sets to bottom 20 to 575 mm above the desk');
    expect(onDesk(1000)).not.toContain('arm');
  });

  it('no arm for a crowd beside somebody whom one height suits; beside others whom none suits the arm is for the crowd too', () => {
    const messages = (...eyes: readonly number[]) => {
      const booth = lookedAtBy(1880, ...eyes);
      const [station] = booth.workstations;
      const people = [...station!.people, { name: 'Helpers', origin: nowhere }];
      const crowded = { ...booth, crowds: [aCrowd('Helpers', 0.5)], workstations: [{ ...station!, people }] };
      return findingsOf(crowded, 'screen-height')
        .filter(({ verdict }) => verdict !== 'pass')
        .map(({ message }) => message);
    };
    // That of the crowd’s mean would not suit P1150: what the mean wants says little of the crowd.
    for (const eye of [1500, 1150]) for (const message of messages(eye)) expect(message).not.toContain('arm');
    // Of the crowd the shortest set it lower than P1600 would, and the tallest lower than P2000.
    for (const message of messages(1600, 2000)) {
      const [, from, to] = /on an arm that each sets to top (\d+) to (\d+) mm above/.exec(message)!;
      expect(Number(from)).toBeLessThan(1575);
      expect(Number(to)).toBe(1975);
    }
    expect(messages(1600, 2000).length).toBeGreaterThan(1);
  });

  it('the reach that is told of an arm has a height for each', () => {
    const eyes = fc.array(fc.integer({ min: 1250, max: 2000 }), { minLength: 2, maxLength: 4 });
    let told = 0;
    fc.assert(
      fc.property(eyes, (all) => {
        const people = [...new Set(all)];
        const { message } = findingsOf(lookedAtBy(2300, ...people), 'screen-height')[0]!;
        const [, from, to] = /to top (\d+) to (\d+) mm above/.exec(message) ?? [];
        if (from === undefined) return;
        told++;
        for (const eye of people) {
          const best = Math.min(Number(to), Math.max(Number(from), eye - 26));
          expect(findingsOf(lookedAtBy(best, eye), 'screen-height')[0]!.verdict, `${eye} at ${best}`).toBe('pass');
        }
      }),
    );
    expect(told).toBeGreaterThan(10);
  });

  it.each([
    ['an arm in place of a height', 2300, [1500, 1900]],
    ['an arm in place of a height, of people whose eyes are not known', 2300, ['Noor', 'Tobias']],
    ['an arm in place of a height, so near that the top edge is level with the eye', 2300, [1503, 1899], 'floor', 500],
    ['an arm that reaches lower', { min: 1600, max: 1900 }, [1500, 1900]],
    ['an arm that reaches higher, for people whose eyes are not known', { min: 1300, max: 1400 }, ['Noor', 'Tobias']],
    ['an arm that reaches farther, for a crowd', { min: 1500, max: 1520 }, ['Helpers']],
    ['an arm that reaches farther, for a crowd, over a desk that moves', { min: 640, max: 650 }, ['Helpers'], 'desk'],
  ] as const)(
    'suits everyone once it is taken: %s',
    (_, top, people, said = undefined, near: number | undefined = undefined) => {
      const [over, setback] = [said ?? 'floor', near ?? 1000];
      const at = (height: number | Range) => {
        const distance = typeof height === 'number' ? fixed(height) : given(height);
        const screens = [aScreen('Cues', setback, 'top', 0, { height: { line: 'top', over, distance } })];
        const eyes: readonly (number | string)[] = people;
        return aBooth({
          operators: [
            ...eyes.flatMap((eye) => (typeof eye === 'number' ? [withEye(eye)] : [])),
            anOperator('Noor', { stature: 1500 }, 'female'),
            anOperator('Tobias', { stature: 1960 }, 'male'),
          ],
          crowds: [aCrowd('Helpers', 0.5)],
          desks: [aDesk('Left', over === 'desk' ? [900, 1000] : 1000)],
          monitors: [aMonitor('Cues')],
          workstations: [
            aStation(
              'Sound',
              'Left',
              undefined,
              people.map((one) => (typeof one === 'number' ? `P${one}` : one)),
              {
                screens,
              },
            ),
          ],
        });
      };
      const before = findingsOf(at(top), 'screen-height');
      expect(before.map(({ verdict }) => verdict)).not.toEqual(people.map(() => 'pass'));
      const arm = before.flatMap(({ remedies }) => remedies).find(({ title }) => title.includes('arm'))!;
      const [, min, max] = /^(\d+)mm\.\.(\d+)mm$/.exec(arm.changes[0]!.text)!;
      if (typeof top !== 'number') {
        // The arm that is there is as long as it is: another reaches farther, and no fixed height is offered in its place.
        expect(Number(min)).toBeLessThanOrEqual(top.min);
        expect(Number(max)).toBeGreaterThanOrEqual(top.max);
        expect(before.flatMap(({ remedies }) => remedies).every(({ title }) => title.includes('arm'))).toBe(true);
      }
      const after = findingsOf(at({ min: Number(min), max: Number(max) }), 'screen-height');
      expect(after.map(({ verdict, remedies }) => [verdict, remedies])).toEqual(people.map(() => ['pass', []]));
    },
  );

  it('offers nothing where it stands at the best height already and eyes differ', () => {
    // 360 high at 600: from the eye down to 30 below it all is well, and people of one stature differ by more.
    const parts = { operators: [anOperator('Noor', { stature: 1600 }, 'female')], monitors: [aMonitor('Cues', 600)] };
    const at = (top: number) => judge(aScreen('Cues', 600, 'top', top), parts);
    const best = Number.parseInt(at(1600).remedies[0]!.changes[0]!.text);
    expect(at(best)).toMatchObject({ verdict: 'marginal', remedies: [] });
    expect(at(best + 5).remedies).toHaveLength(1);
  });
});

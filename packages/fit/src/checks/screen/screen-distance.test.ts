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
  fixed,
} from '../../testing/booths.js';
import { findingOf, findingsOf, wholeBody } from '../../testing/findings.js';
import { aMonitor, aScreen } from '../../testing/screens.js';
import { outside } from '../../testing/outside.js';
import { told } from '../../testing/told.js';

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
      height: { line: 'bottom', over: 'desk', distance: fixed(100) },
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
  return { height: { line: 'centre', over: 'desk', distance: fixed(distance) } };
}

it.each([
  ['straight ahead', aScreen('Cues', 1200, 'centre', 1500), 980],
  // 20 inside the band, and the screen stays as far aside and below: √(520² − 240²) = 461, √(520² − 320²) = 410, √(980² − 720²) = 665.
  ['aside and too near', aScreen('Cues', 320, 'centre', 1500, { at: given(750 + 240) }), 465],
  ['more aside than ahead', aScreen('Cues', 240, 'centre', 1500, { at: given(750 + 320) }), 410],
  ['aside and too far', aScreen('Cues', 960, 'centre', 1500, { at: given(750 + 720) }), 660],
  ['below the eye and too near', aScreen('Cues', 240, 'centre', 1500 - 320), 410],
  ['above the eye and too far', aScreen('Cues', 960, 'centre', 1500 + 720), 660],
  // Along the line to it: half of 520 is 260.
  ['turned by 60°', aScreen('Cues', 200, 'centre', 1500, { turn: given(60) }), 260],
  [
    'turned by 120°, where the setback is the distance',
    aScreen('Cues', 400, 'centre', 1500, { turn: given(120) }),
    520,
  ],
  ['straight below the eye', aScreen('Cues', 0, 'centre', 1500 - 450), 265],
])('%s: the setback that it names brings it 20 mm inside the band', (_, screen, setback) => {
  const { remedies, verdict } = judge(screen);
  expect(verdict).not.toBe('pass');
  expect(remedies[0]!.changes[0]!.text).toBe(`${setback}mm`);
  expect(judge({ ...screen, setback: given(setback) }).verdict).toBe('pass');
});

it.each([
  ['with the shoulders 100 over the edge', 100, 1080],
  ['100 behind it', -100, 880],
])('%s the setback is that much more or less', (_, lean, setback) => {
  const finding = judge(aScreen('Cues', 1500, 'centre', 1500), { lean: byDefault(lean) });
  expect(finding.remedies[0]!.changes[0]!.text).toBe(`${setback}mm`);
});

it('offers none where the screen is too far aside, or too high, or the text does not say what to change', () => {
  const aside = judge(aScreen('Cues', 300, 'centre', 1500, { at: given(750 + 981) }));
  expect(aside.message).toContain('Move it along the desk to the operator: no setback brings it within 1000 mm.');
  const high = judge(aScreen('Cues', 300, 'centre', 1500 + 981, { at: given(750 + 100) }));
  expect(high.message).toContain('Bring it nearer to the height of the eye: no setback brings it within 1000 mm.');
  const back = judge(aScreen('Cues', 300, 'centre', 1500 + 700), { lean: byDefault(-690) });
  expect(back.message).toContain('no setback');
  const unsaid = judge({ ...aScreen('Cues', 1200, 'centre', 1500), setback: { value: 1200, isDefault: false } });
  for (const finding of [aside, high, back, unsaid])
    expect(finding).toMatchObject({ verdict: 'marginal', remedies: [] });
});

describe('screen-distance: what a reader is told', () => {
  const tell = (...args: Parameters<typeof looking>) => told(looking(...args), 'screen-distance');

  it('where it is right, too near, and too far', () => {
    expect(tell(aScreen('Cues', 700, 'centre', 1500))).toMatchInlineSnapshot(`
      "pass, monitor Cues, Noor, stand
      Cues is 700 mm from the eyes of Noor standing: a good viewing distance.
      : 700 against 500 mm, margin 200, shares 1 and 1
      at workstations.Sound.screens.0.setback, by OSHA Computer Workstations, monitors
      see operators.Noor: what is known of Noor
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a picture of 4:3"
    `);
    expect(tell(aScreen('Cues', 450, 'centre', 1500))).toMatchInlineSnapshot(`
      "marginal, monitor Cues, Noor, stand
      Cues is 450 mm from the eyes of Noor standing; nearer than 500 mm tires the eyes. Move it back: set its setback to 520 mm.
      : 450 against 500 mm, margin -50, shares 0 and 1
      at workstations.Sound.screens.0.setback, by OSHA Computer Workstations, monitors
      see operators.Noor: what is known of Noor
      weigh Move it back: setback 520mm | workstations.Sound.screens.0.setback := 520mm
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a picture of 4:3"
    `);
    expect(tell(aScreen('Cues', 380, 'centre', 1500))).toMatchInlineSnapshot(`
      "fail, monitor Cues, Noor, stand
      Cues is 380 mm from the eyes of Noor standing; nearer than 500 mm tires the eyes. Move it back: set its setback to 520 mm.
      : 380 against 400 mm, margin -20, shares 0 and 0
      at workstations.Sound.screens.0.setback, by OSHA Computer Workstations, monitors
      see operators.Noor: what is known of Noor
      weigh Move it back: setback 520mm | workstations.Sound.screens.0.setback := 520mm
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a picture of 4:3"
    `);
    expect(tell(aScreen('Cues', 1200, 'centre', 1500))).toMatchInlineSnapshot(`
      "marginal, monitor Cues, Noor, stand
      Cues is 1200 mm from the eyes of Noor standing; beyond 1000 mm text must grow. Bring it nearer: set its setback to 980 mm.
      : 1200 against 1000 mm, margin -200, shares 0 and 1
      at workstations.Sound.screens.0.setback, by OSHA Computer Workstations, monitors
      see operators.Noor: what is known of Noor
      weigh Bring it nearer: setback 980mm | workstations.Sound.screens.0.setback := 980mm
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a picture of 4:3"
    `);
  });

  it('of somebody of whom little is known', () => {
    expect(tell(aScreen('Cues', 420, 'centre', 1250), {}, { operators: [anOperator('Noor', { stature: 1600 })] }))
      .toMatchInlineSnapshot(`
        "marginal, monitor Cues, Noor, stand
        Cues is 498 mm from the eyes of Noor standing; nearer than 500 mm tires the eyes. Move it back: set its setback to 450 mm.
        : 497.87 against 500 mm, margin -2.13, shares 0.42 and 1
        at workstations.Sound.screens.0.setback, by OSHA Computer Workstations, monitors
        see operators.Noor: what is known of Noor
        weigh Move it back: setback 450mm | workstations.Sound.screens.0.setback := 450mm
        default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a picture of 4:3"
      `);
  });

  it('where it is not said where the screen stands, or at what eyes', () => {
    expect(tell(aScreen('Cues', 700, 'centre', 1500, { setback: undefined }))).toMatchInlineSnapshot(`
      "unknown, monitor Cues
      Cannot say how far the eye is from Cues at Sound. Add \`setback\` to monitor Cues, such as \`setback 510mm\`.
      at workstations.Sound.screens.0.monitor, by OSHA Computer Workstations, monitors
      ask setback of monitor Cues, as setback 510mm, at workstations.Sound.screens.0"
    `);
    expect(tell(aScreen('Cues', 700, 'centre', 1500), { postures: given(['sit'] as const) })).toMatchInlineSnapshot(`
      "unknown, workstation Sound, sit
      Cannot say how far the eye is from the screens of Sound. Add \`stool\` to workstation Sound, such as \`stool Tall\`.
      at workstations.Sound, by OSHA Computer Workstations, monitors
      ask stool of workstation Sound, as stool Tall, at workstations.Sound"
    `);
  });

  it('where it is farther than midway, or so near a bound that others of the same stature are beyond it', () => {
    expect(tell(aScreen('Cues', 900, 'centre', 1500))).toMatchInlineSnapshot(`
      "pass, monitor Cues, Noor, stand
      Cues is 900 mm from the eyes of Noor standing: a good viewing distance.
      : 900 against 1000 mm, margin 100, shares 1 and 1
      at workstations.Sound.screens.0.setback, by OSHA Computer Workstations, monitors
      see operators.Noor: what is known of Noor
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a picture of 4:3"
    `);
    const operators = [anOperator('Noor', { stature: 1600 })];
    expect(tell(aScreen('Cues', 420, 'centre', 1243), {}, { operators })).toMatchInlineSnapshot(`
      "marginal, monitor Cues, Noor, stand
      Cues is 502 mm from the eyes of Noor standing; so near the least of 500 mm that others of the same stature are nearer. Move it back: set its setback to 445 mm.
      : 501.66 against 500 mm, margin 1.66, shares 0.75 and 1
      at workstations.Sound.screens.0.setback, by OSHA Computer Workstations, monitors
      see operators.Noor: what is known of Noor
      weigh Move it back: setback 445mm | workstations.Sound.screens.0.setback := 445mm
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a picture of 4:3"
    `);
    expect(tell(aScreen('Cues', 700, 'centre', 807), {}, { operators })).toMatchInlineSnapshot(`
      "marginal, monitor Cues, Noor, stand
      Cues is 997 mm from the eyes of Noor standing; so near the most of 1000 mm that others of the same stature are farther. Bring it nearer: set its setback to 670 mm.
      : 997.29 against 1000 mm, margin 2.71, shares 0.74 and 1
      at workstations.Sound.screens.0.setback, by OSHA Computer Workstations, monitors
      see operators.Noor: what is known of Noor
      weigh Bring it nearer: setback 670mm | workstations.Sound.screens.0.setback := 670mm
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a picture of 4:3"
    `);
  });
});

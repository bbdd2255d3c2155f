import { describe, expect, it } from 'vitest';
import type { Booth, Control, Workstation } from '../../booth.js';
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
} from '../../testing/booths.js';
import { findingOf, findingsOf, wholeBody } from '../../testing/findings.js';
import { outside } from '../../testing/outside.js';
import { told } from '../../testing/told.js';

function aControl(setback: number, parts: Partial<Control> = {}): Control {
  return {
    name: 'Faders',
    origin: nowhere,
    setback: given(setback),
    depth: byDefault(0),
    width: byDefault(0),
    height: byDefault(0),
    use: byDefault('constant'),
    ...parts,
  };
}

/** Stature 1600 and a thumb-tip reach that makes an arm of 500; a standing shoulder at 1300. */
const noor = aMeasuredOperator(
  'Noor',
  wholeBody({ stature: 1600, thumbTipReach: 500 + 110 + 0.0216 * 1600, standingShoulderHeight: 1275 }),
);

/** The operator stands at the middle of a desk 1500 wide and 1000 high. */
function working(control: Control, station: Partial<Workstation> = {}, parts: Partial<Booth> = {}): Booth {
  return aBooth({
    operators: [noor],
    desks: [aDesk('Left', 1000)],
    workstations: [aStation('Sound', 'Left', undefined, ['Noor'], { controls: [control], ...station })],
    ...parts,
  });
}

const judge = (...place: Parameters<typeof working>) => findingOf(working(...place), 'reach');
const occasional = { use: given('occasional' as const) };

describe('reach, constant use: at most 400 from the shoulders, outer 450', () => {
  it.each([
    // AUVA: small grasping space 350 to 450 mm from the shoulder; State Fund: 13 to 17 in.
    [outside('AUVA, grasping space', '350 mm from the shoulder'), 350, 'pass'],
    [outside('California State Fund and NIOSH 97-117', '13 in from the shoulder'), 330, 'pass'],
    [outside('California State Fund and NIOSH 97-117', '17 in from the shoulder'), 432, 'marginal'],
    ['at the bound', 400, 'pass'],
    ['1 mm is allowed', 401, 'pass'],
    ['2 mm is not', 402, 'marginal'],
    [outside('AUVA, grasping space', '450 mm from the shoulder'), 450, 'marginal'],
    ['1 mm is allowed there too', 451, 'marginal'],
    ['beyond it', 452, 'fail'],
  ] as const)('%s: %d', (_, setback, verdict) => {
    expect(judge(aControl(setback))).toMatchObject({ verdict, measured: setback });
  });

  it.each([
    ['its middle counts', aControl(200, { depth: given(400) }), {}, 400],
    ['to the side: a 3-4-5 triangle', aControl(400, { at: given(750 + 300) }), {}, 500],
    ['to the left likewise', aControl(300, { at: given(750 - 400) }), {}, 500],
    ['the operator’s place counts', aControl(400, { at: given(1050) }), { at: given(1050) }, 400],
    ['leaning over the desk brings the shoulders nearer', aControl(500), { lean: given(100) }, 400],
    ['sitting back takes them away', aControl(300), { lean: given(-100) }, 400],
  ] as const)('%s', (_, control, station, measured) => {
    expect(judge(control, station).measured).toBeCloseTo(measured);
  });

  it('is one finding, whoever works there', () => {
    const finding = judge(aControl(500));
    expect(finding).not.toHaveProperty('operator');
    expect(finding.subject).toEqual({ kind: 'control', name: 'Faders' });
  });

  it('brings it nearer, and the setback that it names passes', () => {
    const finding = judge(aControl(500, { depth: given(100) }));
    expect(finding.message).toContain('550 mm from the shoulders of whoever works at Sound; beyond 400 mm arms tire.');
    expect(finding.remedies[0]!.changes[0]!.text).toBe('350mm');
    expect(judge(aControl(350, { depth: given(100) })).verdict).toBe('pass');
  });

  it.each([
    // 400 from the shoulders and 200 aside of them: √(400² − 200²) = 346 ahead, in steps of 5.
    ['beside the operator', aControl(600, { at: given(750 + 200) }), {}, 345],
    ['shoulders 100 over the desk go 100 farther', aControl(600), { lean: given(100) }, 500],
    ['shoulders 100 behind its edge go 100 less far', aControl(600), { lean: given(-100) }, 300],
  ])('%s: the setback that it names passes, the next one does not', (_, control, station, setback) => {
    expect(judge(control, station).remedies[0]!.changes[0]!.text).toBe(`${setback}mm`);
    expect(judge({ ...control, setback: given(setback) }, station).verdict).toBe('pass');
    expect(judge({ ...control, setback: given(setback + 5) }, station).verdict).not.toBe('pass');
  });

  it('the edge of the desk is the nearest setback that it names', () => {
    const [fits, deep] = [800, 805].map((depth) => judge(aControl(50, { depth: given(depth) })));
    expect(fits!.remedies[0]!.changes[0]!.text).toBe('0mm');
    expect(deep!.message).toContain('choose a shallower one');
  });

  it('does not offer a setback where none helps', () => {
    const aside = judge(aControl(100, { at: given(1300) }));
    expect(aside.message).toContain('Move it along the desk to the operator');
    expect(aside.remedies).toEqual([]);
    const deep = judge(aControl(0, { depth: given(1000) }));
    expect(deep.message).toContain('choose a shallower one');
    expect(deep.remedies).toEqual([]);
  });
});

describe('reach, occasional use: at most √(L² − Δh²)', () => {
  it.each([
    // Arm 500, shoulder 300 above the desk: 400.
    ['as far as the arm goes', aControl(400, occasional), 'pass', 400],
    ['1 mm is allowed', aControl(401, occasional), 'pass', 400],
    ['2 mm is not', aControl(402, occasional), 'fail', 400],
    ['at shoulder height the whole arm', aControl(499, { ...occasional, height: given(300) }), 'pass', 500],
    ['above the shoulder less again', aControl(402, { ...occasional, height: given(600) }), 'fail', 400],
    ['far above it nothing', aControl(50, { ...occasional, height: given(900) }), 'fail', 0],
    ['well within', aControl(200, occasional), 'pass', 400],
  ] as const)('%s', (_, control, verdict, limit) => {
    const finding = judge(control);
    expect(finding).toMatchObject({ verdict, operator: 'Noor', posture: 'stand' });
    expect(finding.limit).toBeCloseTo(limit);
  });

  it('a seated shoulder is sitting height less what the standing one is below the crown, less the slump', () => {
    // 900 − (1600 − 1275) − 40 + a seat of 500: 1035, which is 335 above a desk of 700.
    const operators = [{ ...noor, measured: { ...noor.measured, sittingHeight: given(900) } }];
    const seated = {
      operators,
      desks: [aDesk('Left', 700)],
      seats: [aSeat('Low', 500)],
      workstations: [aStation('Sound', 'Left', 'Low', ['Noor'], { controls: [aControl(300, occasional)] })],
    };
    const finding = judge(aControl(1), {}, seated);
    expect(finding).toMatchObject({ verdict: 'pass', posture: 'sit' });
    expect(finding.limit).toBeCloseTo(Math.sqrt(500 ** 2 - 335 ** 2));
    expect(judge(aControl(1), {}, { ...seated, slump: byDefault(0) }).limit).toBeCloseTo(
      Math.sqrt(500 ** 2 - 375 ** 2),
    );
  });

  it(
    outside(
      'Drillis & Contini 1966, in University of Michigan course notes',
      'T22: at shoulder height a woman of 1504 mm grips about 558 mm away',
    ),
    () => {
      const operators = [anOperator('Noor', { stature: 1504 }, 'female')];
      const finding = judge(aControl(1, { ...occasional, height: given(230) }), {}, { operators });
      expect(Math.abs(finding.limit! - 558)).toBeLessThan(15);
    },
  );

  it(outside('AUVA, grasping space', 'extended reach 550 mm', 'to 650 mm'), () => {
    const crowds = [aCrowd('Volunteers', 0.5)];
    const desks = [aDesk('Left', 1400)];
    const share = (setback: number) => {
      const controls = [aControl(setback, occasional)];
      const workstations = [aStation('Sound', 'Left', undefined, ['Volunteers'], { controls })];
      return judge(aControl(1), {}, { crowds, desks, workstations }).share!;
    };
    expect(share(550)).toBeGreaterThan(0.85);
    expect(share(650)).toBeLessThan(0.5);
  });

  it('an arm that is not measured gives a share, and the setback that it names suits everyone there', () => {
    const operators = [anOperator('Noor', { stature: 1600 }), anOperator('Tobias', { stature: 1850 })];
    const place = (setback: number) => {
      const controls = [aControl(setback, occasional)];
      const workstations = [aStation('Sound', 'Left', undefined, ['Noor', 'Tobias'], { controls })];
      return findingsOf(working(controls[0]!, {}, { operators, workstations }), 'reach');
    };
    const [short] = place(470);
    expect(short).toMatchObject({ operator: 'Noor', verdict: 'marginal' });
    expect(short!.share).toBeGreaterThan(0.5);
    expect(short!.share).toBeLessThan(0.9);
    const setback = Number.parseInt(short!.remedies[0]!.changes[0]!.text);
    expect(setback).toBeLessThan(470);
    expect(place(setback).map(({ verdict }) => verdict)).toEqual(['pass', 'pass']);
  });

  it.each([
    ['setback', 'control Faders', working(without(aControl(1), 'setback'))],
    [
      'width',
      'desk Left',
      working(aControl(1, { at: given(1) }), {}, { desks: [without(aDesk('Left', 1000), 'width')] }),
    ],
    ['height', 'desk Left', working(aControl(1, occasional), {}, { desks: [without(aDesk('Left', 1000), 'height')] })],
    ['desk', 'workstation Sound', working(aControl(1, { at: given(1) }), {}, { desks: [] })],
  ])('asks for the %s of %s', (property, of, booth) => {
    expect(findingOf(booth, 'reach')).toMatchObject({ verdict: 'unknown', missing: { property, of } });
  });

  it('takes a control of which no place along the desk is said as straight ahead, and says so', () => {
    expect(judge(aControl(300)).assumptions).toEqual(['Faders is straight ahead']);
    expect(judge(aControl(300, { at: given(750) })).assumptions).toEqual([]);
  });
});

function without<T extends object, K extends keyof T>(whole: T, key: K): Omit<T, K> {
  const { [key]: _, ...rest } = whole;
  return rest;
}

describe('reach: what a reader is told', () => {
  const tell = (...args: Parameters<typeof working>) => told(working(...args), 'reach');

  it('of a control in constant use: within easy reach, farther, and too far', () => {
    expect(tell(aControl(250))).toMatchInlineSnapshot(`
      "pass, control Faders
      Faders is 250 mm from the shoulders of whoever works at Sound: easy to work at.
      : 250 against 400 mm, margin 150
      at workstations.Sound.controls.Faders.setback, by AUVA, grasping space
      granted Faders is straight ahead
      default shoes of 25 mm; people sit 40 mm lower than upright; eyes and shoulders 0 mm over the desk’s edge"
    `);
    expect(tell(aControl(330))).toMatchInlineSnapshot(`
      "pass, control Faders
      Faders is 330 mm from the shoulders of whoever works at Sound: easy to work at.
      : 330 against 400 mm, margin 70
      at workstations.Sound.controls.Faders.setback, by AUVA, grasping space
      granted Faders is straight ahead
      default shoes of 25 mm; people sit 40 mm lower than upright; eyes and shoulders 0 mm over the desk’s edge"
    `);
    expect(tell(aControl(600))).toMatchInlineSnapshot(`
      "fail, control Faders
      Faders is 600 mm from the shoulders of whoever works at Sound; beyond 400 mm arms tire. Bring it nearer: set its setback to 400mm.
      : 600 against 450 mm, margin -150
      at workstations.Sound.controls.Faders.setback, by AUVA, grasping space
      do Bring Faders nearer: setback 400mm | workstations.Sound.controls.Faders.setback := 400mm
      granted Faders is straight ahead
      default shoes of 25 mm; people sit 40 mm lower than upright; eyes and shoulders 0 mm over the desk’s edge"
    `);
  });

  it('of one beside the operator', () => {
    expect(tell(aControl(200, { at: given(100) }))).toMatchInlineSnapshot(`
      "fail, control Faders
      Faders is 680 mm from the shoulders of whoever works at Sound; beyond 400 mm arms tire. Move it along the desk to the operator: no setback brings it within 400 mm.
      : 680.07 against 450 mm, margin -230.07
      at workstations.Sound.controls.Faders.setback, by AUVA, grasping space
      default shoes of 25 mm; people sit 40 mm lower than upright; eyes and shoulders 0 mm over the desk’s edge"
    `);
    expect(tell(aControl(200, { at: given(1400), depth: given(100), width: given(200) }))).toMatchInlineSnapshot(`
      "fail, control Faders
      Faders is 696 mm from the shoulders of whoever works at Sound; beyond 400 mm arms tire. Move it along the desk to the operator: no setback brings it within 400 mm.
      : 696.42 against 450 mm, margin -246.42
      at workstations.Sound.controls.Faders.setback, by AUVA, grasping space
      default shoes of 25 mm; people sit 40 mm lower than upright; eyes and shoulders 0 mm over the desk’s edge"
    `);
  });

  it('of one in occasional use', () => {
    expect(tell(aControl(300, occasional))).toMatchInlineSnapshot(`
      "pass, control Faders, Noor, stand
      Faders is 300 mm away from the shoulders of Noor standing, whose arm goes 400 mm at that height: within reach.
      : 300 against 400 mm, margin 100, shares 1 and 1
      at workstations.Sound.controls.Faders.setback, by AUVA, grasping space
      see operators.Noor: what is known of Noor
      granted Faders is straight ahead
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge"
    `);
    expect(tell(aControl(700, occasional))).toMatchInlineSnapshot(`
      "fail, control Faders, Noor, stand
      Faders is 700 mm away from the shoulders of Noor standing, whose arm goes 400 mm at that height: out of reach. Bring it nearer: set its setback to 400mm.
      : 700 against 400 mm, margin -300, shares 0 and 0
      at workstations.Sound.controls.Faders.setback, by AUVA, grasping space
      see operators.Noor: what is known of Noor
      do Bring Faders nearer: setback 400mm | workstations.Sound.controls.Faders.setback := 400mm
      granted Faders is straight ahead
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge"
    `);
    expect(tell(aControl(100, { ...occasional, at: given(1500) }))).toMatchInlineSnapshot(`
      "fail, control Faders, Noor, stand
      Faders is 757 mm away from the shoulders of Noor standing, whose arm goes 400 mm at that height: out of reach. Move it along the desk to the operator: no setback brings it within 400 mm.
      : 756.64 against 400 mm, margin -356.64, shares 0 and 0
      at workstations.Sound.controls.Faders.setback, by AUVA, grasping space
      see operators.Noor: what is known of Noor
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge"
    `);
  });

  it('of one too high for anybody there', () => {
    expect(tell(aControl(100, { ...occasional, height: given(1500) }))).toMatchInlineSnapshot(`
      "fail, control Faders, Noor, stand
      Faders is 100 mm away from the shoulders of Noor standing, whose arm goes 0 mm at that height: out of reach. Lower it: no arm there goes so high.
      : 100 against 0 mm, margin -100, shares 0 and 0
      at workstations.Sound.controls.Faders.setback, by AUVA, grasping space
      see operators.Noor: what is known of Noor
      granted Faders is straight ahead
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge"
    `);
  });

  it('of somebody of whom little is known', () => {
    expect(tell(aControl(480, occasional), {}, { operators: [anOperator('Noor', { stature: 1600 })] }))
      .toMatchInlineSnapshot(`
        "marginal, control Faders, Noor, stand
        Faders is 480 mm away from the shoulders of Noor standing, whose arm goes 483 mm at that height, but arms differ. Bring it nearer: set its setback to 430mm.
        : 480 against 483.11 mm, margin 3.11, shares 0.52 and 0.52
        at workstations.Sound.controls.Faders.setback, by AUVA, grasping space
        see operators.Noor: what is known of Noor
        do Bring Faders nearer: setback 430mm | workstations.Sound.controls.Faders.setback := 430mm
        granted Faders is straight ahead
        default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge"
      `);
  });

  it('where something is missing', () => {
    expect(tell(aControl(1, { setback: undefined }))).toMatchInlineSnapshot(`
      "unknown, control Faders
      Cannot say whether Faders is within reach at Sound. Add \`setback\` to control Faders, such as \`setback 100mm\`.
      at workstations.Sound.controls.Faders, by AUVA, grasping space
      ask setback of control Faders, as setback 100mm, at workstations.Sound.controls.Faders"
    `);
    const aside = aControl(300, { at: given(700) });
    expect(tell(aside, {}, { desks: [aDesk('Left', 1000, { width: undefined })] })).toMatchInlineSnapshot(`
      "unknown, control Faders
      Cannot say whether Faders is within reach at Sound. Add \`width\` to desk Left, such as \`width 1520mm\`.
      at workstations.Sound.controls.Faders, by AUVA, grasping space
      ask width of desk Left, as width 1520mm, at desks.Left"
    `);
    expect(tell(aside, {}, { desks: [] })).toMatchInlineSnapshot(`
      "unknown, control Faders
      Cannot say whether Faders is within reach at Sound. Add \`desk\` to workstation Sound, such as \`desk Left\`.
      at workstations.Sound.controls.Faders, by AUVA, grasping space
      ask desk of workstation Sound, as desk Left, at workstations.Sound"
    `);
    expect(tell(aControl(300), {}, { desks: [aDesk('Left', 1000, { width: undefined })] })).toMatchInlineSnapshot(`
      "pass, control Faders
      Faders is 300 mm from the shoulders of whoever works at Sound: easy to work at.
      : 300 against 400 mm, margin 100
      at workstations.Sound.controls.Faders.setback, by AUVA, grasping space
      granted Faders is straight ahead
      default shoes of 25 mm; people sit 40 mm lower than upright; eyes and shoulders 0 mm over the desk’s edge"
    `);
    expect(tell(aControl(300, occasional), {}, { desks: [aDesk('Left', 1, { height: undefined })] }))
      .toMatchInlineSnapshot(`
        "unknown, control Faders, stand
        Cannot say whether Faders is within reach at Sound. Add \`height\` to desk Left, such as \`height 1020mm\`.
        at workstations.Sound.controls.Faders, by AUVA, grasping space
        ask height of desk Left, as height 1020mm, at desks.Left"
      `);
  });
});

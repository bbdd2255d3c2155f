import { describe, expect, it } from 'vitest';
import type { Booth, Seat } from '../../booth.js';
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
  ringBelow,
} from '../../testing/booths.js';
import { findingOf, findingsOf, wholeBody } from '../../testing/findings.js';
import { outside } from '../../testing/outside.js';
import { assess } from '../../assess/assess.js';
import { told } from '../../testing/told.js';

function seated(thigh: number, depth: number, parts: Partial<Booth> = {}): Booth {
  return aBooth({
    operators: [aMeasuredOperator('Noor', wholeBody({ buttockPoplitealLength: thigh }))],
    desks: [aDesk('Left', 1000)],
    seats: [aSeat('Tall', [650, 800], { ...ringBelow(400), depth: given(depth) })],
    workstations: [aStation('Sound', 'Left', 'Tall', ['Noor'])],
    ...parts,
  });
}

const judge = (...place: Parameters<typeof seated>) => findingOf(seated(...place), 'seat-depth');

describe('seat-depth: depth − buttock-popliteal length, at most −30', () => {
  it.each([
    ['30 mm before the leg', 480, 450, 'pass', -30],
    ['1 mm is allowed', 480, 451, 'pass', -29],
    ['2 mm is not', 480, 452, 'fail', -28],
    ['the edge touches the leg', 480, 480, 'fail', 0],
    ['deeper than the thigh', 480, 482, 'fail', 2],
    ['a short seat is no fault', 480, 300, 'pass', -180],
  ])('%s', (_, thigh, depth, verdict, measured) => {
    expect(judge(thigh, depth)).toMatchObject({ verdict, measured });
  });

  it.each([
    // Panero & Zelnik 4.4: 16 in at most for the 1st percentile woman, whose thigh is 16.1 in; 17 in is too deep for
    // her. Their figure leaves 3 mm before the leg where this check wants 30, so 16 in is too deep for her here, and 14 7/8 in is not.
    [
      outside('Panero & Zelnik 1979, 4.4', 'T3: 16 in for a thigh of 16.1 in leaves less than is wanted here'),
      409,
      406,
      'fail',
    ],
    ['T3, 14 7/8 in for 16.1 in', 409, 378, 'pass'],
    [outside('Panero & Zelnik 1979, 4.4', 'T3: 17 in is too deep for a thigh of 16.1 in'), 409, 432, 'fail'],
    ['17 in for the 5th percentile woman', 432, 432, 'fail'],
    // SS 514: seats of 380 to 430; the mean woman of the survey takes all of them.
    [outside('SS 514:2005, in a secondary source', 'a seat 380 mm deep'), 485, 380, 'pass'],
    [outside('SS 514:2005, in a secondary source', 'a seat 430 mm deep'), 485, 430, 'pass'],
  ])('%s', (_, thigh, depth, verdict) => {
    expect(judge(thigh, depth).verdict).toBe(verdict);
  });

  it(outside('Panero & Zelnik 1979, 4.4', 'T3: 17 in serves about 95 in 100'), () => {
    const crowds = [aCrowd('Volunteers', 1)];
    const workstations = [aStation('Sound', 'Left', 'Tall', ['Volunteers'])];
    const finding = judge(1, 432 - 30, { crowds, workstations });
    expect(finding.shareAtLimit).toBeGreaterThan(0.93);
    expect(finding.shareAtLimit).toBeLessThan(0.99);
  });

  it('names the depth that would do, in the steps that people buy', () => {
    const finding = judge(470, 480, { show: 'in' });
    expect(finding.message).toContain('3/8 in deeper than Noor’s thighs are long');
    expect(finding.message).toContain('a seat at most 17 1/4 in deep would do');
    expect(judge(470, 17.25 * 25.4).verdict).toBe('pass');
    expect(judge(480, 465).message).toContain('leaves only 15 mm before Noor’s lower legs');
  });

  it('of a body that is not measured, the message names the thigh', () => {
    const finding = judge(1, 450, { operators: [anOperator('Noor', { stature: 1630 }, 'female')] });
    expect(finding.verdict).toBe('marginal');
    expect(finding.message).toContain('Measure Noor’s buttock-popliteal length');
  });

  it('asks for the depth, or for the seat', () => {
    const { depth: _, ...seat } = aSeat('Tall', 700, ringBelow(400));
    expect(judge(480, 1, { seats: [seat] })).toMatchObject({
      verdict: 'unknown',
      missing: { property: 'seat-depth', of: 'stool Tall' },
    });
    const workstations = [aStation('Sound', 'Left', undefined, ['Noor'], { postures: byDefault(['sit'] as const) })];
    expect(judge(480, 1, { workstations })).toMatchObject({ verdict: 'unknown', missing: { property: 'stool' } });
  });

  it('needs no height', () => {
    const seats: Seat[] = [{ kind: 'chair', name: 'Tall', origin: nowhere, depth: given(450) }];
    expect(judge(480, 1, { seats }).verdict).toBe('pass');
  });

  it('is part of the joint share when it is said, and leaves it alone when it is not', () => {
    const { depth: _, ...plain } = aSeat('Tall', [650, 800], ringBelow(400));
    const joint = (booth: Booth) => assess(booth).workstations[0]!.served[0]!;
    expect(joint(seated(480, 1, { seats: [plain] }))).toMatchObject({ share: 1, shareAtLimit: 1 });
    expect(joint(seated(480, 450))).toMatchObject({ share: 1, shareAtLimit: 1 });
    expect(joint(seated(480, 460))).toMatchObject({ share: 0, shareAtLimit: 0 });
    expect(joint(seated(480, 490))).toMatchObject({ share: 0, shareAtLimit: 0 });
  });

  it('does not keep a height from being advised: a desk is lowered whatever the seat’s depth', () => {
    const low = (depth: number) => findingOf(seated(480, depth, { desks: [aDesk('Left', 1200)] }), 'seated-elbow');
    expect(low(450).remedies[0]!.title).toMatch(/^Lower the desk Left/);
    expect(low(500).remedies[0]!.title).toBe(low(450).remedies[0]!.title);
  });

  it('asks nothing of people who stand', () => {
    const workstations = [aStation('Sound', 'Left', undefined, ['Noor'])];
    expect(findingsOf(seated(480, 500, { workstations }), 'seat-depth')).toEqual([]);
  });
});

describe('seat-depth: what a reader is told', () => {
  const tell = (...args: Parameters<typeof seated>) => told(seated(...args), 'seat-depth');

  it('where the seat leaves room, too little, and none', () => {
    expect(tell(480, 430)).toMatchInlineSnapshot(`
      "pass, workstation Sound, Noor, sit
      The seat of Tall leaves 50 mm before Noor’s lower legs.
      : -50 against -30 mm, margin 20, shares 1 and 1
      at workstations.Sound.people.Noor, by Panero & Zelnik 1979, Part A 4.4
      see desks.Left.height: the desk Left; seats.Tall.seat: the stool Tall; operators.Noor: what is known of Noor"
    `);
    expect(tell(480, 460)).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, sit
      The seat of Tall leaves only 20 mm before Noor’s lower legs, so its edge presses; a seat at most 450 mm deep would do.
      : -20 against -30 mm, margin -10, shares 0 and 0
      at workstations.Sound.people.Noor, by Panero & Zelnik 1979, Part A 4.4
      see desks.Left.height: the desk Left; seats.Tall.seat: the stool Tall; operators.Noor: what is known of Noor"
    `);
    expect(tell(480, 500)).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, sit
      The seat of Tall is 20 mm deeper than Noor’s thighs are long, so the back gets no support; a seat at most 450 mm deep would do.
      : 20 against -30 mm, margin -50, shares 0 and 0
      at workstations.Sound.people.Noor, by Panero & Zelnik 1979, Part A 4.4
      see desks.Left.height: the desk Left; seats.Tall.seat: the stool Tall; operators.Noor: what is known of Noor"
    `);
  });

  it('where its depth is not said', () => {
    expect(tell(480, 1, { seats: [aSeat('Tall', [650, 800], ringBelow(400))] })).toMatchInlineSnapshot(`
      "unknown, workstation Sound, sit
      Cannot say anything of seat depth at Sound. Add \`seat-depth\` to stool Tall, such as \`seat-depth 410mm\`.
      at workstations.Sound, by Panero & Zelnik 1979, Part A 4.4
      ask seat-depth of stool Tall, as seat-depth 410mm, at seats.Tall"
    `);
  });
});

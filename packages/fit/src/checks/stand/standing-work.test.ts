import { describe, expect, it } from 'vitest';
import type { Booth, Operator, Task } from '../../booth.js';
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
} from '../../testing/booths.js';
import { findingOf, findingsOf, wholeBody } from '../../testing/findings.js';
import { outside } from '../../testing/outside.js';
import { told } from '../../testing/told.js';

type Height = number | readonly [number, number];

function standing(who: Operator, desk: Height, task: Task = 'controls', parts: Partial<Booth> = {}): Booth {
  return aBooth({
    operators: [who],
    desks: [aDesk('Left', desk)],
    workstations: [aStation('Sound', 'Left', undefined, [who.name], { task: byDefault(task) })],
    ...parts,
  });
}

const noor = (elbow: number) => aMeasuredOperator('Noor', wholeBody({ standingElbowHeight: elbow }));
const judge = (...place: Parameters<typeof standing>) => findingOf(standing(...place), 'standing-work');

describe('standing-work: W − Es, with 25 mm of shoe', () => {
  it.each([
    // task, offset from the elbow, verdict
    ['controls', -50, 'pass'],
    ['controls', -100, 'pass'],
    ['controls', -49, 'pass'],
    ['controls', -48, 'marginal'],
    ['controls', -102, 'marginal'],
    ['controls', 0, 'marginal'],
    ['controls', 2, 'fail'],
    ['controls', -150, 'marginal'],
    ['controls', -152, 'fail'],
    ['writing', 0, 'pass'],
    ['writing', 2, 'marginal'],
    ['writing', -50, 'pass'],
    ['writing', -52, 'marginal'],
    ['writing', 25, 'marginal'],
    ['writing', 27, 'fail'],
    ['writing', -102, 'fail'],
    ['keyboard', 0, 'pass'],
    ['keyboard', -52, 'marginal'],
    ['keyboard', 27, 'fail'],
    ['keyboard', -102, 'fail'],
    ['precision', 50, 'pass'],
    ['precision', 100, 'pass'],
    ['precision', 102, 'marginal'],
    ['precision', 48, 'marginal'],
    ['precision', 125, 'marginal'],
    ['precision', 127, 'fail'],
    ['precision', 0, 'marginal'],
    ['precision', -2, 'fail'],
  ] as const)('%s, %d mm from the elbow: %s', (task, offset, verdict) => {
    expect(judge(noor(1000), 1025 + offset, task)).toMatchObject({ verdict, measured: offset });
  });

  it.each([
    // Panero & Zelnik, Table 1: a comfortable counter is 3 in below the elbow, shoes being in the figures.
    [outside('Panero & Zelnik 1979, Table 1', 'T9: elbow 1041, counter 965 mm'), 1041, 965],
    [outside('Panero & Zelnik 1979, Table 1', 'T9: elbow 1168, counter 1092 mm'), 1168, 1092],
    [outside('Panero & Zelnik 1979, Table 1', 'T9: elbow 965, counter 889 mm'), 965, 889],
  ])('%s', (_, elbow, counter) => {
    const finding = judge(noor(elbow), counter, 'controls', { shoe: given(0) });
    expect(finding).toMatchObject({ verdict: 'pass', measured: -76 });
  });

  it.each([
    // California State Fund and NIOSH 97-117: precision work 4 in above the elbow, within 94 to 109 cm.
    [
      outside('California State Fund and NIOSH 97-117', 'precision work 4 in above the elbow'),
      'precision',
      102,
      'marginal',
    ],
    [outside('CCOHS, in a secondary source', 'precision work 5 cm above the elbow'), 'precision', 50, 'pass'],
    [outside('DGUV Information 215-410', 'work at the elbow'), 'writing', 0, 'pass'],
  ] as const)('%s', (_, task, offset, verdict) => {
    expect(judge(noor(1000), 1025 + offset, task).verdict).toBe(verdict);
  });

  it.each([
    [
      outside('EN 527-1:2011, in a secondary source', 'T26: stature 1493 at a 950 to 1250 mm table'),
      1493,
      'female',
      'marginal',
    ],
    [
      outside('EN 527-1:2011, in a secondary source', 'T26: stature 1913 at a 950 to 1250 mm table'),
      1913,
      'male',
      'pass',
    ],
  ] as const)('%s', (_, stature, sex, verdict) => {
    const finding = judge(anOperator('Noor', { stature }, sex), [950, 1250], 'writing');
    expect(finding.verdict).toBe(verdict);
    expect(finding.shareAtLimit).toBeGreaterThan(0.95);
  });

  it(
    outside(
      'City University of Hong Kong, Online Anthropometry, Ch2-1',
      'T27: a declared height of 1750 mm stands for about 1725',
    ),
    () => {
      const declared: Operator = { ...anOperator('Noor', { stature: 1750 }), statureIsReported: true };
      const work = (who: Operator) => judge(who, 1000).measured!;
      expect(Math.abs(work(declared) - work(anOperator('Noor', { stature: 1725 })))).toBeLessThan(3);
      expect(work(declared) - work(anOperator('Noor', { stature: 1750 }))).toBeGreaterThan(10);
    },
  );
});

describe('standing-work at a 42 in desk for controls', () => {
  const desk = 42 * 25.4;
  const inInches = { show: 'in' } as const;

  it('a 179 cm operator whose measured elbow is what the survey predicts passes', () => {
    const finding = judge(anOperator('Tobias', { stature: 1790, standingElbowHeight: 1129 }, 'male'), desk);
    expect(finding).toMatchObject({ verdict: 'pass', operator: 'Tobias', posture: 'stand' });
    expect(finding.share).toBeCloseTo(1);
  });

  it('of 179 cm alone, about 8 in 10 are inside the preferred band: marginal, and the elbow would settle it', () => {
    const finding = judge(anOperator('Tobias', { stature: 1790 }), desk, 'controls', inInches);
    expect(finding.verdict).toBe('marginal');
    expect(finding.share).toBeGreaterThan(0.75);
    expect(finding.share).toBeLessThan(0.87);
    expect(finding.shareAtLimit).toBeGreaterThan(0.99);
    expect(finding.message).toContain('Measure Tobias’ standing elbow height');
  });

  it('a 150 cm operator fails; the height that the message names is no failure', () => {
    const priya = anOperator('Priya', { stature: 1500 });
    const finding = judge(priya, desk, 'controls', inInches);
    expect(finding.verdict).toBe('fail');
    expect(finding.message).toContain('4 1/8 in above Priya’s standing elbow: too high for controls');
    const [, whole, top, bottom] = /Lower the desk Left to (\d+)(?: (\d)\/(\d))? in/.exec(finding.message)!;
    const height = (Number(whole) + (top ? Number(top) / Number(bottom) : 0)) * 25.4;
    const again = judge(priya, height);
    expect(again.verdict).not.toBe('fail');
    expect(again.shareAtLimit).toBeGreaterThan(0.99);
    expect(finding.remedies[0]!.changes[0]!.text).toContain(`${whole}`);
  });

  it('an adjustable desk is set for each', () => {
    expect(judge(anOperator('Priya', { stature: 1500, standingElbowHeight: 935 }), [850, 1200]).verdict).toBe('pass');
    expect(judge(anOperator('Tobias', { stature: 1790, standingElbowHeight: 1129 }), [850, 1200]).verdict).toBe('pass');
    expect(judge(anOperator('Priya', { stature: 1500, standingElbowHeight: 935 }), [1000, 1200]).verdict).toBe('fail');
  });

  it('a keyboard or console on the desk raises the work', () => {
    const finding = (working: number) => {
      const station = aStation('Sound', 'Left', undefined, ['Noor'], { working: byDefault(working) });
      return findingOf(aBooth({ ...standing(noor(1000), 900), workstations: [station] }), 'standing-work');
    };
    expect(finding(0)).toMatchObject({ verdict: 'marginal', measured: -125 });
    expect(finding(75)).toMatchObject({ verdict: 'pass', measured: -50 });
  });

  it('a crowd passes where its share reaches its cover', () => {
    const crowd = (cover: number, height: Height) =>
      aBooth({
        crowds: [aCrowd('Volunteers', 0.5, cover)],
        desks: [aDesk('Left', height)],
        workstations: [aStation('Sound', 'Left', undefined, ['Volunteers'])],
      });
    const fixed = findingOf(crowd(0.9, 1015), 'standing-work');
    expect(fixed.verdict).toBe('marginal');
    expect(findingOf(crowd(fixed.share! - 0.01, 1015), 'standing-work').verdict).toBe('pass');
    expect(findingOf(crowd(0.9, [850, 1150]), 'standing-work').verdict).toBe('pass');
  });

  it('says what is missing instead of guessing', () => {
    const { height: _, ...bare } = aDesk('Left', 1);
    expect(findingOf({ ...standing(noor(1000), 1), desks: [bare] }, 'standing-work')).toMatchObject({
      verdict: 'unknown',
      missing: { property: 'height', of: 'desk Left' },
    });
  });

  it('asks nothing of people who only sit', () => {
    const seated = aBooth({
      ...standing(noor(1000), 700),
      seats: [aSeat('Low', 420)],
      workstations: [aStation('Sound', 'Left', 'Low', ['Noor'])],
    });
    expect(findingsOf(seated, 'standing-work')).toEqual([]);
  });
});

describe('standing-work: what a reader is told', () => {
  const tell = (...args: Parameters<typeof standing>) => told(standing(...args), 'standing-work');

  it('where the work is right, above and below the elbow', () => {
    expect(tell(noor(1000), 950)).toMatchInlineSnapshot(`
      "pass, workstation Sound, Noor, stand
      The work is 75 mm below Noor’s standing elbow: right for controls.
      : -75 against -50 mm, margin 25, shares 1 and 1
      at workstations.Sound.people.Noor, by Panero & Zelnik 1979, Table 1
      see desks.Left.height: the desk Left; operators.Noor: what is known of Noor
      default shoes of 25 mm; the task is controls; hands 0 mm above the desk"
    `);
    expect(tell(noor(1000), 1100, 'precision')).toMatchInlineSnapshot(`
      "pass, workstation Sound, Noor, stand
      The work is 75 mm above Noor’s standing elbow: right for precision work.
      : 75 against 100 mm, margin 25, shares 1 and 1
      at workstations.Sound.people.Noor, by Panero & Zelnik 1979, Table 1
      see desks.Left.height: the desk Left; operators.Noor: what is known of Noor
      default shoes of 25 mm; the task is precision; hands 0 mm above the desk"
    `);
  });

  it('where it is too high, and too low', () => {
    expect(tell(noor(1000), 1060)).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, stand
      The work is 35 mm above Noor’s standing elbow: too high for controls, so the shoulders lift. Lower the desk Left to 935 mm: suits Noor.
      : 35 against 0 mm, margin -35, shares 0 and 0
      at workstations.Sound.people.Noor, by Panero & Zelnik 1979, Table 1
      see desks.Left.height: the desk Left; operators.Noor: what is known of Noor
      do Lower the desk Left to 935 mm: suits Noor | desks.Left.height := 935mm
      default shoes of 25 mm; the task is controls; hands 0 mm above the desk"
    `);
    expect(tell(noor(1000), 860)).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, stand
      The work is 165 mm below Noor’s standing elbow: too low for controls, so the back bends. Raise the desk Left to 935 mm: suits Noor.
      : -165 against -150 mm, margin -15, shares 0 and 0
      at workstations.Sound.people.Noor, by Panero & Zelnik 1979, Table 1
      see desks.Left.height: the desk Left; operators.Noor: what is known of Noor
      do Raise the desk Left to 935 mm: suits Noor | desks.Left.height := 935mm
      default shoes of 25 mm; the task is controls; hands 0 mm above the desk"
    `);
  });

  it('of other tasks', () => {
    expect(tell(noor(1000), 1090, 'writing')).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, stand
      The work is 65 mm above Noor’s standing elbow: too high for writing, so the shoulders lift. Lower the desk Left to 985 mm: suits Noor.
      : 65 against 25 mm, margin -40, shares 0 and 0
      at workstations.Sound.people.Noor, by Panero & Zelnik 1979, Table 1
      see desks.Left.height: the desk Left; operators.Noor: what is known of Noor
      do Lower the desk Left to 985 mm: suits Noor | desks.Left.height := 985mm
      default shoes of 25 mm; the task is writing; hands 0 mm above the desk"
    `);
    expect(tell(noor(1000), 1090, 'keyboard')).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, stand
      The work is 65 mm above Noor’s standing elbow: too high for a keyboard, so the shoulders lift. Lower the desk Left to 985 mm: suits Noor.
      : 65 against 25 mm, margin -40, shares 0 and 0
      at workstations.Sound.people.Noor, by Panero & Zelnik 1979, Table 1
      see desks.Left.height: the desk Left; operators.Noor: what is known of Noor
      do Lower the desk Left to 985 mm: suits Noor | desks.Left.height := 985mm
      default shoes of 25 mm; the task is keyboard; hands 0 mm above the desk"
    `);
    expect(tell(noor(1000), 950, 'precision')).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, stand
      The work is 75 mm below Noor’s standing elbow: too low for precision work, so the back bends. Raise the desk Left to 1085 mm: suits Noor.
      : -75 against 0 mm, margin -75, shares 0 and 0
      at workstations.Sound.people.Noor, by Panero & Zelnik 1979, Table 1
      see desks.Left.height: the desk Left; operators.Noor: what is known of Noor
      do Raise the desk Left to 1085 mm: suits Noor | desks.Left.height := 1085mm
      default shoes of 25 mm; the task is precision; hands 0 mm above the desk"
    `);
  });

  it('of somebody of whom little is known', () => {
    expect(tell(anOperator('Tobias', { stature: 1790 }, 'male'), 1067)).toMatchInlineSnapshot(`
      "marginal, workstation Sound, Tobias, stand
      The work is 87 mm below Tobias’ standing elbow: right for controls. Of people like Tobias, about 8 in 10 are inside the preferred band and nearly all inside the outer limit. Measure Tobias’ standing elbow height to settle it. Raise the desk Left to 1080 mm: suits Tobias.
      : -86.8 against -100 mm, margin 13.2, shares 0.82 and 1
      at workstations.Sound.people.Tobias, by Panero & Zelnik 1979, Table 1
      see desks.Left.height: the desk Left; operators.Tobias: what is known of Tobias
      do Raise the desk Left to 1080 mm: suits Tobias | desks.Left.height := 1080mm
      default shoes of 25 mm; the task is controls; hands 0 mm above the desk"
    `);
  });
});

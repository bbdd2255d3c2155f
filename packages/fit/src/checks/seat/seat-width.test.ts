import { describe, expect, it } from 'vitest';
import type { Booth, Seat } from '../../booth.js';
import {
  aBooth,
  aDesk,
  aMeasuredOperator,
  anOperator,
  aSeat,
  aStation,
  given,
  nowhere,
  ringBelow,
} from '../../testing/booths.js';
import { findingOf, wholeBody } from '../../testing/findings.js';
import { outside } from '../../testing/outside.js';
import { assess } from '../../assess/assess.js';
import { told } from '../../testing/told.js';

function seated(hips: number, width: number, parts: Partial<Booth> = {}): Booth {
  return aBooth({
    operators: [aMeasuredOperator('Noor', wholeBody({ hipBreadthSitting: hips }))],
    desks: [aDesk('Left', 1000)],
    seats: [aSeat('Tall', [650, 800], { ...ringBelow(400), width: given(width) })],
    workstations: [aStation('Sound', 'Left', 'Tall', ['Noor'])],
    ...parts,
  });
}

const judge = (...place: Parameters<typeof seated>) => findingOf(seated(...place), 'seat-width');

describe('seat-width: width − hip breadth, at least 10; and width at least 400', () => {
  it.each([
    ['10 mm for clothing', 420, 430, 'pass', 10],
    ['1 mm is allowed', 420, 429, 'pass', 9],
    ['2 mm is not', 420, 428, 'fail', 8],
    ['as wide as the hips', 420, 420, 'fail', 0],
    ['narrower than the hips', 420, 418, 'fail', -2],
    [outside('CCOHS, working in a sitting or standing position', '400 mm for anyone'), 330, 400, 'pass', 400],
    ['1 mm is allowed of that', 330, 399, 'pass', 399],
    ['less than 400 mm', 330, 398, 'fail', 398],
  ])('%s', (_, hips, width, verdict, measured) => {
    expect(judge(hips, width)).toMatchObject({ verdict, measured });
  });

  it.each([
    // ANSI/HFS 100-1988: 462 mm at least; SS 514: 480; ANSI/HFES 100-2007, from memory: 450. The widest hips of a reference
    // table, the 95th percentile woman of 1962 (434 mm), fit all three.
    [outside('ANSI/HFS 100-1988, in a secondary source', 'at least 462 mm'), 462],
    [outside('SS 514:2005, in a secondary source', 'at least 480 mm'), 480],
    [outside('ANSI/HFES 100-2007, from memory', 'at least 450 mm'), 450],
  ])('%s: takes hips of 434 mm', (_, width) => {
    expect(judge(434, width).verdict).toBe('pass');
  });

  it(outside('Panero & Zelnik 1979, 5.1', 'a bar stool 12 in wide is too narrow'), () => {
    expect(judge(360, 305).verdict).toBe('fail');
  });

  it('names the width that would do, in the steps that people buy', () => {
    const finding = judge(430, 420, { show: 'in' });
    expect(finding.message).toContain('3/8 in narrower than Noor’s hips');
    expect(finding.message).toContain('a seat at least 17 1/2 in wide would do');
    expect(judge(430, 17.5 * 25.4).verdict).toBe('pass');
    expect(judge(430, 435).message).toContain('only 5 mm wider than Noor’s hips');
    expect(judge(330, 350).message).toContain('350 mm wide; 400 mm is the least for anyone');
  });

  it('of a body that is not measured, the message names the hips', () => {
    const finding = judge(1, 410, { operators: [anOperator('Noor', { stature: 1630 }, 'female')] });
    expect(finding.verdict).toBe('marginal');
    expect(finding.message).toContain('Measure Noor’s sitting hip breadth');
  });

  it('asks for the width, needs no height, and leaves the joint share alone when it is not said', () => {
    const { width: _, ...plain } = aSeat('Tall', [650, 800], ringBelow(400));
    const unsaid = seated(420, 1, { seats: [plain] });
    expect(findingOf(unsaid, 'seat-width')).toMatchObject({
      verdict: 'unknown',
      missing: { property: 'seat-width', of: 'stool Tall' },
    });
    expect(assess(unsaid).workstations[0]!.served[0]!.share).toBe(1);
    const seats: Seat[] = [{ kind: 'chair', name: 'Tall', origin: nowhere, width: given(450) }];
    expect(judge(420, 1, { seats }).verdict).toBe('pass');
  });
});

describe('seat-width: what a reader is told', () => {
  const tell = (...args: Parameters<typeof seated>) => told(seated(...args), 'seat-width');

  it('where the seat is wide enough, hardly, and too narrow for the hips', () => {
    expect(tell(380, 430)).toMatchInlineSnapshot(`
      "pass, workstation Sound, Noor, sit
      The seat of Tall is 430 mm wide: enough for Noor.
      : 430 against 400 mm, margin 30, shares 1 and 1
      at workstations.Sound.people.Noor, by CCOHS, working in a sitting or standing position
      see desks.Left.height: the desk Left; seats.Tall.seat: the stool Tall; operators.Noor: what is known of Noor"
    `);
    expect(tell(405, 410)).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, sit
      The seat of Tall is only 5 mm wider than Noor’s hips: too little for clothing; a seat at least 415 mm wide would do.
      : 5 against 10 mm, margin -5, shares 0 and 0
      at workstations.Sound.people.Noor, by CCOHS, working in a sitting or standing position
      see desks.Left.height: the desk Left; seats.Tall.seat: the stool Tall; operators.Noor: what is known of Noor"
    `);
    expect(tell(450, 410)).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, sit
      The seat of Tall is 40 mm narrower than Noor’s hips, so its edges press; a seat at least 460 mm wide would do.
      : -40 against 10 mm, margin -50, shares 0 and 0
      at workstations.Sound.people.Noor, by CCOHS, working in a sitting or standing position
      see desks.Left.height: the desk Left; seats.Tall.seat: the stool Tall; operators.Noor: what is known of Noor"
    `);
  });

  it('where it is too narrow for anyone', () => {
    expect(tell(330, 390)).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, sit
      The seat of Tall is 390 mm wide; 400 mm is the least for anyone.
      : 390 against 400 mm, margin -10, shares 0 and 0
      at workstations.Sound.people.Noor, by CCOHS, working in a sitting or standing position
      see desks.Left.height: the desk Left; seats.Tall.seat: the stool Tall; operators.Noor: what is known of Noor"
    `);
  });

  it('where its width is not said', () => {
    expect(tell(380, 1, { seats: [aSeat('Tall', [650, 800], ringBelow(400))] })).toMatchInlineSnapshot(`
      "unknown, workstation Sound, sit
      Cannot say anything of seat width at Sound. Add \`seat-width\` to stool Tall, such as \`seat-width 430mm\`.
      at workstations.Sound, by CCOHS, working in a sitting or standing position
      ask seat-width of stool Tall, as seat-width 430mm, at seats.Tall"
    `);
  });

  it('where what is left beside the hips is the least', () => {
    expect(tell(440, 460)).toMatchInlineSnapshot(`
      "pass, workstation Sound, Noor, sit
      The seat of Tall is 20 mm wider than Noor’s hips.
      : 20 against 10 mm, margin 10, shares 1 and 1
      at workstations.Sound.people.Noor, by CCOHS, working in a sitting or standing position
      see desks.Left.height: the desk Left; seats.Tall.seat: the stool Tall; operators.Noor: what is known of Noor"
    `);
  });
});

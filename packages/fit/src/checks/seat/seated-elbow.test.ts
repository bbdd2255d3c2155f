import { describe, expect, it } from 'vitest';
import type { Seat } from '../../booth.js';
import {
  aBooth,
  aDesk,
  aMeasuredOperator,
  anOperator,
  aSeat,
  aStation,
  byDefault,
  nowhere,
} from '../../testing/booths.js';
import { findingOf, wholeBody } from '../../testing/findings.js';
import { outside } from '../../testing/outside.js';
import { told } from '../../testing/told.js';

type Height = number | readonly [number, number];

interface Place {
  readonly elbow: number;
  readonly seat: Height;
  readonly desk: Height;
  readonly working?: number;
  readonly popliteal?: number;
}

function elbows({ elbow, seat, desk, working = 0, popliteal = 400 }: Place) {
  const body = wholeBody({ sittingElbowHeight: elbow, poplitealHeight: popliteal, thighClearance: 140 });
  return aBooth({
    operators: [aMeasuredOperator('Noor', body)],
    desks: [aDesk('Left', desk)],
    seats: [aSeat('Low', seat, { kind: 'chair' })],
    workstations: [aStation('Sound', 'Left', 'Low', ['Noor'], { working: byDefault(working) })],
  });
}

const judge = (place: Place) => findingOf(elbows(place), 'seated-elbow');

describe('seated-elbow: W − (S + E), preferred −50..+25, outer −75..+50', () => {
  it.each([
    ['at the elbow', { elbow: 230, seat: 420, desk: 650 }, 'pass', 0],
    ['highest preferred', { elbow: 230, seat: 420, desk: 675 }, 'pass', 25],
    ['1 mm is allowed', { elbow: 230, seat: 420, desk: 676 }, 'pass', 26],
    ['2 mm is not', { elbow: 230, seat: 420, desk: 677 }, 'marginal', 27],
    ['highest outer', { elbow: 230, seat: 420, desk: 700 }, 'marginal', 50],
    ['above it', { elbow: 230, seat: 420, desk: 702 }, 'fail', 52],
    ['lowest preferred', { elbow: 230, seat: 420, desk: 600 }, 'pass', -50],
    ['1 mm below is allowed', { elbow: 230, seat: 420, desk: 599 }, 'pass', -51],
    ['2 mm is not', { elbow: 230, seat: 420, desk: 598 }, 'marginal', -52],
    ['lowest outer', { elbow: 230, seat: 420, desk: 575 }, 'marginal', -75],
    ['below it', { elbow: 230, seat: 420, desk: 573 }, 'fail', -77],
    ['a thick console counts', { elbow: 230, seat: 420, desk: 650, working: 60 }, 'fail', 60],
  ] as const)('%s', (_, place, verdict, measured) => {
    expect(judge(place)).toMatchObject({ verdict, measured });
  });

  it.each([
    // Helander: floor to elbow, shod, 570 for the short and 810 for the tall; the seats of T4, the elbows that they imply.
    [
      outside('Helander, chapter 8', 'T5: from the floor to the elbow 570 mm'),
      { elbow: 180, seat: 390, desk: 570, popliteal: 365 },
    ],
    [
      outside('Helander, chapter 8', 'T5: from the floor to the elbow 810 mm'),
      { elbow: 290, seat: 520, desk: 810, popliteal: 495 },
    ],
  ])('%s: the table meets the elbow', (_, place) => {
    expect(judge(place)).toMatchObject({ verdict: 'pass', measured: 0 });
  });

  it.each([
    // ANSI/HFS 100-1988: seat and keyboard surface by stature. Elbows vary, so such a pair suits many and not nearly all.
    [
      outside('ANSI/HFS 100-1988, in a secondary source', 'T6: stature 1500, seat 406, surface 585 mm'),
      1500,
      'female',
      406,
      585,
    ],
    [
      outside('ANSI/HFS 100-1988, in a secondary source', 'T7: stature 1850, seat 520, surface 710 mm'),
      1850,
      'male',
      520,
      710,
    ],
    [
      outside('ANSI/HFS 100-1988, in a secondary source', 'T8: half way, seat 463, surface 647.5 mm'),
      1675,
      undefined,
      463,
      647.5,
    ],
  ] as const)('%s: not beyond the limit', (_, stature, sex, seat, desk) => {
    const operators = [anOperator('Noor', { stature }, sex)];
    const finding = findingOf(aBooth({ ...elbows({ elbow: 1, seat, desk }), operators }), 'seated-elbow');
    expect(finding.verdict).toBe('marginal');
    expect(finding.shareAtLimit).toBeGreaterThan(0.6);
    expect(finding.message).toContain('Measure Noor’s sitting elbow height');
  });

  it.each([
    [outside('EN 527-1:2011, in a secondary source', 'T26: stature 1493 at a 650 to 850 mm desk'), 1493, 'female'],
    [outside('EN 527-1:2011, in a secondary source', 'T26: stature 1913 at a 650 to 850 mm desk'), 1913, 'male'],
  ] as const)('%s: not left out', (_, stature, sex) => {
    const operators = [anOperator('Noor', { stature }, sex)];
    const booth = aBooth({ ...elbows({ elbow: 1, seat: [350, 560], desk: [650, 850] }), operators });
    expect(['pass', 'marginal']).toContain(findingOf(booth, 'seated-elbow').verdict);
  });

  it('the desk that adjusts is set for the person', () => {
    expect(judge({ elbow: 260, seat: 420, desk: [600, 750] }).verdict).toBe('pass');
    expect(judge({ elbow: 260, seat: 420, desk: [500, 580] }).verdict).toBe('fail');
  });

  it('a seat that adjusts is raised no further than the feet allow', () => {
    expect(judge({ elbow: 200, seat: [400, 600], desk: 625 }).verdict).toBe('pass');
    expect(judge({ elbow: 200, seat: [400, 600], desk: 800 }).verdict).toBe('fail');
  });

  it('says how far off, why it matters, and what height would do', () => {
    const high = judge({ elbow: 230, seat: 420, desk: 750 });
    expect(high.message).toContain('100 mm above Noor’s seated elbow, so the shoulders lift');
    expect(high.remedies[0]!.title).toMatch(/^Lower the desk Left to \d+ mm: suits Noor$/);
    expect(judge({ elbow: 230, seat: 420, desk: 560 }).message).toContain('90 mm below');
  });

  it('says what is missing instead of guessing', () => {
    const { height: _, ...desk } = aDesk('Left', 1);
    const noHeight = findingOf(
      aBooth({ ...elbows({ elbow: 230, seat: 420, desk: 1 }), desks: [desk] }),
      'seated-elbow',
    );
    expect(noHeight).toMatchObject({ verdict: 'unknown', missing: { property: 'height', of: 'desk Left' } });
    const seats: Seat[] = [{ kind: 'chair', name: 'Low', origin: nowhere }];
    const noSeat = findingOf(aBooth({ ...elbows({ elbow: 230, seat: 1, desk: 650 }), seats }), 'seated-elbow');
    expect(noSeat).toMatchObject({ verdict: 'unknown', missing: { property: 'seat', of: 'chair Low' } });
    const { desk: _desk, ...station } = aStation('Sound', 'Left', 'Low', ['Noor']);
    const workstations = [station];
    const noDesk = findingOf(aBooth({ ...elbows({ elbow: 230, seat: 420, desk: 650 }), workstations }), 'seated-elbow');
    expect(noDesk).toMatchObject({ verdict: 'unknown', missing: { property: 'desk', of: 'workstation Sound' } });
  });
});

describe('seated-elbow: what a reader is told', () => {
  const tell = (...args: Parameters<typeof elbows>) => told(elbows(...args), 'seated-elbow');

  it('where the work is at the elbow', () => {
    expect(tell({ elbow: 240, seat: 425, desk: 650 })).toMatchInlineSnapshot(`
      "pass, workstation Sound, Noor, sit
      The work is at Noor’s elbow height when seated.
      : -15 against -50 mm, margin 35, shares 1 and 1
      at workstations.Sound.people.Noor, by DGUV Information 215-410
      see desks.Left.height: the desk Left; seats.Low.seat: the chair Low; operators.Noor: what is known of Noor
      default hands 0 mm above the desk"
    `);
  });

  it('where it is too high, and too low', () => {
    expect(tell({ elbow: 240, seat: 425, desk: 730 })).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, sit
      The work is 65 mm above Noor’s seated elbow, so the shoulders lift. Lower the desk Left to 630 mm: suits Noor.
      : 65 against 50 mm, margin -15, shares 0 and 0
      at workstations.Sound.people.Noor, by DGUV Information 215-410
      see desks.Left.height: the desk Left; seats.Low.seat: the chair Low; operators.Noor: what is known of Noor
      do Lower the desk Left to 630 mm: suits Noor | desks.Left.height := 630mm
      weigh Raise the seat of Low to 465 mm: nearest for Noor | seats.Low.seat := 465mm
      default hands 0 mm above the desk"
    `);
    expect(tell({ elbow: 240, seat: 425, desk: 570 })).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, sit
      The work is 95 mm below Noor’s seated elbow, so the back bends. Raise the desk Left to 630 mm: suits Noor.
      : -95 against -75 mm, margin -20, shares 0 and 0
      at workstations.Sound.people.Noor, by DGUV Information 215-410
      see desks.Left.height: the desk Left; seats.Low.seat: the chair Low; operators.Noor: what is known of Noor
      do Raise the desk Left to 630 mm: suits Noor | desks.Left.height := 630mm
      weigh Lower the seat of Low to 370 mm: nearest for Noor | seats.Low.seat := 370mm
      default hands 0 mm above the desk"
    `);
  });
});

import { describe, expect, it } from 'vitest';
import type { Desk, Hanging, Seat } from '../../booth.js';
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
import { findingOf, wholeBody } from '../../testing/findings.js';
import { outside } from '../../testing/outside.js';
import { told } from '../../testing/told.js';

interface Place {
  readonly desk: number | readonly [number, number];
  readonly seat: number | readonly [number, number];
  readonly thigh?: number;
  readonly kind?: Seat['kind'];
  readonly parts?: Partial<Desk>;
}

/** A top of 25 mm. */
function thighs({ desk, seat, thigh = 150, kind = 'chair', parts = {} }: Place) {
  return aBooth({
    operators: [aMeasuredOperator('Noor', wholeBody({ thighClearance: thigh, poplitealHeight: 400 }))],
    desks: [aDesk('Left', desk, parts)],
    seats: [aSeat('Low', seat, { kind })],
    workstations: [aStation('Sound', 'Left', 'Low', ['Noor'])],
  });
}

const judge = (place: Place) => findingOf(thighs(place), 'thigh-room');

function tray(drop: number, fromEdge: number, depth?: number): Pick<Desk, 'hanging'> {
  const piece: Hanging = {
    kind: 'tray',
    origin: nowhere,
    drop: given(drop),
    fromEdge: given(fromEdge),
    ...(depth !== undefined && { depth: given(depth) }),
  };
  return { hanging: [piece] };
}

describe('thigh-room: U − S − T, preferred at least 15, outer at least 0; and U − S at least 178 or 191', () => {
  it.each([
    // Panero & Zelnik 3.2: 7 in at a desk, 7 1/2 in at a stool counter, whatever the thigh; T24 holds at equality.
    [
      outside('Panero & Zelnik 1979, 3.2', 'T24: 7 in from seat to underside at a desk'),
      { desk: 425 + 178 + 25, seat: 425, thigh: 150 },
      'pass',
      178,
    ],
    [
      outside('Panero & Zelnik 1979, 3.2', 'T24: 7 in is too little at a stool'),
      { desk: 425 + 178 + 25, seat: 425, kind: 'stool' },
      'fail',
      178,
    ],
    [
      outside('Panero & Zelnik 1979, 3.2 and 7.3', 'T24: 7 1/2 in at a stool'),
      { desk: 425 + 191 + 25, seat: 425, kind: 'stool' },
      'pass',
      191,
    ],
    ['1 mm is allowed below 7 in', { desk: 425 + 177 + 25, seat: 425 }, 'pass', 177],
    ['2 mm are not', { desk: 425 + 175.5 + 25, seat: 425 }, 'fail', 175.5],
  ] as const)('%s', (_, place, verdict, measured) => {
    expect(judge(place)).toMatchObject({ verdict, measured });
  });

  it.each([
    ['clothing fits', { desk: 645, seat: 425, thigh: 180 }, 'pass', 15],
    ['1 mm is allowed', { desk: 644, seat: 425, thigh: 180 }, 'pass', 14],
    ['2 mm is not', { desk: 643, seat: 425, thigh: 180 }, 'marginal', 13],
    ['the thigh touches', { desk: 630, seat: 425, thigh: 180 }, 'marginal', 0],
    ['the thigh is too thick', { desk: 625, seat: 425, thigh: 180 }, 'fail', -5],
    ['much room is no fault', { desk: 900, seat: 425, thigh: 180 }, 'pass', 270],
  ] as const)('%s', (_, place, verdict, measured) => {
    const finding = judge(place);
    expect(finding.verdict).toBe(verdict);
    if (verdict !== 'pass' || measured < 100) expect(finding.measured).toBeCloseTo(measured);
  });

  it.each([
    ['at the near edge', tray(60, 0), 'fail'],
    ['within the 17 in that thighs take', tray(60, 400), 'fail'],
    ['beyond 17 in', tray(60, 17 * 25.4), 'pass'],
    ['an apron that ends where the operator sits', tray(60, 0, 1), 'pass'],
  ])('a tray counts where thighs are: %s', (_, parts, verdict) => {
    expect(judge({ desk: 660, seat: 425, thigh: 180, parts }).verdict).toBe(verdict);
  });

  it('an adjustable desk is raised, an adjustable seat is lowered, as far as the feet allow', () => {
    expect(judge({ desk: [600, 800], seat: 425, thigh: 200 }).verdict).toBe('pass');
    expect(judge({ desk: 640, seat: [350, 500], thigh: 200 }).verdict).toBe('pass');
  });

  it(
    outside(
      'Panero & Zelnik 1979, 9.2',
      'T23: a seat of 15 to 18 in under an underside at 26 1/2 in serves most people',
    ),
    () => {
      const booth = aBooth({
        crowds: [aCrowd('Volunteers', 0.5)],
        desks: [aDesk('Left', 673 + 25)],
        seats: [aSeat('Low', [381, 457], { kind: 'chair' })],
        workstations: [aStation('Sound', 'Left', 'Low', ['Volunteers'])],
      });
      expect(findingOf(booth, 'thigh-room')).toMatchObject({ verdict: 'pass', operator: 'Volunteers' });
      expect(findingOf(booth, 'feet-supported').verdict).toBe('pass');
    },
  );

  it('says how much too thick, or how little is left, and what to change', () => {
    expect(judge({ desk: 625, seat: 425, thigh: 180 }).message).toContain('thighs are 5 mm too thick');
    expect(judge({ desk: 638, seat: 425, thigh: 180 }).message).toContain('Only 8 mm is left above Noor’s thighs');
    expect(judge({ desk: 600, seat: 425 }).message).toContain('150 mm; 178 mm is the least for anyone');
    expect(judge({ desk: 625, seat: 425, thigh: 180 }).remedies[0]!.title).toMatch(/^(Raise the desk|Lower the seat)/);
  });

  it('of a body that is not measured, the message names the thigh', () => {
    const operators = [anOperator('Noor', { stature: 1630 }, 'female')];
    const finding = findingOf(aBooth({ ...thighs({ desk: 625, seat: 420 }), operators }), 'thigh-room');
    expect(finding.verdict).toBe('marginal');
    expect(finding.message).toContain('Measure Noor’s thigh clearance');
  });

  it('says what is missing instead of guessing', () => {
    const { height: _, ...desk } = aDesk('Left', 1);
    const noHeight = findingOf(aBooth({ ...thighs({ desk: 1, seat: 425 }), desks: [desk] }), 'thigh-room');
    expect(noHeight).toMatchObject({ verdict: 'unknown', missing: { property: 'height', of: 'desk Left' } });
    const seats: Seat[] = [{ kind: 'chair', name: 'Low', origin: nowhere }];
    const noSeat = findingOf(aBooth({ ...thighs({ desk: 700, seat: 1 }), seats }), 'thigh-room');
    expect(noSeat).toMatchObject({ verdict: 'unknown', missing: { property: 'seat', of: 'chair Low' } });
  });

  it('asks how far a tray hangs down', () => {
    const { drop: _, ...piece } = tray(1, 0).hanging[0]!;
    expect(judge({ desk: 700, seat: 425, parts: { hanging: [piece] } })).toMatchObject({
      verdict: 'unknown',
      missing: { property: 'drop', of: 'the tray of desk Left' },
    });
  });

  it('a thicker top takes from the room', () => {
    expect(judge({ desk: 660, seat: 425, thigh: 180 }).verdict).toBe('pass');
    expect(judge({ desk: 660, seat: 425, thigh: 180, parts: { top: byDefault(60) } }).verdict).toBe('fail');
  });
});

describe('thigh-room: what a reader is told', () => {
  const tell = (...args: Parameters<typeof thighs>) => told(thighs(...args), 'thigh-room');

  it('where thighs fit, hardly, and not', () => {
    expect(tell({ desk: 720, seat: 425 })).toMatchInlineSnapshot(`
      "pass, workstation Sound, Noor, sit
      Noor’s thighs fit under the desk.
      : 270 against 177.8 mm, margin 92.2, shares 1 and 1
      at workstations.Sound.people.Noor, by Panero & Zelnik 1979, Table 1, 3.2 and 7.3
      see desks.Left.height: the desk Left; seats.Low.seat: the chair Low; operators.Noor: what is known of Noor
      default a top of 25 mm"
    `);
    expect(tell({ desk: 670, seat: 425, thigh: 210 })).toMatchInlineSnapshot(`
      "marginal, workstation Sound, Noor, sit
      Only 10 mm is left above Noor’s thighs: too little for clothing and moving. Raise the desk Left to 675 mm: suits Noor.
      : 10 against 15 mm, margin -5, shares 0 and 1
      at workstations.Sound.people.Noor, by Panero & Zelnik 1979, Table 1, 3.2 and 7.3
      see desks.Left.height: the desk Left; seats.Low.seat: the chair Low; operators.Noor: what is known of Noor
      do Raise the desk Left to 675 mm: suits Noor | desks.Left.height := 675mm
      do Lower the seat of Low to 415 mm: suits Noor | seats.Low.seat := 415mm
      default a top of 25 mm"
    `);
    expect(tell({ desk: 670, seat: 425, thigh: 240 })).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, sit
      Noor’s thighs are 20 mm too thick for the gap between seat and desk. Raise the desk Left to 705 mm: nearest for Noor.
      : -20 against 0 mm, margin -20, shares 0 and 0
      at workstations.Sound.people.Noor, by Panero & Zelnik 1979, Table 1, 3.2 and 7.3
      see desks.Left.height: the desk Left; seats.Low.seat: the chair Low; operators.Noor: what is known of Noor
      weigh Raise the desk Left to 705 mm: nearest for Noor | desks.Left.height := 705mm
      weigh Lower the seat of Low to 390 mm: nearest for Noor | seats.Low.seat := 390mm
      default a top of 25 mm"
    `);
  });

  it('where the gap is too low for anyone', () => {
    expect(tell({ desk: 610, seat: 425, thigh: 120 })).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, sit
      From the seat to the underside of the desk is 160 mm; 178 mm is the least for anyone. Raise the desk Left to 630 mm: suits Noor.
      : 160 against 177.8 mm, margin -17.8, shares 0 and 0
      at workstations.Sound.people.Noor, by Panero & Zelnik 1979, Table 1, 3.2 and 7.3
      see desks.Left.height: the desk Left; seats.Low.seat: the chair Low; operators.Noor: what is known of Noor
      do Raise the desk Left to 630 mm: suits Noor | desks.Left.height := 630mm
      do Lower the seat of Low to 385 mm: suits Noor | seats.Low.seat := 385mm
      default a top of 25 mm"
    `);
    expect(tell({ desk: 635, seat: 425, thigh: 120, kind: 'stool' })).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, sit
      From the seat to the underside of the desk is 185 mm; 191 mm is the least for anyone. Raise the desk Left to 645 mm: suits Noor.
      : 185 against 190.5 mm, margin -5.5, shares 0 and 0
      at workstations.Sound.people.Noor, by Panero & Zelnik 1979, Table 1, 3.2 and 7.3
      see desks.Left.height: the desk Left; seats.Low.seat: the stool Low; operators.Noor: what is known of Noor
      do Raise the desk Left to 645 mm: suits Noor | desks.Left.height := 645mm
      do Lower the seat of Low to 390 mm: suits Noor | seats.Low.seat := 390mm
      default a top of 25 mm"
    `);
  });

  it('what hangs there takes, if it is the lowest', () => {
    const own = tray(60, 0).hanging[0]!;
    const lines = (...hanging: Desk['hanging']) => tell({ desk: 720, seat: 425, thigh: 240, parts: { hanging } });
    expect(lines(own)).toContain('gap between seat and desk. Without the tray they have 60 mm more.');
    expect(lines(own, { ...own, kind: 'drawer', drop: given(45) })).toContain('Without the tray they have 15 mm more.');
    expect(lines(own, own)).not.toContain('Without');
    expect(lines({ ...own, fromEdge: given(500), drop: given(200) })).not.toContain('Without');
    const low = tell({ desk: 660, seat: 425, thigh: 120, parts: { hanging: [own] } });
    expect(low).toContain('178 mm is the least for anyone. Without the tray they have 60 mm more.');
  });

  it('where a tray hangs, nobody says how far down', () => {
    expect(tell({ desk: 720, seat: 425, parts: { hanging: [{ kind: 'tray', origin: nowhere, fromEdge: given(0) }] } }))
      .toMatchInlineSnapshot(`
        "unknown, workstation Sound, sit
        Cannot say anything of thigh room at Sound. Add \`drop\` to the tray of desk Left, such as \`drop 100mm\`.
        at workstations.Sound, by Panero & Zelnik 1979, Table 1, 3.2 and 7.3
        ask drop of the tray of desk Left, as drop 100mm, at desks.Left.hanging.0"
      `);
  });
});

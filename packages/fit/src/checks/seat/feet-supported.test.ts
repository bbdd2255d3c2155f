import { describe, expect, it } from 'vitest';
import {
  aBooth,
  aDesk,
  aMeasuredOperator,
  anOperator,
  aSeat,
  aStation,
  byDefault,
  given,
  ringAt,
  ringBelow,
} from '../../testing/booths.js';
import { findingOf, wholeBody } from '../../testing/findings.js';
import { outside } from '../../testing/outside.js';
import type { Seat } from '../../booth.js';
import { told } from '../../testing/told.js';

function seated(popliteal: number, seat: number, ring: Partial<Seat> = {}, shoe = 25) {
  return aBooth({
    shoe: given(shoe),
    operators: [aMeasuredOperator('Noor', wholeBody({ poplitealHeight: popliteal }))],
    desks: [aDesk('Left', 1067)],
    seats: [aSeat('Tall', seat, ring)],
    workstations: [aStation('Sound', 'Left', 'Tall', ['Noor'])],
  });
}

const feet = (...place: Parameters<typeof seated>) => findingOf(seated(...place), 'feet-supported');

describe('feet-supported: S − F − P, preferred at most 0, outer at most 25', () => {
  it.each([
    // popliteal, shoe, seat, verdict: Panero & Zelnik 4.3 sets a seat from the 5th percentile leg and 1 1/2 in of shoe.
    [
      outside('Panero & Zelnik 1979, Part A 4.3', 'T1: a leg of 15.5 in and 1.5 in of shoe set a seat at 17 in'),
      394,
      38,
      432,
      'pass',
      0,
    ],
    [
      outside('Panero & Zelnik 1979, Part A 4.3', 'T2: a leg of 14 in and 1.5 in of shoe set a seat at 15.5 in'),
      356,
      38,
      394,
      'pass',
      0,
    ],
    ['a seat 20 mm too high', 394, 38, 452, 'marginal', 20],
    ['a seat 40 mm too high', 394, 38, 472, 'fail', 40],
    ['1 mm is allowed', 394, 38, 433, 'pass', 1],
    ['2 mm is not', 394, 38, 434, 'marginal', 2],
  ])('%s', (_, popliteal, shoe, seat, verdict, measured) => {
    const finding = feet(popliteal, seat, {}, shoe);
    expect(finding).toMatchObject({ verdict, measured });
  });

  it(
    outside(
      'Panero & Zelnik 1979, 5.2',
      'T10: a rest of 7 in under a seat of 30 in is 23 in below it, more than any leg',
    ),
    () => {
      const finding = feet(484, 762, ringAt(178));
      expect(finding.verdict).toBe('fail');
      expect(finding.message).toContain('584 mm');
    },
  );

  it(
    outside('Panero & Zelnik 1979, 5.2', 'T11: a ring on the stool at leg and shoe below the seat is the remedy'),
    () => {
      for (const seat of [600, 762, 850]) expect(feet(400, seat, ringBelow(425)).verdict).toBe('pass');
    },
  );

  it('the 508 mm bound holds even for a leg that would reach', () => {
    expect(feet(520, 762, ringBelow(510)).verdict).toBe('fail');
    expect(feet(520, 762, ringBelow(508)).verdict).toBe('pass');
  });

  it('an adjustable seat is set for the person', () => {
    const operators = [aMeasuredOperator('Noor', wholeBody({ poplitealHeight: 360 }))];
    const workstations = [aStation('Sound', 'Left', 'Tall', ['Noor'])];
    const booth = aBooth({ operators, desks: [aDesk('Left', 700)], seats: [aSeat('Tall', [380, 500])], workstations });
    expect(findingOf(booth, 'feet-supported').verdict).toBe('pass');
  });

  it.each([
    // The outer limit is 25 mm over leg and shoe, and each comparison allows 1 mm. The elbow’s best is 12.5 mm over the desk: a seat of 457.5.
    [
      'a little too high at its lowest: feet hang no more than they may, whatever the elbow would like',
      365,
      'marginal',
      26,
    ],
    ['so high at its lowest that no setting will do: the elbow decides', 345, 'fail', 87.5],
  ])('an adjustable seat that is %s', (_, popliteal, verdict, measured) => {
    const body = wholeBody({ poplitealHeight: popliteal, sittingElbowHeight: 255 });
    const workstations = [aStation('Sound', 'Left', 'Tall', ['Noor'])];
    const seats = [aSeat('Tall', [400, 500])];
    const operators = [aMeasuredOperator('Noor', body)];
    const booth = aBooth({ operators, desks: [aDesk('Left', 700)], seats, workstations });
    expect(findingOf(booth, 'feet-supported')).toMatchObject({ verdict, measured });
  });

  it('says what is missing instead of guessing', () => {
    const workstations = [aStation('Sound', 'Left', 'Tall', ['Noor'])];
    const seat: Seat = { kind: 'stool', name: 'Tall', origin: aSeat('Tall', 1).origin };
    const operators = [anOperator('Noor', { stature: 1600 })];
    const booth = aBooth({ operators, desks: [aDesk('Left', 700)], seats: [seat], workstations });
    expect(findingOf(booth, 'feet-supported')).toMatchObject({
      verdict: 'unknown',
      missing: { property: 'seat', of: 'stool Tall' },
    });
  });

  it('an uncertain body gives a share, and names the measurement that would settle it', () => {
    const operators = [anOperator('Noor', { stature: 1630 }, 'female')];
    const workstations = [aStation('Sound', 'Left', 'Tall', ['Noor'], { postures: byDefault(['sit'] as const) })];
    const booth = aBooth({ operators, desks: [aDesk('Left', 700)], seats: [aSeat('Tall', 420)], workstations });
    const finding = findingOf(booth, 'feet-supported');
    expect(finding.verdict).toBe('marginal');
    expect(finding.share).toBeGreaterThan(0.2);
    expect(finding.share).toBeLessThan(0.5);
    expect(finding.message).toContain('Measure Noor’s popliteal height');
  });

  it('asks for no measurement where no leg would be long enough', () => {
    const operators = [anOperator('Noor', { stature: 1630 }, 'female')];
    const workstations = [aStation('Sound', 'Left', 'Tall', ['Noor'], { postures: byDefault(['sit'] as const) })];
    const booth = aBooth({ operators, desks: [aDesk('Left', 700)], seats: [aSeat('Tall', 700)], workstations });
    const finding = findingOf(booth, 'feet-supported');
    expect(finding).toMatchObject({ verdict: 'fail', share: 0, shareAtLimit: 0 });
    expect(finding.message).not.toContain('Measure');
  });
});

describe('feet-supported: what a reader is told', () => {
  const tell = (...args: Parameters<typeof seated>) => told(seated(...args), 'feet-supported');

  it('where feet rest on the floor, and on a ring', () => {
    expect(tell(400, 425)).toMatchInlineSnapshot(`
      "pass, workstation Sound, Noor, sit
      Noor can rest both feet on the floor.
      : 0 against 0 mm, margin 0, shares 1 and 1
      at workstations.Sound.people.Noor, by Panero & Zelnik 1979, Part A 4.3 and 5.2
      see desks.Left.height: the desk Left; seats.Tall.seat: the stool Tall; operators.Noor: what is known of Noor
      granted no foot ring: the feet rest on the floor"
    `);
    expect(tell(400, 762, ringBelow(425))).toMatchInlineSnapshot(`
      "pass, workstation Sound, Noor, sit
      Noor can rest both feet on the foot ring of Tall.
      : 0 against 0 mm, margin 0, shares 1 and 1
      at workstations.Sound.people.Noor, by Panero & Zelnik 1979, Part A 4.3 and 5.2
      see desks.Left.height: the desk Left; seats.Tall.seat: the stool Tall; operators.Noor: what is known of Noor"
    `);
  });

  it('where they hang above the floor, and above a ring', () => {
    expect(tell(394, 440)).toMatchInlineSnapshot(`
      "marginal, workstation Sound, Noor, sit
      Noor’s feet hang 21 mm above the floor: the seat is that much too far above it.
      : 21 against 0 mm, margin -21, shares 0 and 1
      at workstations.Sound.people.Noor, by Panero & Zelnik 1979, Part A 4.3 and 5.2
      see desks.Left.height: the desk Left; seats.Tall.seat: the stool Tall; operators.Noor: what is known of Noor
      granted no foot ring: the feet rest on the floor"
    `);
    expect(tell(394, 762, ringAt(300))).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, sit
      Noor’s feet hang 43 mm above the foot ring of Tall: the seat is that much too far above it. Lower the seat of Tall to 720 mm: nearest for Noor.
      : 43 against 25 mm, margin -18, shares 0 and 0
      at workstations.Sound.people.Noor, by Panero & Zelnik 1979, Part A 4.3 and 5.2
      see desks.Left.height: the desk Left; seats.Tall.seat: the stool Tall; operators.Noor: what is known of Noor
      do Lower the seat of Tall to 720 mm: nearest for Noor | seats.Tall.seat := 720mm"
    `);
  });

  it('where no leg would reach the floor, or the ring', () => {
    expect(tell(520, 560)).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, sit
      From the seat down to the floor is 560 mm. No leg is longer than about 508 mm, so feet hang.
      : 560 against 508 mm, margin -52, shares 0 and 0
      at workstations.Sound.people.Noor, by Panero & Zelnik 1979, Part A 4.3 and 5.2
      see desks.Left.height: the desk Left; seats.Tall.seat: the stool Tall; operators.Noor: what is known of Noor
      granted no foot ring: the feet rest on the floor"
    `);
    expect(tell(520, 762, ringBelow(540))).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, sit
      From the seat down to the foot ring of Tall is 540 mm. No leg is longer than about 508 mm, so feet hang. Raise the foot ring of Tall to 495 mm below the seat: nearest for Noor.
      : 540 against 508 mm, margin -32, shares 0 and 0
      at workstations.Sound.people.Noor, by Panero & Zelnik 1979, Part A 4.3 and 5.2
      see desks.Left.height: the desk Left; seats.Tall.seat: the stool Tall; operators.Noor: what is known of Noor
      do Raise the foot ring of Tall to 495 mm below the seat: nearest for Noor | seats.Tall.footRing.distance := 495mm"
    `);
  });
});

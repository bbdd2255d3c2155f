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
import type { Seat } from '../../booth.js';

function feet(popliteal: number, seat: number, ring: Partial<Seat> = {}, shoe = 25) {
  const body = wholeBody({ poplitealHeight: popliteal });
  const booth = aBooth({
    shoe: given(shoe),
    operators: [aMeasuredOperator('Noor', body)],
    desks: [aDesk('Left', 1067)],
    seats: [aSeat('Tall', seat, ring)],
    workstations: [aStation('Sound', 'Left', 'Tall', ['Noor'])],
  });
  return findingOf(booth, 'feet-supported');
}

describe('feet-supported: S − F − P, preferred at most 0, outer at most 25', () => {
  it.each([
    // popliteal, shoe, seat, verdict: Panero & Zelnik 4.3 sets a seat from the 5th percentile leg and 1 1/2 in of shoe.
    ['T1, 5th percentile man', 394, 38, 432, 'pass', 0],
    ['T2, 5th percentile woman', 356, 38, 394, 'pass', 0],
    ['a seat 20 mm too high', 394, 38, 452, 'marginal', 20],
    ['a seat 40 mm too high', 394, 38, 472, 'fail', 40],
    ['1 mm is allowed', 394, 38, 433, 'pass', 1],
    ['2 mm is not', 394, 38, 434, 'marginal', 2],
  ])('%s', (_, popliteal, shoe, seat, verdict, measured) => {
    const finding = feet(popliteal, seat, {}, shoe);
    expect(finding).toMatchObject({ verdict, measured });
  });

  it('T10: a 7 in rest under a 30 in seat is 584 mm below it, more than any leg: feet hang (Panero & Zelnik 5.2)', () => {
    const finding = feet(484, 762, ringAt(178));
    expect(finding.verdict).toBe('fail');
    expect(finding.message).toContain('584 mm');
  });

  it('T11: a ring on the stool at popliteal height with shoe below the seat passes at any height', () => {
    for (const seat of [600, 762, 850]) expect(feet(400, seat, ringBelow(425)).verdict).toBe('pass');
  });

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
});

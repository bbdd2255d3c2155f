import { describe, expect, it } from 'vitest';
import type { Booth, Seat } from '../../booth.js';
import { aBooth, aCrowd, aDesk, anOperator, aSeat, aStation, nowhere, ringBelow } from '../../testing/booths.js';
import { findingOf, findingsOf } from '../../testing/findings.js';

type Height = number | readonly [number, number];

function stool(desk: Height, seat: Height, parts: Partial<Booth> = {}): Booth {
  return aBooth({
    operators: [anOperator('Noor', { stature: 1630 })],
    desks: [aDesk('Left', desk)],
    seats: [aSeat('Tall', seat, ringBelow(400))],
    workstations: [aStation('Sound', 'Left', 'Tall', ['Noor'])],
    ...parts,
  });
}

const judge = (...place: Parameters<typeof stool>) => findingOf(stool(...place), 'stool-drop');

describe('stool-drop: D − S, preferred 190..350, outer 179..381', () => {
  it.each([
    ['least preferred', 890, 700, 'pass'],
    ['1 mm is allowed', 889, 700, 'pass'],
    ['2 mm is not', 888, 700, 'marginal'],
    ['least outer', 879, 700, 'marginal'],
    ['below it', 877, 700, 'fail'],
    ['most preferred', 1050, 700, 'pass'],
    ['1 mm more is allowed', 1051, 700, 'pass'],
    ['2 mm is not', 1052, 700, 'marginal'],
    ['most outer', 1081, 700, 'marginal'],
    ['above it', 1083, 700, 'fail'],
    ['a seat above the desk', 700, 900, 'fail'],
  ] as const)('%s', (_, desk, seat, verdict) => {
    expect(judge(desk, seat)).toMatchObject({ verdict, measured: desk - seat });
  });

  it.each([
    // MIL-STD-1472F table XXII, from memory: the difference is 215 in every row.
    ['T25, sit-stand console', 910, 695, 'pass'],
    ['T25, seated', 650, 435, 'pass'],
    ['T25, mid', 810, 595, 'pass'],
    ['CCOHS, least', 1050, 800, 'pass'],
    ['CCOHS, most', 1050, 700, 'pass'],
    ['Panero & Zelnik 5.1: 42 in bar, 30 in stool', 1067, 762, 'pass'],
    ['Panero & Zelnik 7.3: 36 in table, lowest stool', 914, 533, 'marginal'],
    ['Panero & Zelnik 7.3: 36 in table, highest stool', 914, 699, 'pass'],
    ['ANSI/HFS 100-1988, least', 585, 406, 'marginal'],
    ['ANSI/HFS 100-1988, most', 710, 520, 'pass'],
  ] as const)('%s', (_, desk, seat, verdict) => {
    expect(judge(desk, seat).verdict).toBe(verdict);
  });

  it('an adjustable stool or desk finds a usual distance if its range has one', () => {
    expect(judge(1050, [600, 800]).verdict).toBe('pass');
    expect(judge([700, 1200], 700).verdict).toBe('pass');
    expect(judge(1300, [600, 800]).verdict).toBe('fail');
  });

  it('says how far, why it matters and what to change', () => {
    const high = judge(1100, 700);
    expect(high.message).toContain('400 mm; above 350 mm people work with their shoulders up.');
    expect(high.remedies.some(({ title }) => /^(Lower the desk Left|Raise the seat of Tall)/.test(title))).toBe(true);
    expect(judge(850, 700).message).toContain('150 mm; below 190 mm thighs and arms lack room');
  });

  it('is the same for everyone: a crowd wholly passes or does not', () => {
    const crowds = [aCrowd('Volunteers', 0.5)];
    const workstations = [aStation('Sound', 'Left', 'Tall', ['Volunteers'])];
    expect(judge(1000, 700, { crowds, workstations })).toMatchObject({ verdict: 'pass', share: 1 });
    expect(judge(1100, 700, { crowds, workstations })).toMatchObject({ verdict: 'fail', share: 0, shareAtLimit: 0 });
  });

  it('is about stools: a chair is asked nothing', () => {
    const seats = [aSeat('Tall', 420, { kind: 'chair' })];
    expect(findingsOf(stool(1100, 1, { seats }), 'stool-drop')).toEqual([]);
  });

  it('says what is missing instead of guessing', () => {
    const seats: Seat[] = [{ kind: 'stool', name: 'Tall', origin: nowhere }];
    expect(judge(1000, 1, { seats })).toMatchObject({ verdict: 'unknown', missing: { property: 'seat' } });
    const { height: _, ...desk } = aDesk('Left', 1);
    expect(judge(1, 700, { desks: [desk] })).toMatchObject({ verdict: 'unknown', missing: { property: 'height' } });
  });
});

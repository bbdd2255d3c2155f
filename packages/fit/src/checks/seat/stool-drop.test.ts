import { describe, expect, it } from 'vitest';
import type { Booth, Seat } from '../../booth.js';
import { aBooth, aCrowd, aDesk, anOperator, aSeat, aStation, nowhere, ringBelow } from '../../testing/booths.js';
import { findingOf, findingsOf } from '../../testing/findings.js';
import { outside } from '../../testing/outside.js';
import { told } from '../../testing/told.js';

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
    [outside('MIL-STD-1472F, table XXII, from memory', 'T25: surface 910, seat 695 mm'), 910, 695, 'pass'],
    [outside('MIL-STD-1472F, table XXII, from memory', 'T25: surface 650, seat 435 mm'), 650, 435, 'pass'],
    [outside('MIL-STD-1472F, table XXII, from memory', 'T25: surface 810, seat 595 mm'), 810, 595, 'pass'],
    [outside('CCOHS, working in a sitting or standing position', '250 mm below the surface'), 1050, 800, 'pass'],
    [outside('CCOHS, working in a sitting or standing position', '350 mm below the surface'), 1050, 700, 'pass'],
    [outside('Panero & Zelnik 1979, 5.1', 'a bar of 42 in, a stool of 30 in'), 1067, 762, 'pass'],
    [outside('Panero & Zelnik 1979, 7.3', 'a table of 36 in, its lowest stool of 21 in'), 914, 533, 'marginal'],
    [outside('Panero & Zelnik 1979, 7.3', 'its highest stool of 27 1/2 in'), 914, 699, 'pass'],
    [outside('ANSI/HFS 100-1988, in a secondary source', 'surface 585, seat 406 mm'), 585, 406, 'marginal'],
    [outside('ANSI/HFS 100-1988, in a secondary source', 'surface 710, seat 520 mm'), 710, 520, 'pass'],
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

describe('stool-drop: what a reader is told', () => {
  const tell = (...args: Parameters<typeof stool>) => told(stool(...args), 'stool-drop');

  it('where the distance is usual, short, and long', () => {
    expect(tell(1000, 720)).toMatchInlineSnapshot(`
      "pass, workstation Sound, Noor, sit
      From the seat of Tall up to the top of Left is 280 mm: a usual distance.
      : 280 against 350 mm, margin 70, shares 1 and 1
      at workstations.Sound.people.Noor, by CCOHS, working in a sitting or standing position
      see desks.Left.height: the desk Left; seats.Tall.seat: the stool Tall; operators.Noor: what is known of Noor"
    `);
    expect(tell(1000, 840)).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, sit
      From the seat of Tall up to the top of Left is 160 mm; below 190 mm thighs and arms lack room. Raise the desk Left to 1065 mm: suits Noor.
      : 160 against 179 mm, margin -19, shares 0 and 0
      at workstations.Sound.people.Noor, by CCOHS, working in a sitting or standing position
      see desks.Left.height: the desk Left; seats.Tall.seat: the stool Tall; operators.Noor: what is known of Noor
      do Raise the desk Left to 1065 mm: suits Noor | desks.Left.height := 1065mm
      do Lower the seat of Tall to 770 mm: suits Noor | seats.Tall.seat := 770mm"
    `);
    expect(tell(1000, 600)).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, sit
      From the seat of Tall up to the top of Left is 400 mm; above 350 mm people work with their shoulders up. Raise the seat of Tall to 770 mm: suits Noor.
      : 400 against 381 mm, margin -19, shares 0 and 0
      at workstations.Sound.people.Noor, by CCOHS, working in a sitting or standing position
      see desks.Left.height: the desk Left; seats.Tall.seat: the stool Tall; operators.Noor: what is known of Noor
      do Raise the seat of Tall to 770 mm: suits Noor | seats.Tall.seat := 770mm
      weigh Lower the desk Left to 825 mm: suits Noor | desks.Left.height := 825mm"
    `);
  });
});

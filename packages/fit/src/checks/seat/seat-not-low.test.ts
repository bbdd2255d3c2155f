import { describe, expect, it } from 'vitest';
import type { Seat } from '../../booth.js';
import {
  aBooth,
  aDesk,
  aMeasuredOperator,
  anOperator,
  aSeat,
  aStation,
  given,
  nowhere,
  ringAt,
  ringBelow,
} from '../../testing/booths.js';
import { findingOf, findingsOf, wholeBody } from '../../testing/findings.js';
import { outside } from '../../testing/outside.js';
import { told } from '../../testing/told.js';

interface Place {
  readonly popliteal: number;
  readonly seat: number | readonly [number, number];
  readonly ring?: Partial<Seat>;
  readonly shoe?: number;
}

function knees({ popliteal, seat, ring = {}, shoe = 25 }: Place) {
  return aBooth({
    shoe: given(shoe),
    operators: [aMeasuredOperator('Noor', wholeBody({ poplitealHeight: popliteal }))],
    desks: [aDesk('Left', 750)],
    seats: [aSeat('Low', seat, ring)],
    workstations: [aStation('Sound', 'Left', 'Low', ['Noor'])],
  });
}

const judge = (place: Place) => findingOf(knees(place), 'seat-not-low');

describe('seat-not-low: P − (S − F), preferred at most 50, outer at most 100', () => {
  it.each([
    ['level with the back of the knee', { popliteal: 400, seat: 425 }, 'pass', 0],
    ['at the preferred bound', { popliteal: 400, seat: 375 }, 'pass', 50],
    ['1 mm is allowed', { popliteal: 400, seat: 374 }, 'pass', 51],
    ['2 mm is not', { popliteal: 400, seat: 373 }, 'marginal', 52],
    ['at the outer bound', { popliteal: 400, seat: 325 }, 'marginal', 100],
    ['1 mm is allowed there too', { popliteal: 400, seat: 324 }, 'marginal', 101],
    ['beyond it', { popliteal: 400, seat: 323 }, 'fail', 102],
    ['a seat that is too high is no low seat', { popliteal: 400, seat: 520 }, 'pass', -95],
    ['a fixed ring counts as the floor', { popliteal: 400, seat: 700, ring: ringAt(300) }, 'pass', 25],
    ['a fixed ring set too high', { popliteal: 400, seat: 700, ring: ringAt(390) }, 'fail', 115],
    ['a hanging ring: only its drop counts', { popliteal: 400, seat: 900, ring: ringBelow(350) }, 'marginal', 75],
  ] as const)('%s', (_, place, verdict, measured) => {
    expect(judge(place)).toMatchObject({ verdict, measured });
  });

  it.each([
    // Helander: popliteal 5F 360 and 95M 490, shoe 30, give seats from 390 to 520: no leg is pushed up by its own seat.
    [
      outside('Helander, chapter 8', 'T4: a leg of 360 mm on a seat of 390, shod'),
      { popliteal: 360, seat: 390, shoe: 30 },
      0,
      'pass',
    ],
    [
      outside('Helander, chapter 8', 'T4: a leg of 490 mm on a seat of 520, shod'),
      { popliteal: 490, seat: 520, shoe: 30 },
      0,
      'pass',
    ],
    [
      outside('Helander, chapter 8', 'T4: the long leg on the short seat'),
      { popliteal: 490, seat: 390, shoe: 30 },
      130,
      'fail',
    ],
    [
      outside('Helander, chapter 8', 'T4: a seat from 390 to 520 mm'),
      { popliteal: 490, seat: [390, 520], shoe: 30 },
      50,
      'pass',
    ],
  ] as const)('%s', (_, place, most, verdict) => {
    const finding = judge(place);
    expect(finding.verdict).toBe(verdict);
    expect(finding.measured).toBeLessThanOrEqual(most + 1);
  });

  it('says by how much the seat is too low, and what height would do', () => {
    const finding = judge({ popliteal: 450, seat: 330 });
    expect(finding.message).toContain('145 mm lower');
    expect(finding.remedies[0]!.title).toMatch(/^Raise the seat of Low to \d+ mm/);
  });

  it('a drop that is too short is mended at the ring', () => {
    const place = knees({ popliteal: 450, seat: 800, ring: ringBelow(330) });
    const finding = findingOf(aBooth({ ...place, desks: [aDesk('Left', 1060)] }), 'seat-not-low');
    expect(finding.verdict).toBe('fail');
    expect(finding.remedies.some(({ title }) => title.startsWith('Lower the foot ring of Low'))).toBe(true);
  });

  it('says what is missing instead of guessing', () => {
    const stool: Seat = { kind: 'stool', name: 'Low', origin: nowhere };
    const unsaid = aBooth({ ...knees({ popliteal: 400, seat: 1 }), seats: [stool] });
    expect(findingOf(unsaid, 'seat-not-low')).toMatchObject({ verdict: 'unknown', missing: { property: 'seat' } });
    const unseated = aStation('Sound', 'Left', undefined, ['Noor'], { postures: given(['sit']) });
    expect(findingOf(aBooth({ ...unsaid, workstations: [unseated] }), 'seat-not-low')).toMatchObject({
      verdict: 'unknown',
      missing: { property: 'stool', of: 'workstation Sound' },
    });
  });

  it('is answered where the desk’s height is not known', () => {
    const { height: _, ...desk } = aDesk('Left', 1);
    const judgeWithout = (seat: number) =>
      findingOf(aBooth({ ...knees({ popliteal: 400, seat }), desks: [desk] }), 'seat-not-low');
    expect(judgeWithout(425)).toMatchObject({ verdict: 'pass', measured: 0 });
    expect(judgeWithout(300)).toMatchObject({ verdict: 'fail', measured: 125 });
  });

  it('asks nothing of people who stand', () => {
    const standing = aBooth({
      operators: [anOperator('Noor', { stature: 1600 })],
      desks: [aDesk('Left', 1000)],
      workstations: [aStation('Sound', 'Left', undefined, ['Noor'])],
    });
    expect(findingsOf(standing, 'seat-not-low')).toEqual([]);
  });
});

describe('seat-not-low: what a reader is told', () => {
  const tell = (...args: Parameters<typeof knees>) => told(knees(...args), 'seat-not-low');

  it('where the seat is high enough', () => {
    expect(tell({ popliteal: 400, seat: 425 })).toMatchInlineSnapshot(`
      "pass, workstation Sound, Noor, sit
      Noor’s knees are not pushed up by the seat.
      : 0 against 50 mm, margin 50, shares 1 and 1
      at workstations.Sound.people.Noor, by own bound on the popliteal rule of Panero & Zelnik 1979, 4.3
      see desks.Left.height: the desk Left; seats.Low.seat: the stool Low; operators.Noor: what is known of Noor"
    `);
  });

  it('where it is too low', () => {
    expect(tell({ popliteal: 450, seat: 330 })).toMatchInlineSnapshot(`
      "fail, workstation Sound, Noor, sit
      The seat is 145 mm lower above the feet than Noor’s lower leg is long, so the knees are pushed up. Raise the seat of Low to 475 mm: nearest for Noor.
      : 145 against 100 mm, margin -45, shares 0 and 0
      at workstations.Sound.people.Noor, by own bound on the popliteal rule of Panero & Zelnik 1979, 4.3
      see desks.Left.height: the desk Left; seats.Low.seat: the stool Low; operators.Noor: what is known of Noor
      do Raise the seat of Low to 475 mm: nearest for Noor | seats.Low.seat := 475mm"
    `);
  });
});

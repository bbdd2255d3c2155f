import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeBody } from '../bodies/body.js';
import { peopleOf, type People } from '../bodies/people.js';
import { normalCdf } from '../bodies/normal.js';
import { reference } from '../bodies/reference.js';
import { aBooth, aCrowd, aDesk, aMeasuredOperator, anOperator, aSeat, aStation, ringBelow } from '../testing/booths.js';
import { wholeBody } from '../testing/findings.js';
import { assess } from '../assess/assess.js';
import { atLeast, atMost, type Band, type Demand } from './demand.js';
import type { Rule } from './rules.js';
import { sharesOf, type Somebody } from './shares.js';

/** As many people as are said. */
function somebody(women: number, count?: number): Somebody {
  const body = makeBody({ women, measured: {} });
  return { body, people: peopleOf(body, count) };
}

const women = somebody(1);

function rule(check: string, ...demands: Demand[]): Rule {
  return { check, demands };
}

/** Feet, thighs and elbows, in the checks' own figures, at a desk with a 25 mm top. */
const seated: readonly Rule[] = [
  rule('feet', {
    form: { seat: 1, desk: 0, body: { poplitealHeight: -1 }, constant: -25 },
    preferred: atMost(0),
    outer: atMost(25),
  }),
  rule('low', {
    form: { seat: -1, desk: 0, body: { poplitealHeight: 1 }, constant: 25 },
    preferred: atMost(50),
    outer: atMost(100),
  }),
  rule('thigh', {
    form: { seat: -1, desk: 1, body: { thighClearance: -1 }, constant: -25 },
    preferred: atLeast(15),
    outer: atLeast(0),
  }),
  rule('elbow', {
    form: { seat: -1, desk: 1, body: { sittingElbowHeight: -1 }, constant: 0 },
    preferred: { min: -50, max: 25 },
    outer: { min: -75, max: 50 },
  }),
];

/** Whether some setting suits one person, by trying every millimetre; the 1 mm allowance is the checks’. */
function someSettingSuits(
  people: People,
  person: number,
  seat: readonly [number, number],
  desk: readonly [number, number],
) {
  const [p, t, e] = (['poplitealHeight', 'thighClearance', 'sittingElbowHeight'] as const).map((d) =>
    Math.round(people.column(d)[person]!),
  );
  for (let s = seat[0]; s <= seat[1]; s += 1) {
    for (let d = desk[0]; d <= desk[1]; d += 1) {
      const feet = s - p! - 25 <= 1 && p! + 25 - s <= 51;
      const thigh = d - 25 - s - t! >= 14;
      const elbow = d - s - e! >= -51 && d - s - e! <= 26;
      if (feet && thigh && elbow) return true;
    }
  }
  return false;
}

describe('the share who are suited by some setting', () => {
  it.each([
    ['fixed seat and desk', [410, 410], [660, 660]],
    ['adjustable seat', [380, 480], [660, 660]],
    ['adjustable desk', [400, 400], [600, 700]],
    ['both adjustable', [390, 430], [620, 680]],
  ] as const)('%s: as by trying every millimetre', (_, seat, desk) => {
    const sample = somebody(1, 512);
    const { people } = sample;
    const heights = { seat: { min: seat[0], max: seat[1] }, desk: { min: desk[0], max: desk[1] } };
    let tried = 0;
    for (let person = 0; person < people.count; person++) {
      if (someSettingSuits(people, person, seat, desk)) tried += people.weights[person]!;
    }
    // 512 persons counted one by one against the same persons integrated over the elbow: counting is the coarser.
    expect(Math.abs(sharesOf(seated, 'preferred', heights, sample).joint - tried)).toBeLessThan(0.02);
  });

  it('one demand alone is the normal distribution', () => {
    const { mean, sd } = reference.female.dimensions.sittingElbowHeight;
    const only = [seated[3]!];
    for (const gap of [180, 230, 260]) {
      const heights = { seat: { min: 400, max: 400 }, desk: { min: 400 + gap, max: 400 + gap } };
      // Elbows from gap − 26 to gap + 51, each whole millimetre standing for half of one on either side.
      const exact = normalCdf((gap + 51.5 - mean) / sd) - normalCdf((gap - 26.5 - mean) / sd);
      // The skewness of −0.066 moves a share by less than a percentage point.
      expect(Math.abs(sharesOf(only, 'preferred', heights, women).joint - exact)).toBeLessThan(0.01);
    }
  });

  it('stays within half a percentage point of a sample sixteen times as large', () => {
    const [usual, large] = [somebody(0.5), somebody(0.5, 1 << 16)];
    for (let seat = 380; seat <= 480; seat += 20) {
      for (const [low, high] of [
        [640, 640],
        [680, 680],
        [720, 720],
        [620, 760],
      ] as const) {
        const heights = { seat: { min: seat, max: seat + 30 }, desk: { min: low, max: high } };
        for (const level of ['preferred', 'outer'] as const) {
          const error = sharesOf(seated, level, heights, usual).joint - sharesOf(seated, level, heights, large).joint;
          expect(Math.abs(error)).toBeLessThan(0.005);
        }
      }
    }
  });

  it('moves smoothly: a millimetre of desk moves it by less than three percentage points', () => {
    let before: number | undefined;
    for (let desk = 560; desk <= 800; desk++) {
      const heights = { seat: { min: 400, max: 440 }, desk: { min: desk, max: desk } };
      const { joint } = sharesOf(seated, 'preferred', heights, women);
      if (before !== undefined) expect(Math.abs(joint - before)).toBeLessThan(0.03);
      before = joint;
    }
  });
});

describe('properties of shares', () => {
  const height = fc.integer({ min: 350, max: 850 });
  const heights = fc
    .tuple(height, fc.integer({ min: 0, max: 120 }), height, fc.integer({ min: 0, max: 300 }))
    .map(([s, ds, d, dd]) => ({
      seat: { min: s, max: s + ds },
      desk: { min: d, max: d + dd },
    }));
  const few = somebody(0.5, 256);

  it('lie in 0..1, and no rule is met by fewer people than all rules at once', () => {
    fc.assert(
      fc.property(heights, (place) => {
        const { joint, byRule } = sharesOf(seated, 'preferred', place, few);
        expect(joint).toBeGreaterThanOrEqual(0);
        for (const share of byRule) {
          expect(share).toBeLessThanOrEqual(1);
          expect(joint).toBeLessThanOrEqual(share + 1e-9);
        }
      }),
    );
  });

  it('the outer limit never serves fewer than the preferred band, by any rule or by all', () => {
    fc.assert(
      fc.property(heights, (place) => {
        const outer = sharesOf(seated, 'outer', place, few);
        const preferred = sharesOf(seated, 'preferred', place, few);
        expect(preferred.joint).toBeLessThanOrEqual(outer.joint + 1e-9);
        preferred.byRule.forEach((share, index) => expect(share).toBeLessThanOrEqual(outer.byRule[index]!));
      }),
    );
  });

  it('nor where who keeps the first rule wholly has to pass over the second, and so meets the third', () => {
    const seat = (check: string, preferred: Band, outer = preferred) =>
      rule(check, { form: { seat: 1, desk: 0, body: {}, constant: 0 }, preferred, outer });
    const asked = [
      seat('first', atMost(420), atMost(480)),
      seat('second', atLeast(450)),
      seat('third', atMost(430)),
      seat('last', atLeast(0)),
    ];
    const place = { seat: { min: 400, max: 500 }, desk: { min: 700, max: 700 } };
    expect(sharesOf(asked, 'preferred', place, few).byRule).toEqual([1, 0, 1, 1]);
    expect(sharesOf(asked, 'outer', place, few).byRule).toEqual([1, 1, 1, 1]);
  });

  it('a wider range never serves fewer', () => {
    fc.assert(
      fc.property(heights, fc.integer({ min: 0, max: 80 }), (place, more) => {
        const wider = { seat: { min: place.seat.min - more, max: place.seat.max + more }, desk: place.desk };
        const joint = sharesOf(seated, 'preferred', place, few).joint;
        expect(joint).toBeLessThanOrEqual(sharesOf(seated, 'preferred', wider, few).joint + 1e-9);
      }),
    );
  });
});

describe('what is known and what is asked', () => {
  const place = { seat: { min: 360, max: 440 }, desk: { min: 600, max: 700 } };
  const few = somebody(0.5, 256);

  it('the share of all rules at once falls, or stays, when any one limit tightens', () => {
    fc.assert(
      fc.property(fc.nat(seated.length - 1), fc.nat(60), fc.nat(60), (which, below, above) => {
        const tighter = seated.map((one, index) =>
          index !== which
            ? one
            : {
                ...one,
                demands: one.demands.map((demand) => ({
                  ...demand,
                  preferred: { min: demand.preferred.min + below, max: demand.preferred.max - above },
                })),
              },
        );
        const joint = sharesOf(seated, 'preferred', place, few).joint;
        expect(sharesOf(tighter, 'preferred', place, few).joint).toBeLessThanOrEqual(joint + 1e-9);
      }),
    );
  });

  it.each([
    ['standing-work', 'standingElbowHeight', 950, 1150],
    ['feet-supported', 'poplitealHeight', 360, 470],
    ['seated-elbow', 'sittingElbowHeight', 190, 290],
  ] as const)('a measured dimension makes its own check certain: %s', (check, dimension, min, max) => {
    fc.assert(
      fc.property(fc.integer({ min, max }), fc.integer({ min: 0, max: 200 }), (value, more) => {
        const operators = [anOperator('Noor', { stature: 1650, [dimension]: value })];
        const sitting = check !== 'standing-work';
        const booth = aBooth({
          operators,
          desks: [aDesk('Left', (sitting ? 600 : 900) + more)],
          seats: [aSeat('Low', 380 + more / 4, { kind: 'chair' })],
          workstations: [aStation('Words', 'Left', sitting ? 'Low' : undefined, ['Noor'])],
        });
        const finding = assess(booth).findings.find((one) => one.check === check)!;
        const [share, shareAtLimit] = [finding.share!, finding.shareAtLimit!];
        for (const one of [share, shareAtLimit]) expect(Math.min(one, 1 - one)).toBeLessThan(1e-9);
        expect(finding.verdict).toBe(share > 0.5 ? 'pass' : shareAtLimit > 0.5 ? 'marginal' : 'fail');
      }),
      { numRuns: 30 },
    );
  });
});

describe('served, as the assessment reports it', () => {
  it('a crowd of one sex is that sex, and a mixed one lies between', () => {
    const share = (womenShare: number) => {
      const booth = aBooth({
        crowds: [aCrowd('All', womenShare)],
        desks: [aDesk('Left', 720)],
        seats: [aSeat('Low', [400, 500], { kind: 'chair' })],
        workstations: [aStation('Words', 'Left', 'Low', ['All'])],
      });
      return assess(booth).workstations[0]!.served[0]!.share;
    };
    const [w, m, half] = [share(1), share(0), share(0.5)];
    expect(half).toBeCloseTo((w + m) / 2, 6);
  });

  it('a fully measured person is served wholly or not at all', () => {
    fc.assert(
      fc.property(fc.integer({ min: 330, max: 480 }), fc.integer({ min: 180, max: 300 }), (popliteal, elbow) => {
        const body = wholeBody({ poplitealHeight: popliteal, sittingElbowHeight: elbow });
        const booth = aBooth({
          operators: [aMeasuredOperator('Noor', body)],
          desks: [aDesk('Left', 1000)],
          seats: [aSeat('Tall', [700, 800], ringBelow(420))],
          workstations: [aStation('Words', 'Left', 'Tall', ['Noor'])],
        });
        const { share, shareAtLimit } = assess(booth).workstations[0]!.served[0]!;
        expect([0, 1]).toContain(share);
        expect([0, 1]).toContain(shareAtLimit);
      }),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeBody, meanOf, sdOf } from './body.js';
import type { DimensionName, Sex } from './dimensions.js';
import { peopleOf } from './people.js';
import { reference } from './reference.js';

/**
 * The body model against tables that it was not built on: what it predicts for the published median stature, beside the
 * published median. `allowed` is what the published difference allows, `why` says where it comes from.
 */
interface Row {
  readonly dimension: DimensionName;
  readonly published: number;
  readonly allowed: number;
  readonly why: string;
}

interface Table {
  readonly sex: Sex;
  readonly stature: number;
  readonly rows: readonly Row[];
}

function row(dimension: DimensionName, published: number, allowed: number, why: string): Row {
  return { dimension, published, allowed, why };
}

const legs = 'shorter legs and longer trunks for the same stature in this population';
const lean = 'soldiers are broader and more muscular';
const joint =
  'this survey’s standing elbow is the elbow joint (radiale), 15 to 30 mm above the underside of the bent elbow';
const same = 'the same dimension, another sample';
const heavier = 'soldiers of 2012 are heavier than those of 1988';

/** Pheasant, Bodyspace, Hong Kong adults: all rows read in City University of Hong Kong, Online Anthropometry. */
const hongKong: readonly Table[] = [
  {
    sex: 'male',
    stature: 1680,
    rows: [
      row('poplitealHeight', 405, 10, legs),
      row('sittingHeight', 900, 20, legs),
      row('sittingElbowHeight', 240, 10, same),
      row('sittingKneeHeight', 495, 35, legs),
      row('standingElbowHeight', 1015, 40, `${joint}; ${legs}`),
      row('thighClearance', 135, 45, lean),
      row('hipBreadthSitting', 335, 35, lean),
      row('forearmHandLength', 445, 20, legs),
    ],
  },
  {
    sex: 'female',
    stature: 1555,
    rows: [
      row('poplitealHeight', 375, 10, legs),
      row('sittingHeight', 840, 20, legs),
      row('sittingElbowHeight', 230, 10, same),
      row('sittingKneeHeight', 455, 35, legs),
      row('thighClearance', 130, 45, lean),
      row('hipBreadthSitting', 330, 60, lean),
      row('forearmHandLength', 400, 25, legs),
    ],
  },
];

/** Huston 2009, read in a copy of the table. */
const huston: readonly Table[] = [
  {
    sex: 'male',
    stature: 1759,
    rows: [
      row('standingEyeHeight', 1644, 12, same),
      row('sittingHeight', 927, 12, same),
      row('sittingEyeHeight', 800, 12, same),
    ],
  },
  {
    sex: 'female',
    stature: 1618,
    rows: [
      row('standingEyeHeight', 1520, 12, same),
      row('sittingHeight', 853, 12, same),
      row('sittingEyeHeight', 743, 12, same),
    ],
  },
];

/** The 1988 survey of the same army (Gordon et al. 1989): from memory, rounded. */
const survey1988: readonly Table[] = [
  {
    sex: 'male',
    stature: 1756,
    rows: [
      row('standingEyeHeight', 1634, 10, same),
      row('standingShoulderHeight', 1443, 10, same),
      row('standingElbowHeight', 1073, 35, joint),
      row('sittingHeight', 914, 10, same),
      row('sittingEyeHeight', 792, 15, same),
      row('sittingElbowHeight', 231, 15, same),
      row('thighClearance', 168, 15, heavier),
      row('sittingKneeHeight', 559, 10, same),
      row('poplitealHeight', 434, 10, same),
      row('thumbTipReach', 801, 15, same),
      row('buttockKneeLength', 616, 10, same),
      row('buttockPoplitealLength', 500, 10, same),
      row('forearmHandLength', 484, 10, same),
      row('hipBreadthSitting', 367, 15, heavier),
      row('forearmForearmBreadth', 546, 40, heavier),
    ],
  },
  {
    sex: 'female',
    stature: 1629,
    rows: [
      row('standingEyeHeight', 1516, 10, same),
      row('standingShoulderHeight', 1334, 10, same),
      row('standingElbowHeight', 998, 30, joint),
      row('sittingHeight', 852, 10, same),
      row('sittingEyeHeight', 739, 15, same),
      row('sittingElbowHeight', 221, 15, same),
      row('thighClearance', 159, 15, heavier),
      row('sittingKneeHeight', 515, 10, same),
      row('poplitealHeight', 389, 10, same),
      row('thumbTipReach', 735, 15, same),
      row('buttockKneeLength', 589, 10, same),
      row('buttockPoplitealLength', 482, 10, same),
      row('forearmHandLength', 443, 10, same),
      row('hipBreadthSitting', 385, 15, heavier),
      row('forearmForearmBreadth', 469, 30, heavier),
    ],
  },
];

describe.each([
  ['Hong Kong adults', hongKong],
  ['Huston 2009', huston],
  ['the 1988 survey (from memory)', survey1988],
])('predicted from the median stature of %s', (_, tables) => {
  const cases = tables.flatMap(({ sex, stature, rows }) => rows.map((one) => ({ sex, stature, ...one })));
  it.each(cases)('$sex $dimension: $published ± $allowed, $why', ({ sex, stature, dimension, published, allowed }) => {
    const body = makeBody({ women: sex === 'female' ? 1 : 0, measured: { stature } });
    expect(Math.abs(meanOf(body, dimension) - published)).toBeLessThan(allowed);
  });
});

describe('predicted spreads against spreads published elsewhere', () => {
  // Pheasant, British adults, standard deviations read in City University of Hong Kong, Online Anthropometry.
  it.each([
    ['male', 'poplitealHeight', 70, 29],
    ['male', 'sittingKneeHeight', 70, 32],
    ['male', 'sittingElbowHeight', 70, 31],
    ['male', 'thighClearance', 70, 15],
    ['female', 'sittingElbowHeight', 62, 29],
  ] as const)('%s %s, from statures with an sd of %i: sd %i within 20%%', (sex, dimension, spread, published) => {
    const { mean, sd } = reference[sex].dimensions.stature;
    const women = sex === 'female' ? 1 : 0;
    const slope =
      meanOf(makeBody({ women, measured: { stature: mean + sd } }), dimension) -
      reference[sex].dimensions[dimension].mean;
    const rest = sdOf(makeBody({ women, measured: { stature: mean } }), dimension);
    const predicted = Math.hypot((slope / sd) * spread, rest);
    expect(Math.abs(predicted / published - 1)).toBeLessThan(0.2);
  });
});

describe('sums that must hold of every body', () => {
  it('an eye is below the crown, a popliteal crease below the knee, a thigh inside the leg, an elbow below the shoulder', () => {
    const people = peopleOf(makeBody({ women: 0.5, measured: {} }));
    const column = (name: DimensionName) => people.column(name);
    const orders: readonly (readonly [DimensionName, DimensionName])[] = [
      ['standingEyeHeight', 'stature'],
      ['standingShoulderHeight', 'standingEyeHeight'],
      ['standingElbowHeight', 'standingShoulderHeight'],
      ['sittingHeight', 'stature'],
      ['sittingEyeHeight', 'sittingHeight'],
      ['sittingElbowHeight', 'sittingEyeHeight'],
      ['poplitealHeight', 'sittingKneeHeight'],
      ['thighClearance', 'poplitealHeight'],
      ['buttockPoplitealLength', 'buttockKneeLength'],
      ['footLength', 'forearmHandLength'],
      ['forearmHandLength', 'thumbTipReach'],
    ];
    for (const [lower, higher] of orders) {
      const [a, b] = [column(lower), column(higher)];
      for (let person = 0; person < people.count; person++) expect(a[person]!).toBeLessThan(b[person]!);
    }
  });

  it('hold of thousands of bodies of any stature too', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1350, max: 2100 }), fc.constantFrom(0, 0.5, 1), (stature, women) => {
        const body = makeBody({ women, measured: { stature } });
        const mean = (name: DimensionName) => meanOf(body, name);
        expect(mean('standingEyeHeight')).toBeLessThan(stature);
        expect(mean('poplitealHeight')).toBeLessThan(mean('sittingKneeHeight'));
        expect(mean('sittingEyeHeight')).toBeLessThan(mean('sittingHeight'));
        // Derived per person in the survey, so it holds of the predictions: stature − eye = sitting height − sitting eye.
        const crown = mean('sittingHeight') - mean('sittingEyeHeight');
        expect(stature - mean('standingEyeHeight')).toBeCloseTo(crown, 0);
      }),
      { numRuns: 2000 },
    );
  });
});

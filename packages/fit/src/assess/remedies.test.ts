import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Assessment, Remedy } from '../assessment.js';
import type { Booth, Crowd, Operator, Posture } from '../booth.js';
import { checks } from '../checks/catalogue.js';
import {
  aBooth,
  aCrowd,
  aDesk,
  aMeasuredOperator,
  anOperator,
  aSeat,
  aStation,
  given,
  nowhere,
  range,
  ringBelow,
} from '../testing/booths.js';
import { wholeBody } from '../testing/findings.js';
import { assess } from './assess.js';

/** The place of the desk's height in a text, and of nothing else. */
const deskHeight = { ...nowhere, start: { line: 1, character: 0 }, end: { line: 1, character: 4 } };

function booth(desk: number, statures: readonly number[]): Booth {
  const operators = statures.map((stature, index) => anOperator(`Person${index}`, { stature }));
  const postures = given(['sit', 'stand'] as const);
  return aBooth({
    operators,
    desks: [{ ...aDesk('Left', desk), height: { ...range(desk, desk), origin: deskHeight } }],
    seats: [aSeat('Tall', [650, 750], ringBelow(400))],
    workstations: [
      aStation(
        'Sound',
        'Left',
        'Tall',
        operators.map(({ name }) => name),
        { postures },
      ),
    ],
  });
}

const rank = (verdict: string) => ['fail', 'marginal', 'pass'].indexOf(verdict);
const rules = new Set(checks.filter(({ rule }) => rule).map(({ id }) => id));

function ranks({ findings }: Assessment): Map<string, number> {
  const own = findings.filter(({ check }) => rules.has(check));
  return new Map(own.map((one) => [`${one.check} ${one.operator} ${one.posture}`, rank(one.verdict)]));
}

function deskRemedies({ findings }: Assessment): Remedy[] {
  const remedies = findings.flatMap((finding) => finding.remedies);
  return remedies.filter(({ changes }) => changes.length === 1 && changes[0]!.origin === deskHeight);
}

describe('a remedy that is called safe', () => {
  it('makes no seat or stand finding worse for anyone at the desk', () => {
    const statures = fc.array(fc.integer({ min: 1500, max: 1900 }), { minLength: 1, maxLength: 2 });
    let tried = 0;
    fc.assert(
      fc.property(fc.integer({ min: 800, max: 1200 }), statures, (desk, people) => {
        const before = assess(booth(desk, people));
        for (const remedy of deskRemedies(before).filter(({ safe }) => safe)) {
          const after = ranks(assess(booth(Number(remedy.changes[0]!.text.replace('mm', '')), people)));
          for (const [key, was] of ranks(before)) expect(after.get(key), key).toBeGreaterThanOrEqual(was);
          tried++;
        }
      }),
      { numRuns: 25 },
    );
    expect(tried).toBeGreaterThan(0);
  }, 60_000);
});

describe('where what one check gains another loses', () => {
  // Thighs of 180 mm want a desk at 700, elbows at 200 mm one no higher than 675: between them a height misses as much as another.
  const body = wholeBody({ sittingElbowHeight: 200, thighClearance: 180, poplitealHeight: 430 });
  const at = (desk: number) =>
    aBooth({
      operators: [aMeasuredOperator('Noor', body)],
      desks: [{ ...aDesk('Left', desk), height: { ...range(desk, desk), origin: deskHeight } }],
      seats: [aSeat('Low', 450, { kind: 'chair' })],
      workstations: [aStation('Sound', 'Left', 'Low', ['Noor'])],
    });
  const of = (desk: number, check: string) => assess(at(desk)).findings.find((one) => one.check === check)!;

  it('the height is told that is nearest to the present one, of those at which the check holds', () => {
    const before = of(650, 'thigh-room');
    const remedy = before.remedies.find(({ changes }) => changes[0]!.origin === deskHeight)!;
    const height = Number(remedy.changes[0]!.text.replace('mm', ''));
    expect(before.verdict).not.toBe('pass');
    expect(of(height, 'thigh-room').verdict).toBe('pass');
    expect(of(height - 5, 'thigh-room').verdict).not.toBe('pass');
  });
});

/** The place of a range of heights in a text. */
const heightRange = { ...nowhere, start: { line: 2, character: 0 }, end: { line: 2, character: 4 } };

interface Adjustable {
  readonly desk?: readonly [number, number];
  readonly seat?: readonly [number, number];
  readonly people?: readonly Operator[];
  readonly crowds?: readonly Crowd[];
  readonly postures?: readonly Posture[];
}

function adjustable({
  desk = [700, 900],
  seat = [420, 520],
  people = [],
  crowds = [],
  postures = ['stand'],
}: Adjustable) {
  const [table, chair] = [aDesk('Left', desk), aSeat('Office', seat, { kind: 'chair' })];
  return aBooth({
    operators: people,
    crowds,
    desks: [{ ...table, height: { ...table.height!, origin: heightRange } }],
    seats: [{ ...chair, seat: { ...chair.seat!, origin: heightRange } }],
    workstations: [
      aStation(
        'Sound',
        'Left',
        'Office',
        [...people, ...crowds].map(({ name }) => name),
        { postures: given(postures) },
      ),
    ],
  });
}

function widenings(place: Adjustable, check: string): Remedy[] {
  const { findings } = assess(adjustable(place));
  return findings
    .filter((finding) => finding.check === check)
    .flatMap(({ remedies }) => remedies.filter(({ title }) => title.includes('adjustable from')));
}

const [tall, short] = [
  aMeasuredOperator('Olaf', wholeBody({ standingElbowHeight: 1170, sittingElbowHeight: 250, poplitealHeight: 480 })),
  aMeasuredOperator('Ines', wholeBody({ standingElbowHeight: 960, sittingElbowHeight: 230, poplitealHeight: 370 })),
];

it('a range in place of a height that serves one alone is typed as its title says it', () => {
  const between = aMeasuredOperator('Noor', wholeBody({ standingElbowHeight: 1065 }));
  const { findings } = assess(adjustable({ desk: [1010, 1010], people: [tall, between, short] }));
  const remedies = findings.flatMap((finding) => finding.remedies);
  const { title, changes } = remedies.find((remedy) => remedy.title.startsWith('No single height'))!;
  const [, min, max] = /from (\d+) mm to (\d+) mm$/.exec(title)!;
  expect(changes.map(({ text }) => text)).toEqual([`${min}mm..${max}mm`]);
});

describe('a range that does not reach far enough', () => {
  it.each<[string, Adjustable, string, string[]]>([
    // An elbow of 1170 in shoes of 25 is 90 above it: a counter is 50 to 100 below (Panero & Zelnik 1979, Table 1; Sanders & McCormick).
    [
      'reaches up to a tall person’s work',
      { people: [tall] },
      'standing-work',
      ['Make the desk Left adjustable from 700 mm to 1105 mm: suits Olaf'],
    ],
    [
      'keeps what it has for the others',
      { people: [tall, short] },
      'standing-work',
      ['Make the desk Left adjustable from 700 mm to 1105 mm: suits Olaf and Ines'],
    ],
    [
      'reaches down to a short person’s leg',
      { people: [short], postures: ['sit'], desk: [600, 900], seat: [440, 520] },
      'feet-supported',
      ['Make the seat of Office adjustable from 355 mm to 520 mm: suits Ines'],
    ],
    ['is left alone where it reaches', { people: [short], desk: [700, 1200] }, 'standing-work', []],
    [
      'is left alone where no height of it would do, since the desk is too high for the elbow',
      { people: [short], postures: ['sit'], desk: [850, 900], seat: [440, 520] },
      'feet-supported',
      [],
    ],
    [
      'reaches as far as serves those of a crowd who are wanted',
      { people: [tall], crowds: [aCrowd('Helpers', 0.5)] },
      'standing-work',
      Array(2).fill('Make the desk Left adjustable from 700 mm to 1105 mm: suits Olaf and Helpers') as string[],
    ],
    [
      'is not widened for a crowd that it would not serve then either',
      { crowds: [aCrowd('Helpers', 0.5)] },
      'standing-work',
      [],
    ],
  ])('%s', (_, place, check, titles) => {
    const found = widenings(place, check);
    expect(found.map(({ title }) => title)).toEqual(titles);
    for (const { safe, changes } of found) {
      // What can be bought decides, so nobody is to take it unseen.
      expect(safe).toBe(false);
      expect(changes).toEqual([{ origin: heightRange, text: expect.stringMatching(/^\d+mm\.\.\d+mm$/) as unknown }]);
    }
  });

  it('holds what it promises: with the new range, the check passes', () => {
    const lengths = fc.record({
      standingElbowHeight: fc.integer({ min: 850, max: 1250 }),
      sittingElbowHeight: fc.integer({ min: 180, max: 300 }),
      poplitealHeight: fc.integer({ min: 340, max: 500 }),
    });
    const ranges = fc.integer({ min: 600, max: 1000 }).map((least) => [least, least + 80] as const);
    let tried = 0;
    fc.assert(
      fc.property(lengths, ranges, fc.constantFrom<Posture>('sit', 'stand'), (body, desk, posture) => {
        const place: Adjustable = { desk, people: [aMeasuredOperator('Noor', wholeBody(body))], postures: [posture] };
        for (const check of ['standing-work', 'seated-elbow', 'thigh-room']) {
          const [remedy] = widenings(place, check).filter(({ title }) => title.includes('the desk'));
          if (!remedy) continue;
          const [min, max] = remedy.changes[0]!.text.split('..').map((end) => Number(end.replace('mm', '')));
          const { findings } = assess(adjustable({ ...place, desk: [min!, max!] }));
          expect(findings.find((finding) => finding.check === check)).toMatchObject({ verdict: 'pass' });
          tried++;
        }
      }),
    );
    expect(tried).toBeGreaterThan(20);
  });
});

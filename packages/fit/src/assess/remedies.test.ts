import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Assessment, Remedy } from '../assessment.js';
import type { Booth } from '../booth.js';
import { checks } from '../checks/catalogue.js';
import { aBooth, aDesk, anOperator, aSeat, aStation, given, nowhere, range, ringBelow } from '../testing/booths.js';
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

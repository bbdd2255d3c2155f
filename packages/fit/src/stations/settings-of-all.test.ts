import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bodyPart, tolerant, type Demand, type Dimensions, type Level } from './demand.js';
import { allSettings, copySettings, largestGap, narrow, smallestGap, type Settings } from './settings.js';
import { bindingOf, SettingsOfAll } from './settings-of-all.js';

const length = fc.integer({ min: -60, max: 60 });
const height = fc.integer({ min: 300, max: 420 });
const range = fc.tuple(height, fc.nat(80)).map(([min, more]) => ({ min, max: min + more }));
const onSetting = fc.constantFrom(
  { seat: 0, desk: 0 },
  { seat: 1, desk: 0 },
  { seat: -1, desk: 0 },
  { seat: 0, desk: 1 },
  { seat: -1, desk: 1 },
  { seat: 1, desk: -1 } as const,
);
const part = fc.record(
  { poplitealHeight: fc.constantFrom(-1, 1), thighClearance: fc.constantFrom(-1, 0.5) },
  { requiredKeys: [] },
);
const form = fc.tuple(onSetting, part, length).map(([on, body, constant]) => ({ ...on, body, constant }));
const bands = fc
  .tuple(length, fc.nat(120), fc.nat(40), fc.constantFrom('both', 'min', 'max'))
  .map(([min, more, wider, sides]) => ({
    preferred: { min: sides === 'max' ? -Infinity : min, max: sides === 'min' ? Infinity : min + more },
    outer: { min: sides === 'max' ? -Infinity : min - wider, max: sides === 'min' ? Infinity : min + more + wider },
  }));
const demand = fc.tuple(form, bands).map(([of, within]): Demand => ({ form: of, ...within }));
const rules = fc.array(fc.array(demand, { minLength: 1, maxLength: 3 }), { maxLength: 6 });
const level = fc.constantFrom<Level>('preferred', 'outer');
const people = fc.array(fc.record({ poplitealHeight: fc.nat(60), thighClearance: fc.nat(60) }), {
  minLength: 1,
  maxLength: 5,
});

/** One body alone, by the bounds for one: whether it meets a rule; if not, it keeps to the outer band if it can. */
function alone(body: Dimensions, settings: Settings, demands: readonly Demand[], wanted: Level) {
  const before = { ...settings };
  const keepsTo = (which: Level) =>
    demands.every((one) => narrow(settings, one.form, bodyPart(one.form, body), tolerant(one[which])));
  if (keepsTo(wanted)) return true;
  copySettings(before, settings);
  if (!keepsTo('outer')) copySettings(before, settings);
  return false;
}

/** A bound on the gap that no height can pass need not be written down; a sum that comes to nothing may have either sign. */
function openIn(settings: Settings) {
  const { seatMin, seatMax, deskMin, deskMax } = settings;
  return [seatMin, seatMax, deskMin, deskMax, smallestGap(settings), largestGap(settings)].map((value) => value + 0);
}

describe('the settings of many people', () => {
  it('are those of each alone, to the digit, rule by rule', () => {
    fc.assert(
      fc.property(range, range, rules, level, people, (seat, desk, asked, wanted, bodies) => {
        const heights = { seat, desk };
        const all = SettingsOfAll.inBlocks(heights, 0, bodies.length).next().value as SettingsOfAll;
        const each = bodies.map(() => allSettings(seat, desk));
        const met = new Uint8Array(bodies.length);
        const columnOf = (dimension: string) =>
          Float64Array.from(bodies, (body) => body[dimension as keyof typeof body]);
        for (const demands of asked) {
          all.take(bindingOf({ check: 'any', demands }, wanted, heights, bodies.length, columnOf), met);
          bodies.forEach((body, person) => {
            const own = each[person]!;
            expect(met[person] === 1).toBe(alone(body as unknown as Dimensions, own, demands, wanted));
            const copy = { ...own, seatMin: NaN };
            all.copyOf(person, copy);
            expect(openIn(copy)).toEqual(openIn(own));
          });
        }
        const { min, max } = all.spanOf('gap');
        each.forEach((own, person) => {
          expect([min[person]! + 0, max[person]! + 0]).toEqual([smallestGap(own) + 0, largestGap(own) + 0]);
        });
      }),
      { numRuns: 300 },
    );
  });
});

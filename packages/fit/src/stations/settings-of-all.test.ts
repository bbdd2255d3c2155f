import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boundsOf } from './bounds.js';
import { bodyPart, tolerant, type Dimensions, type LinearForm } from './demand.js';
import { allSettings, copySettings, largestGap, narrow, smallestGap, type Settings } from './settings.js';
import { bindingIn, SettingsOfAll } from './settings-of-all.js';

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
const band = fc.tuple(length, fc.nat(120), fc.constantFrom('both', 'min', 'max')).map(([min, more, sides]) => ({
  min: sides === 'max' ? -Infinity : min,
  max: sides === 'min' ? Infinity : min + more,
}));
const rules = fc.array(fc.array(fc.record({ form, band }), { minLength: 1, maxLength: 3 }), { maxLength: 6 });
const people = fc.array(fc.record({ poplitealHeight: fc.nat(60), thighClearance: fc.nat(60) }), {
  minLength: 1,
  maxLength: 5,
});

/** One body alone, by the bounds for one. */
function alone(
  body: Dimensions,
  settings: Settings,
  asked: readonly { form: LinearForm; band: { min: number; max: number } }[],
) {
  const before = { ...settings };
  const met = asked.every((one) => narrow(settings, one.form, bodyPart(one.form, body), tolerant(one.band)));
  if (!met) copySettings(before, settings);
  return met;
}

/** A bound on the gap that no height can pass need not be written down; a sum that comes to nothing may have either sign. */
function openIn(settings: Settings) {
  const { seatMin, seatMax, deskMin, deskMax } = settings;
  return [seatMin, seatMax, deskMin, deskMax, smallestGap(settings), largestGap(settings)].map((value) => value + 0);
}

describe('the settings of many people', () => {
  it('are those of each alone, to the digit, rule by rule', () => {
    fc.assert(
      fc.property(range, range, rules, people, (seat, desk, asked, bodies) => {
        const heights = { seat, desk };
        const all = SettingsOfAll.inBlocks(heights, 0, bodies.length).next().value as SettingsOfAll;
        const each = bodies.map(() => allSettings(seat, desk));
        const met = new Uint8Array(bodies.length);
        const columnOf = (dimension: string) =>
          Float64Array.from(bodies, (body) => body[dimension as keyof typeof body]);
        for (const rule of asked) {
          const bounds = rule.map((one) => boundsOf(one.form, one.band, bodies.length, columnOf));
          all.narrow(bindingIn(heights, bounds), met);
          bodies.forEach((body, person) => {
            const own = each[person]!;
            expect(met[person] === 1).toBe(alone(body as unknown as Dimensions, own, rule));
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

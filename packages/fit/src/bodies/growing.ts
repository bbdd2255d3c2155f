import type { Millimetres, Years } from '../units.js';
import type { Sex } from './dimensions.js';
import { reference } from './reference.js';
import { say } from '../words/say.js';

/** Ages that a crowd can be limited to: younger people are not at a control desk, of older ones the survey knows nothing. */
export const AGES: { readonly min: Years; readonly max: Years } = { min: 13, max: 58 };

/** The source of the statures below. */
export const growthSource =
  'CDC growth charts 2000, stature for age (Kuczmarski et al. 2002, Vital Health Stat. 11(246))';

/** Stature of one sex within a range of ages. */
export interface StatureOfAges {
  readonly mean: Millimetres;
  readonly sd: Millimetres;
}

/**
 * Median (mm) and coefficient of variation of stature in the middle of each year of age (13 1/2, 14 1/2 …): the M and S
 * columns of the growth charts' data file, read in a copy of it. Their small Box-Cox power is passed over.
 */
const growing: Readonly<Record<Sex, readonly (readonly [Years, Millimetres, number])[]>> = {
  female: [
    [13, 1592.07, 0.04211],
    [14, 1613.27, 0.04041],
    [15, 1622.91, 0.03991],
    [16, 1627.12, 0.03977],
    [17, 1630.4, 0.03971],
  ],
  male: [
    [13, 1603.49, 0.04993],
    [14, 1674.64, 0.04751],
    [15, 1721.56, 0.04436],
    [16, 1746.31, 0.04211],
    [17, 1758.36, 0.04094],
  ],
};

const ADULT: Years = 18;

/** What a result about a crowd of these ages takes for granted. */
export function assumedOfAges(ages: { readonly min: Years; readonly max: Years } | undefined): readonly string[] {
  return ages && ages.min < ADULT ? [say`people below 18 are built like adults of their stature`] : [];
}

/**
 * The stature of people of these ages (completed years, both ends included), every year of age as frequent as the next.
 * From 18 on the survey of adults stands for each year.
 */
export function statureOfAges(sex: Sex, ages: { readonly min: Years; readonly max: Years }): StatureOfAges {
  const adults = reference[sex].dimensions.stature;
  const years = Array.from({ length: ages.max - ages.min + 1 }, (_, index) => {
    const young = growing[sex].find(([year]) => year === ages.min + index);
    return young ? { mean: young[1], sd: young[1] * young[2] } : adults;
  });
  const mean = years.reduce((sum, year) => sum + year.mean, 0) / years.length;
  const variance = years.reduce((sum, year) => sum + year.sd ** 2 + (year.mean - mean) ** 2, 0) / years.length;
  return { mean, sd: Math.sqrt(variance) };
}

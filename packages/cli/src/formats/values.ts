import type { Finding, MeasureUnit, Origin } from '@boothwright/fit';
import { placeOf } from '../place.js';
import type { Problem } from '../reading.js';

/** Parts that the JSON forms share. What is absent is null, so that every field is always there. */
export function problemObject({ severity, message, code, origin }: Problem) {
  return { severity, message, code: code ?? null, range: rangeObject(origin) };
}

export function changeObject({ origin, text }: { readonly origin: Origin; readonly text: string }) {
  return { range: rangeObject(origin), text };
}

export function rangeObject(origin: Origin | undefined) {
  return origin ? placeOf(origin) : null;
}

const digits: Record<MeasureUnit, number> = { mm: 1, deg: 1, arcmin: 1, kg: 1, count: 1, ratio: 4 };

export function inUnit(value: number | undefined, unit: MeasureUnit | undefined): number | null {
  return rounded(value, unit ? digits[unit] : 4);
}

/** What a finding measured, in its unit and in shares. */
export function measuresOf({ measured, limit, margin, unit, share, shareAtLimit }: Finding) {
  return {
    measured: inUnit(measured, unit),
    limit: inUnit(limit, unit),
    margin: inUnit(margin, unit),
    unit: unit ?? null,
    share: rounded(share, 4),
    shareAtLimit: rounded(shareAtLimit, 4),
  };
}

/** Null for what is absent, and for what is no number: JSON has no other word for it. */
export function rounded(value: number | undefined, decimals: number): number | null {
  if (value === undefined || !Number.isFinite(value)) return null;
  return Number(value.toFixed(decimals)) + 0;
}

/** One object for one file, an array for several. */
export function printed(objects: readonly object[]): string {
  return `${JSON.stringify(objects.length === 1 ? objects[0] : objects, null, 2)}\n`;
}

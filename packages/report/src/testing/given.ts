import type { Given, Origin, Reference } from '@boothwright/fit';

/** Builders for booths and assessments that tests write by hand. */

export const file = 'file:///halls/larkfield-hall.booth';

/** A place on one line, zero-based as in an `Origin`. */
export function at(line: number, character: number, length = 4): Origin {
  return { uri: file, start: { line, character }, end: { line, character: character + length } };
}

export function said<T>(value: T, origin: Origin = at(0, 0)): Given<T> {
  return { value, origin, isDefault: false };
}

export function assumed<T>(value: T): Given<T> {
  return { value, isDefault: true };
}

export function exactly(millimetres: number): Given<{ min: number; max: number }> {
  return said({ min: millimetres, max: millimetres });
}

export function named(name: string, origin: Origin = at(0, 0)): Reference {
  return { name, origin };
}

import type { Station } from '../stations/station.js';

const kept = new WeakMap<Station, Map<string, unknown>>();

/** Lets a station take over what was kept for it while all that it rests on was the same. */
export function adoptKept(station: Station, found: Map<string, unknown>): void {
  kept.set(station, found);
}

/**
 * Something that a check computes of one station from what that station rests on alone (see assess/by-station.ts): kept from one
 * assessment to the next for as long as that is the same.
 */
export function keep<Value>(station: Station, key: string, make: () => Value): Value {
  const found = kept.get(station);
  if (!found) return make();
  if (!found.has(key)) found.set(key, make());
  return found.get(key) as Value;
}

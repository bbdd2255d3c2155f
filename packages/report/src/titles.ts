import { capital, spaced } from './words.js';

/** A check's title, for a heading or a row. */
export function titleOf(check: string): string {
  return capital(spaced(check));
}

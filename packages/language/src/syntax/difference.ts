/** What leads from one text to another: the part of the old text that was replaced, what stands there now, and how much longer it grew. */
export interface Difference {
  readonly start: number;
  readonly end: number;
  readonly inserted: string;
  readonly growth: number;
}

/** The smallest single replacement that leads from a text to another. Offsets and lengths are in characters. */
export function differenceBetween(before: string, after: string): Difference {
  const most = Math.min(before.length, after.length);
  let start = 0;
  while (start < most && before.charCodeAt(start) === after.charCodeAt(start)) start++;
  let tail = 0;
  while (
    tail < most - start &&
    before.charCodeAt(before.length - 1 - tail) === after.charCodeAt(after.length - 1 - tail)
  )
    tail++;
  return {
    start,
    end: before.length - tail,
    inserted: after.slice(start, after.length - tail),
    growth: after.length - before.length,
  };
}

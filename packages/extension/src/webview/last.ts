import { keep, kept } from './host.js';
import type { Drawn } from './messages.js';

/** Larger ones are not kept: the editor writes what a page keeps to its own disk, again and again. */
const LARGEST = 400_000;
/** Keys that follow each other faster than this are kept once, in milliseconds. */
const PAUSE = 1000;

const { version = '' } = document.documentElement.dataset;
let waiting = 0;

/** Keeps a drawing over the life of the page, unless it is very large: then an older one is forgotten. */
export function keepLast(result: Drawn): void {
  clearTimeout(waiting);
  waiting = window.setTimeout(() => {
    const last = { version, result: { ...result, handles: [] } };
    keep({ last: JSON.stringify(last).length <= LARGEST ? last : undefined });
  }, PAUSE);
}

/** What was kept by the same version of the extension. */
export function lastKept(): Drawn | undefined {
  const last = kept()?.last;
  return last?.version === version ? last.result : undefined;
}

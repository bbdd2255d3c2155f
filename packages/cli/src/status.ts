/** Exit status: nothing failed; something failed; the file could not be read or understood, or bad usage. */
export const GOOD = 0;
export const FAILED = 1;
export const UNUSABLE = 2;
export type Status = typeof GOOD | typeof FAILED | typeof UNUSABLE;

/** What the person at the keyboard can put right: shown as it is, without a trace, with status 2. */
export class UsageError extends Error {}

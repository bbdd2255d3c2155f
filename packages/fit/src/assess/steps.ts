/** Something long that is computed in steps, between which whoever asks may see to something else, or give up. */
export type Steps<Result> = Generator<undefined, Result, undefined>;

/** What it comes to, with all steps taken at once. */
export function taken<Result>(steps: Steps<Result>): Result {
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

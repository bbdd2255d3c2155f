import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { Worker } from 'node:worker_threads';
import type { Failure, Work } from './worker.js';

export interface Run {
  readonly seed: number;
  /** The first case's number, and how many. */
  readonly from?: number;
  readonly cases: number;
  readonly jobs: number;
  /** The bundled worker. */
  readonly worker: string;
  /** A case that takes longer is ended, and counts as a failure. Milliseconds. */
  readonly deadline: number;
  readonly onProgress?: (done: number) => void;
  /** Hears of each failure when it is found: a run that is stopped has told of those before. */
  readonly onFailure?: (failure: Failure) => void;
}

/** Heap of a worker, in MB: a case that needs more is ended, and counts as a failure. */
const MEMORY = 1500;
const LOOK = 250;

/** Tries the cases in workers that are ended if they hang. */
export async function fuzz(
  root: string,
  { seed, from = 0, cases, jobs, worker, deadline, onProgress, onFailure }: Run,
): Promise<Failure[]> {
  const { examples, furniture } = examplesOf(root);
  const failures: Failure[] = [];
  const fail = (failure: Failure) => {
    failures.push(failure);
    onFailure?.(failure);
  };
  let furthest = from;
  const lane = async (first: number): Promise<void> => {
    let next: number | undefined = from + first;
    while (next !== undefined && next < from + cases) {
      const progress = new SharedArrayBuffer(4);
      const work: Work = { seed, from: next, to: from + cases, step: jobs, examples, furniture, progress };
      const stopped = await one(
        new Worker(worker, { workerData: work, resourceLimits: { maxOldGenerationSizeMb: MEMORY } }),
        progress,
      );
      next = stopped === undefined ? undefined : stopped + jobs;
    }
  };
  /** Resolves with the number of the case that had to be ended, or nothing at the end. */
  const one = (thread: Worker, progress: SharedArrayBuffer): Promise<number | undefined> =>
    new Promise((resolve) => {
      const current = new Int32Array(progress);
      let [seen, since] = [-1, performance.now()];
      const look = setInterval(() => {
        const index = Atomics.load(current, 0);
        furthest = Math.max(furthest, index);
        onProgress?.(furthest - from);
        if (index !== seen) [seen, since] = [index, performance.now()];
        else if (performance.now() - since > deadline) end(index, `took longer than ${deadline / 1000} s`);
      }, LOOK);
      const end = (index: number | undefined, why?: string) => {
        clearInterval(look);
        if (index !== undefined && why) fail({ index, made: 'ended', text: '', why, stack: '' });
        void thread.terminate();
        resolve(index);
      };
      thread.on('message', (said: Failure | 'done') => (said === 'done' ? end(undefined) : fail(said)));
      thread.on('error', (error: Error) => end(Atomics.load(current, 0), error.message));
    });
  await Promise.all(Array.from({ length: jobs }, (_, first) => lane(first)));
  return failures;
}

/** The texts that cases are made of: the examples and what the tests know as hard. */
export function examplesOf(root: string): { examples: string[]; furniture: string } {
  const folders = ['examples', 'tests/fixtures/language', 'tests/fixtures/drawings'].map((folder) =>
    path.join(root, folder),
  );
  const files = folders.flatMap((folder) =>
    readdirSync(folder)
      .sort()
      .map((name) => path.join(folder, name)),
  );
  const examples = files.filter((file) => file.endsWith('.booth')).map((file) => readFileSync(file, 'utf8'));
  return { examples, furniture: readFileSync(path.join(root, 'examples/furniture.booth'), 'utf8') };
}

import { parentPort, workerData } from 'node:worker_threads';
import { type Case, caseOf } from './cases.js';
import { examine } from './examine.js';
import { Language } from './language.js';
import { session } from './session.js';

/** What a worker is told. It tries the cases `from`, `from + step` … below `to`. */
export interface Work {
  readonly seed: number;
  readonly from: number;
  readonly to: number;
  readonly step: number;
  readonly examples: readonly string[];
  readonly furniture: string;
  /** The number of the case in hand, for who watches over the time. */
  readonly progress: SharedArrayBuffer;
}

/** A case that broke a rule. */
export interface Failure {
  readonly index: number;
  readonly made: string;
  readonly text: string;
  readonly why: string;
  readonly stack: string;
}

/** Every such case asks for advice and reports too; every such other one is typed into a server. */
const WHOLE = 100;
const SESSION = 100;
/** The caches of one set of services are given up after so many cases. */
const FRESH = 200;

const { seed, from, to, step, examples, furniture, progress } = workerData as Work;
const current = new Int32Array(progress);
let language = new Language(furniture);

void run().then(() => parentPort!.postMessage('done'));

async function run(): Promise<void> {
  for (let index = from, n = 1; index < to; index += step, n++) {
    Atomics.store(current, 0, index);
    if (n % FRESH === 0) language = new Language(furniture);
    const one = caseOf(seed, index, examples);
    const thrown = await attempt(one, index);
    if (thrown) {
      const { message, stack = '' } = thrown;
      parentPort!.postMessage({ index, made: one.made, text: one.text, why: message, stack } satisfies Failure);
    }
  }
}

async function attempt(one: Case, index: number): Promise<Error | undefined> {
  try {
    if (index % SESSION === 0) await session(one, language, furniture);
    else await examine(one, language, index % WHOLE === 1 ? 'whole' : 'quick');
    return undefined;
  } catch (error) {
    language = new Language(furniture);
    return error instanceof Error ? error : new Error(String(error));
  }
}

import path from 'node:path';
import { parseArgs } from 'node:util';
import { caseOf } from './cases.js';
import { examplesOf, fuzz } from './pool.js';
import type { Failure } from './worker.js';

const { values } = parseArgs({
  options: {
    cases: { type: 'string', default: '200000' },
    seed: { type: 'string', default: '1' },
    jobs: { type: 'string', default: '2' },
    from: { type: 'string', default: '0' },
    /** Prints the text of one case. */
    show: { type: 'string' },
  },
});
const root = process.cwd();
const seed = Number(values.seed);

if (values.show !== undefined) {
  const { made, text } = caseOf(seed, Number(values.show), examplesOf(root).examples);
  console.log(`${made}\n${JSON.stringify(text)}\n${text}`);
} else await run();

async function run(): Promise<void> {
  const [cases, from, jobs] = [Number(values.cases), Number(values.from), Number(values.jobs)];
  const began = performance.now();
  const minutes = () => ((performance.now() - began) / 60_000).toFixed(1);
  let told = began;
  const known = new Set<string>();
  const failures = await fuzz(root, {
    seed,
    from,
    cases,
    jobs,
    worker: path.join(import.meta.dirname, 'worker.mjs'),
    deadline: 60_000,
    onProgress: (done) => {
      if (performance.now() - told < 60_000) return;
      told = performance.now();
      console.log(`${done} of ${cases} cases after ${minutes()} min`);
    },
    onFailure: (failure) => {
      const kind = kindOf(failure);
      if (!known.has(kind)) console.log(`case ${failure.index} (${failure.made}): ${failure.why}`);
      known.add(kind);
    },
  });
  print(failures);
  console.log(`\n${cases} cases of seed ${seed} in ${minutes()} min: ${failures.length} failed.`);
  process.exitCode = failures.length > 0 ? 1 : 0;
}

/** Each kind of failure once, with its shortest text. */
function print(failures: readonly Failure[]): void {
  const kinds = new Map<string, Failure[]>();
  for (const failure of failures) {
    const kind = kindOf(failure);
    kinds.set(kind, [...(kinds.get(kind) ?? []), failure]);
  }
  for (const [kind, all] of kinds) {
    const shortest = all.reduce((a, b) => (b.text.length < a.text.length ? b : a));
    console.log(`\n${all.length} × ${kind}\ncase ${shortest.index} (${shortest.made}): ${shortest.why}`);
    console.log(`${shortest.stack.split('\n').slice(1, 6).join('\n')}\n${JSON.stringify(shortest.text)}`);
  }
}

function kindOf({ why }: Failure): string {
  return why.replace(/\d+/g, 'N').slice(0, 80);
}

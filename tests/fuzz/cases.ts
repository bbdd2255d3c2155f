import { BoothWriter } from './booths.js';
import { asBytes, mutated, soup } from './mutations.js';
import { Random } from './random.js';

/** One text to try. */
export interface Case {
  readonly text: string;
  /** How it came about. */
  readonly made: string;
  /** Decides what else is asked of it; the same for the same case. */
  readonly random: Random;
}

/** The case of that number. The same seed, number and examples give the same text. */
export function caseOf(seed: number, index: number, examples: readonly string[]): Case {
  const random = new Random(seed, index);
  const start = () =>
    random.chance(0.5) ? fragmentOf(random.pick(examples), random) : new BoothWriter(random, 0.98).booth();
  const ways: readonly [string, number, () => string][] = [
    ['booth from the vocabulary', 0.3, () => new BoothWriter(random, random.pick([1, 1, 0.9])).booth()],
    ['words changed', 0.3, () => mutated(start(), random, 'word')],
    ['characters changed', 0.2, () => mutated(start(), random, 'unit')],
    ['bytes changed', 0.1, () => asBytes(start(), random)],
    ['soup', 0.1, () => soup(random)],
  ];
  let chance = random.next();
  const [made, , make] = ways.find(([, share]) => (chance -= share) < 0) ?? ways[0]!;
  return { made, text: make(), random };
}

/** Some neighbouring lines, or the whole now and then. */
function fragmentOf(text: string, random: Random): string {
  const lines = text.split('\n');
  if (random.chance(0.1)) return text;
  const from = random.whole(0, lines.length - 1);
  return lines.slice(from, from + random.whole(1, 12)).join('\n');
}

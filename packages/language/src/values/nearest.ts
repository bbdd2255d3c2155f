import { say } from '@boothwright/fit';
import { distance } from 'fastest-levenshtein';

/** The candidates that may be meant, the likeliest first; at most three. */
export function nearest(word: string, candidates: Iterable<string>): string[] {
  const wanted = word.toLowerCase();
  const limit = wanted.length < 4 ? 1 : Math.max(2, Math.floor(wanted.length / 3));
  return [...new Set(candidates)]
    .map((candidate) => ({ candidate, score: scoreOf(wanted, candidate.toLowerCase()) }))
    .filter(({ score }) => score <= limit)
    .sort((a, b) => a.score - b.score)
    .slice(0, 3)
    .map(({ candidate }) => candidate);
}

/** A beginning of at least three letters counts as near: people stop in the middle of a word. */
function scoreOf(wanted: string, candidate: string): number {
  if (wanted.length >= 3 && candidate.startsWith(wanted)) return 0.5;
  return distance(wanted, candidate);
}

/** A question to end a message with; empty without a suggestion. */
export function didYouMean(suggestions: readonly string[]): string {
  return suggestions.length > 0 ? ` ${say`Did you mean \`${suggestions[0]!}\`?`}` : '';
}

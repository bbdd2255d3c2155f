import type { Finding, Source, Strength } from '@boothwright/fit';
import { foundationOf } from '../titles.js';

/** Where the limits of one check come from. */
export interface SourceUse {
  readonly check: string;
  readonly strength: Strength;
  readonly sources: readonly (Pick<Source, 'name'> & Partial<Source>)[];
}

/** The catalogue's sources of each check, then what single findings cite beyond them. */
export function usesOf(findings: readonly Finding[]): readonly SourceUse[] {
  const ids = [...new Set(findings.map(({ check }) => check))];
  return ids.map((check) => {
    const own = findings.filter((finding) => finding.check === check);
    const { sources, strength } = foundationOf(check) ?? { sources: [], strength: own[0]!.strength };
    const cited = [...new Set(own.map(({ source }) => source))].filter(
      (name) => !sources.some((known) => known.name === name),
    );
    return { check, strength, sources: [...sources, ...cited.map((name) => ({ name }))] };
  });
}

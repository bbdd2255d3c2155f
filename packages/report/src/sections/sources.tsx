import type { Finding, Source, Strength } from '@boothwright/fit';
import { strengthWarning } from '../parts/source.js';
import { readingMeanings, strengthMeanings } from '../strength.js';
import { foundationOf, titleOf } from '../titles.js';

/** Where the limits of each check come from, and how much weight they bear. */
export function Sources({ findings }: { findings: readonly Finding[] }) {
  const uses = usesOf(findings);
  if (uses.length === 0) return null;
  return (
    <section>
      <h2>Sources</h2>
      <table>
        <caption>Sources of the limits</caption>
        <thead>
          <tr>
            <th scope="col">Check</th>
            <th scope="col">Strength</th>
            <th scope="col">Sources</th>
          </tr>
        </thead>
        <tbody>
          {uses.map(({ check, strength, sources }) => (
            <tr>
              <th scope="row">{titleOf(check)}</th>
              <td class={strengthWarning(strength) && 'weak'}>{strengthMeanings[strength]}</td>
              <td>
                {sources.map(({ name, says, read }) => (
                  <div>
                    {name}
                    {says && `: ${says}`} {read && <span class="kindof">({readingMeanings[read]})</span>}
                  </div>
                ))}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

interface SourceUse {
  readonly check: string;
  readonly strength: Strength;
  readonly sources: readonly (Pick<Source, 'name'> & Partial<Source>)[];
}

/** The catalogue's sources of each check, then what single findings cite beyond them. */
function usesOf(findings: readonly Finding[]): readonly SourceUse[] {
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

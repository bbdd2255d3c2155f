import type { Finding, Strength } from '@boothwright/fit';
import { strengthWarning } from '../parts/source.js';
import { strengthMeanings } from '../strength.js';
import { titleOf } from '../titles.js';

/** Where the limits come from, and how much weight each bears. */
export function Sources({ findings }: { findings: readonly Finding[] }) {
  const sources = sourcesOf(findings);
  if (sources.length === 0) return null;
  return (
    <section>
      <h2>Sources</h2>
      <table>
        <caption>Sources of the limits</caption>
        <thead>
          <tr>
            <th scope="col">Source</th>
            <th scope="col">Strength</th>
            <th scope="col">Used by</th>
          </tr>
        </thead>
        <tbody>
          {sources.map(({ source, strength, checks }) => (
            <tr>
              <th scope="row">{source}</th>
              <td class={strengthWarning(strength) && 'weak'}>{strengthMeanings[strength]}</td>
              <td>{[...checks].map(titleOf).join(', ')}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

interface SourceUse {
  readonly source: string;
  readonly strength: Strength;
  readonly checks: Set<string>;
}

function sourcesOf(findings: readonly Finding[]): readonly SourceUse[] {
  const uses = new Map<string, SourceUse>();
  for (const { source, strength, check } of findings) {
    const key = `${strength} ${source}`;
    const use = uses.get(key) ?? { source, strength, checks: new Set() };
    uses.set(key, use);
    use.checks.add(check);
  }
  return [...uses.values()].sort((a, b) => a.source.localeCompare(b.source, 'en'));
}

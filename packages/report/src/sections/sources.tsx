import type { Finding } from '@boothwright/fit';
import { readingMeanings, strengthMeanings, strengthWarning } from '../strength.js';
import { usesOf } from '../telling/sources.js';
import { titleOf } from '../titles.js';

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

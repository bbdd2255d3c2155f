import type { Finding } from '@boothwright/fit';
import { changesMean, tellChanges } from '../telling/changes.js';

/** The computed changes, each once, with what it is for. */
export function Changes({ findings }: { findings: readonly Finding[] }) {
  const changes = tellChanges(findings);
  if (changes.length === 0) return null;
  return (
    <section>
      <h2>What to change</h2>
      <p>{changesMean}</p>
      <ul class="changes">
        {changes.map(({ title, purpose }) => (
          <li>
            <strong>{title}</strong>
            <span class="of">{purpose}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}

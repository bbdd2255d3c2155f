import type { Finding } from '@boothwright/fit';
import { generalCautions, ownCautions } from '../telling/cautions.js';

/** What the report is not. */
export function Cautions({ findings }: { findings: readonly Finding[] }) {
  const own = ownCautions(findings);
  return (
    <section class="cautions">
      <h2>Cautions</h2>
      {generalCautions.map((caution) => (
        <p>{caution}</p>
      ))}
      {own.length > 0 && (
        <ul>
          {own.map((caution) => (
            <li>{caution}</li>
          ))}
        </ul>
      )}
    </section>
  );
}

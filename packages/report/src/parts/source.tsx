import type { Finding } from '@boothwright/fit';
import { strengthWarning } from '../strength.js';

/** A source's short name, with the word that warns of a weak one. */
export function SourceName({ finding: { source, strength } }: { finding: Finding }) {
  const warning = strengthWarning(strength);
  return (
    <>
      {source}
      {warning && <span class="weak"> ({warning})</span>}
    </>
  );
}

import type { Finding, Strength } from '@boothwright/fit';

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

/** The warning that a figure's strength asks for; nothing for figures read in good sources. */
export function strengthWarning(strength: Strength): string | undefined {
  return strength === 'strong' || strength === 'medium' ? undefined : strength;
}

import type { Finding } from '@boothwright/fit';

/** What the report is not. */
export const generalCautions: readonly string[] = [
  'This is a planning aid. It checks figures on paper, not the built booth. Your local building or fire official, and licensed professionals, decide. A width that is not below a published figure may still be refused.',
  'The body figures describe soldiers of working age. For a general public, widths, depths and weight run low. Try the booth with the people who will use it before anything is cut or bought.',
];

/** The findings' own cautions, each sentence once: many say the same in the end. */
export function ownCautions(findings: readonly Finding[]): readonly string[] {
  const said = new Set<string>();
  return findings.flatMap(({ caution }) => {
    const fresh = (caution?.split(/(?<=\.) /) ?? []).filter((sentence) => !said.has(sentence));
    for (const sentence of fresh) said.add(sentence);
    return fresh.length > 0 ? [fresh.join(' ')] : [];
  });
}

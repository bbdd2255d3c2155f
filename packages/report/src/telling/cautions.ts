import type { Finding } from '@boothwright/fit';

/** What the report is not. */
export const generalCautions: readonly string[] = [
  'This is a planning aid. It checks figures on paper, not the built booth. Your local building or fire official, and licensed professionals, decide. A width that is not below a published figure may still be refused.',
  'The body figures describe soldiers of working age. For a general public, widths, depths and weight run low. Try the booth with the people who will use it before anything is cut or bought.',
];

/** The findings' own cautions, each once. */
export function ownCautions(findings: readonly Finding[]): readonly string[] {
  return [...new Set(findings.flatMap(({ caution }) => caution ?? []))];
}

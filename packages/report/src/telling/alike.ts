import type { Finding } from '@boothwright/fit';

/** Findings of one check and thing that rest on one source, in their order, each group at the place of its first. */
export function alike(findings: readonly Finding[]): readonly (readonly Finding[])[] {
  const groups = new Map<string, Finding[]>();
  for (const finding of findings) {
    const { check, subject, source } = finding;
    const key = JSON.stringify([check, subject.kind, subject.name, source]);
    groups.set(key, [...(groups.get(key) ?? []), finding]);
  }
  return [...groups.values()];
}

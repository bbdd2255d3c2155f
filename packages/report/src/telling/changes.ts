import type { Finding, Remedy } from '@boothwright/fit';
import { titleOf } from '../titles.js';
import { bySeverity, capital, personOf, subjectOf } from '../words.js';
import { alike } from './alike.js';

/** A computed change, and what it is for. */
export interface ChangeTold {
  readonly title: string;
  /** 'Text size (monitor Cues: Tobias, sitting; Noor, standing)'. */
  readonly purpose: string;
  /** Whether it was seen to make no seat or stand finding worse. */
  readonly safe: boolean;
}

export const changesMean =
  'Choose; not all are needed. After a change, make the report again: one change may undo another.';

/** The computed changes, each once, worst findings first. */
export function tellChanges(findings: readonly Finding[]): readonly ChangeTold[] {
  return changesOf(findings).map(({ remedy, cures }) => ({
    title: remedy.title,
    purpose: capital(alike(cures).map(describe).join('; ')),
    safe: remedy.safe,
  }));
}

interface Change {
  readonly remedy: Remedy;
  readonly cures: Finding[];
}

function changesOf(findings: readonly Finding[]): readonly Change[] {
  const changes = new Map<string, Change>();
  const open = findings
    .filter(({ verdict, accepted }) => verdict !== 'pass' && accepted === undefined)
    .sort(bySeverity);
  for (const finding of open) {
    for (const remedy of finding.remedies) {
      const key = keyOf(remedy, finding);
      const change = changes.get(key);
      if (change) change.cures.push(finding);
      else changes.set(key, { remedy, cures: [finding] });
    }
  }
  return [...changes.values()];
}

/** The same words about another piece are another change. */
function keyOf({ title, changes }: Remedy, { subject }: Finding): string {
  return JSON.stringify([title, changes.length > 0 ? changes : subject]);
}

function describe(findings: readonly Finding[]): string {
  const [first] = findings;
  const people = findings.map(personOf).filter(Boolean).join('; ');
  return `${titleOf(first!.check).toLowerCase()} (${[subjectOf(first!), people].filter(Boolean).join(': ')})`;
}

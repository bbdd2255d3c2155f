import type { Finding, Remedy } from '@boothwright/fit';
import { titleOf } from '../titles.js';
import { bySeverity, personOf, subjectOf } from '../words.js';

/** A computed change, and what it is for. */
export interface ChangeTold {
  readonly title: string;
  readonly purpose: string;
}

export const changesMean =
  'Choose; not all are needed. After a change, make the report again: one change may undo another.';

/** The computed changes, each once, worst findings first. */
export function tellChanges(findings: readonly Finding[]): readonly ChangeTold[] {
  return changesOf(findings).map(({ remedy, cures }) => ({
    title: remedy.title,
    purpose: `For ${cures.map(describe).join('; ')}.${remedy.safe ? '' : ' It may make another result worse.'}`,
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

function describe(finding: Finding): string {
  return `${titleOf(finding.check).toLowerCase()} (${[subjectOf(finding), personOf(finding)].filter(Boolean).join(', ')})`;
}

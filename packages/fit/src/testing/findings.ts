import type { Finding } from '../assessment.js';
import { findingsOfEach } from '../assess/assess.js';
import type { Booth } from '../booth.js';
import { dimensionNames, type DimensionName } from '../bodies/dimensions.js';
import { reference } from '../bodies/reference.js';

/** The findings of one check, asking on its own for what it lacks. */
export function findingsOf(booth: Booth, check: string): readonly Finding[] {
  return findingsOfEach(booth).filter((finding) => finding.check === check);
}

/** The only finding of one check; an error if there is another, or none. */
export function findingOf(booth: Booth, check: string): Finding {
  const findings = findingsOf(booth, check);
  if (findings.length !== 1) throw new Error(`${findings.length} findings of ${check}, 1 expected`);
  return findings[0]!;
}

/** A body of which all is known: the survey's mean woman, with some dimensions of one's own. */
export function wholeBody(own: Partial<Record<DimensionName, number>>): Record<DimensionName, number> {
  const mean = (name: DimensionName) => reference.female.dimensions[name].mean;
  return Object.fromEntries(dimensionNames.map((name) => [name, own[name] ?? mean(name)])) as Record<
    DimensionName,
    number
  >;
}

import type { Assessment, Finding, Posture, Served } from '@boothwright/fit';
import { matrixFindings } from '../arrange.js';

/** A person at a workstation in one posture: a column of the matrix of who passes what. */
export interface Column {
  readonly station: string;
  readonly who: string;
  readonly posture?: Posture;
  /** Everything at once, for this person. */
  readonly served?: Served;
  /** What is said of the person there, and of the place itself. */
  readonly findings: readonly Finding[];
}

/** By workstation: the people of the joint event, then those whom only single findings name. */
export function columnsOf(assessment: Assessment): readonly Column[] {
  return assessment.booth.workstations.flatMap(({ name }) => {
    const served = assessment.workstations.find((station) => station.name === name)?.served ?? [];
    const findings = matrixFindings(assessment, name);
    const people: Pick<Column, 'who' | 'posture' | 'served'>[] = served.map((one) => ({
      who: one.who,
      posture: one.posture,
      served: one,
    }));
    for (const finding of findings) {
      const { operator, posture } = finding;
      if (operator === undefined || people.some((person) => concerns(finding, person))) continue;
      people.push({ who: operator, ...(posture && { posture }) });
    }
    return people.map((person) => ({
      station: name,
      ...person,
      findings: findings.filter((finding) => finding.operator === undefined || concerns(finding, person)),
    }));
  });
}

function concerns({ operator, posture }: Finding, person: Pick<Column, 'who' | 'posture'>): boolean {
  return operator === person.who && (posture === undefined || posture === person.posture);
}

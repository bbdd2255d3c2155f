import type { Assessment, Finding, Remedy } from '@boothwright/fit';
import type { Reading } from '../reading.js';
import { changeObject, inUnit, measuresOf, printed, problemObject, rangeObject, rounded } from './values.js';

/** The version of the object's form: `schema/assessment-1.schema.json`. A field may be added; none changes its meaning. */
const SCHEMA = 'boothwright-assessment-1';

/** One object for one file, an array for several. Of a file not fully understood, what could be read is judged. */
export function formatJson(readings: readonly Reading[]): string {
  return printed(readings.map(toObject));
}

function toObject({ file, problems, understood, assessment }: Reading) {
  return {
    schema: SCHEMA,
    file,
    understood,
    booth: assessment?.booth.name ?? null,
    limits: assessment?.booth.limits ?? null,
    findings: assessment?.findings.map(findingObject) ?? [],
    workstations: assessment?.workstations.map(workstationObject) ?? [],
    walkways: assessment?.walkways.map(walkwayObject) ?? [],
    problems: problems.map(problemObject),
  };
}

function findingObject(finding: Finding) {
  const { missing } = finding;
  return {
    check: finding.check,
    subject: finding.subject.name,
    subjectKind: finding.subject.kind,
    operator: finding.operator ?? null,
    posture: finding.posture ?? null,
    verdict: finding.verdict,
    ...measuresOf(finding),
    message: finding.message,
    terms: finding.terms ?? null,
    source: finding.source,
    strength: finding.strength,
    caution: finding.caution ?? null,
    range: rangeObject(finding.origin),
    remedies: finding.remedies.map(remedyObject),
    missing: missing ? { property: missing.property, of: missing.of, example: missing.example } : null,
    blocks: finding.blocks ?? [],
    assumptions: finding.assumptions,
    defaults: finding.defaults,
    accepted: finding.accepted ?? null,
  };
}

function remedyObject({ title, changes, safe }: Remedy) {
  return { title, changes: changes.map(changeObject), safe };
}

function workstationObject({ name, served }: Assessment['workstations'][number]) {
  return {
    name,
    served: served.map(({ who, posture, share, shareAtLimit, cover, verdict }) => ({
      who,
      posture,
      share: rounded(share, 4),
      shareAtLimit: rounded(shareAtLimit, 4),
      cover: rounded(cover, 4),
      verdict,
    })),
  };
}

function walkwayObject({ name, clear }: Assessment['walkways'][number]) {
  return { name, clear: inUnit(clear, 'mm') };
}

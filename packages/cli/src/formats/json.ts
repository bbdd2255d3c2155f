import type { Assessment, Finding, MeasureUnit, Origin, Remedy } from '@boothwright/fit';
import { placeOf } from '../place.js';
import type { Problem, Reading } from '../reading.js';

/** The version of the object's form: `schema/assessment-1.schema.json`. A field may be added; none changes its meaning. */
const SCHEMA = 'boothwright-assessment-1';

/** One object for one file, an array for several. What is absent is null, so that every field is always there. */
export function formatJson(readings: readonly Reading[]): string {
  const objects = readings.map(toObject);
  return `${JSON.stringify(objects.length === 1 ? objects[0] : objects, null, 2)}\n`;
}

function toObject({ file, problems, assessment }: Reading) {
  return {
    schema: SCHEMA,
    file,
    booth: assessment?.booth.name ?? null,
    limits: assessment?.booth.limits ?? null,
    findings: assessment?.findings.map(findingObject) ?? [],
    workstations: assessment?.workstations.map(workstationObject) ?? [],
    walkways: assessment?.walkways.map(walkwayObject) ?? [],
    problems: problems.map(problemObject),
  };
}

function findingObject(finding: Finding) {
  const { unit, missing } = finding;
  return {
    check: finding.check,
    subject: finding.subject.name,
    subjectKind: finding.subject.kind,
    operator: finding.operator ?? null,
    posture: finding.posture ?? null,
    verdict: finding.verdict,
    measured: inUnit(finding.measured, unit),
    limit: inUnit(finding.limit, unit),
    margin: inUnit(finding.margin, unit),
    unit: unit ?? null,
    share: rounded(finding.share, 4),
    shareAtLimit: rounded(finding.shareAtLimit, 4),
    message: finding.message,
    terms: finding.terms ?? null,
    source: finding.source,
    strength: finding.strength,
    caution: finding.caution ?? null,
    range: rangeObject(finding.origin),
    remedies: finding.remedies.map(remedyObject),
    missing: missing ? { property: missing.property, of: missing.of, example: missing.example } : null,
    assumptions: finding.assumptions,
    accepted: finding.accepted ?? null,
  };
}

function remedyObject({ title, changes, safe }: Remedy) {
  return { title, changes: changes.map(({ origin, text }) => ({ range: rangeObject(origin), text })), safe };
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

function problemObject({ severity, message, code, origin }: Problem) {
  return { severity, message, code: code ?? null, range: rangeObject(origin) };
}

function rangeObject(origin: Origin | undefined) {
  return origin ? placeOf(origin) : null;
}

const digits: Record<MeasureUnit, number> = { mm: 1, deg: 1, arcmin: 1, kg: 1, count: 1, ratio: 4 };

function inUnit(value: number | undefined, unit: MeasureUnit | undefined): number | null {
  return rounded(value, unit ? digits[unit] : 4);
}

/** Null for what is absent, and for what is no number: JSON has no other word for it. */
function rounded(value: number | undefined, decimals: number): number | null {
  if (value === undefined || !Number.isFinite(value)) return null;
  return Number(value.toFixed(decimals)) + 0;
}

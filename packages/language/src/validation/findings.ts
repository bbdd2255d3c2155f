import { say } from '@boothwright/fit';
import type { LangiumDocument } from 'langium';
import type { Assessment, Booth, Finding, Missing, Origin, Remedy } from '@boothwright/fit';
import type { Diagnostic, DiagnosticSeverity } from 'vscode-languageserver-types';
import { isDocument } from '../generated/ast.js';
import { partOf } from '../syntax/tree.js';
import { type Issue, rangeOf } from './issue.js';

/** What a diagnostic of a finding carries for quick fixes. */
export interface FindingData {
  readonly check: string;
  readonly subject: string;
  readonly remedies: readonly Remedy[];
  readonly missing?: Missing;
}

/** A finding as the text shows it. */
export interface ShownFinding {
  /** What it is about: its check, its thing, its person and their posture. */
  readonly topic: string;
  readonly diagnostic: Diagnostic;
}

export function topicOf({ check, subject, operator, posture }: Finding): string {
  return JSON.stringify([check, subject.kind, subject.name, operator, posture]);
}

/**
 * The findings of an assessment that a person should see in the text of `document`. A finding about something that an imported file
 * declares is shown where this file uses it. If the text has faults, what is missing may only be faulty, and is not
 * held against it.
 */
export function diagnosticsOf(
  { findings, booth }: Assessment,
  document: LangiumDocument,
  hasFaults: boolean,
  source: string | undefined,
): ShownFinding[] {
  return findings
    .filter(({ verdict, accepted }) => verdict !== 'pass' && accepted === undefined)
    .filter(({ verdict }) => verdict !== 'unknown' || !hasFaults)
    .map((finding) => ({ topic: topicOf(finding), diagnostic: diagnosticOf(finding, booth, document, source) }));
}

/** A finding that points into the file itself rests on nothing else: as long as it is the same, so is its diagnostic. */
function diagnosticOf(
  finding: Finding,
  booth: Booth,
  document: LangiumDocument,
  source: string | undefined,
): Diagnostic {
  const known = diagnostics.get(finding);
  if (known) return known;
  const diagnostic = toDiagnostic(finding, booth, document, source);
  if (finding.origin?.uri === document.uri.toString()) diagnostics.set(finding, diagnostic);
  return diagnostic;
}

const diagnostics = new WeakMap<Finding, Diagnostic>();

/** What the file accepts though its check has passed the thing: it would hide what the check may find later. */
export function idleAcceptances({ findings, booth }: Assessment, uri: string): Issue[] {
  return booth.accepted.flatMap(({ check, subject, origin }): Issue[] => {
    const meant = findings.filter((one) => one.check === check && (!subject || one.subject.name === subject));
    const isIdle = meant.length > 0 && meant.every(({ verdict }) => verdict === 'pass');
    if (!isIdle || origin.uri !== uri) return [];
    const message = subject
      ? say`\`${check}\` passes ${subject}: nothing is left to accept. Remove this, else it would hide what the check may find later.`
      : say`\`${check}\` passes everything: nothing is left to accept. Remove this, else it would hide what the check may find later.`;
    return [{ code: 'unused-acceptance', message, range: origin, isIdle: true, data: { text: check } }];
  });
}

/** `overlap` is a mistake in the plan; any other failed check is advice that a person may overrule. */
export function severityOf({ verdict, check }: Pick<Finding, 'verdict' | 'check'>): DiagnosticSeverity {
  if (verdict === 'fail') return check === 'overlap' ? 1 : 2;
  return verdict === 'marginal' ? 3 : 4;
}

function toDiagnostic(
  finding: Finding,
  booth: Booth,
  document: LangiumDocument,
  source: string | undefined,
): Diagnostic {
  const uri = document.uri.toString();
  const place = placeOf(finding, booth, uri);
  const elsewhere = finding.origin && finding.origin.uri !== uri ? [finding.origin] : [];
  const { check, subject, remedies, missing } = finding;
  const data: FindingData = { check, subject: subject.name, remedies, missing };
  return {
    range: place ? { start: place.start, end: place.end } : startOf(document),
    severity: severityOf(finding),
    code: finding.check,
    source,
    message: finding.caution ? `${finding.message} ${finding.caution}` : finding.message,
    relatedInformation: [
      ...elsewhere.map((origin) => ({ location: locationOf(origin), message: say`It is said here` })),
      ...finding.related.map(({ origin, message }) => ({ location: locationOf(origin), message })),
    ],
    data,
  };
}

/** The smallest text of this file to point at. */
function placeOf({ origin, related, subject, operator }: Finding, booth: Booth, uri: string): Origin | undefined {
  const isHere = (place: Origin | undefined): place is Origin => place?.uri === uri;
  if (isHere(origin)) return origin;
  const near = related.map((each) => each.origin).find(isHere);
  if (near) return near;
  const declared = [
    ...booth.workstations,
    ...booth.walkways,
    ...booth.skirts,
    ...booth.desks,
    ...booth.racks,
    ...booth.cables,
  ];
  const own = declared.find(({ name, origin: place }) => name === subject.name && isHere(place));
  if (own) return own.origin;
  const uses = booth.workstations.flatMap(({ desk, seat, people, screens }) => [
    desk,
    seat,
    ...people,
    ...screens.map(({ monitor }) => monitor),
  ]);
  const placed = booth.placements.flatMap(({ pieces }) => pieces);
  const wanted = [subject.name, operator];
  return (
    [...uses, ...placed].find((use) => use && wanted.includes(use.name) && isHere(use.origin))?.origin ?? booth.origin
  );
}

/** The first word of the text: its first import, or its beginning. */
function startOf(document: LangiumDocument): Diagnostic['range'] {
  const root = document.parseResult.value;
  const first = isDocument(root) ? (root.imports[0] ?? root.blocks[0]) : undefined;
  return rangeOf(first && partOf(first, first.$type === 'Import' ? 'path' : 'kind'));
}

function locationOf({ uri, start, end }: Origin) {
  return { uri, range: { start, end } };
}

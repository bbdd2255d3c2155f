import { createHash } from 'node:crypto';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { checks, type Finding, type Origin, type Remedy, type Verdict } from '@boothwright/fit';
import type { ArtifactLocation, Fix, Location, Log, Notification, Region, Result } from 'sarif';
import { version } from '../../package.json';
import { placeOf, type Place } from '../place.js';
import type { Problem, Reading } from '../reading.js';
import type { Status } from '../status.js';
import { ruleOf, ruleOfCode } from './sarif-rules.js';
import { measuresOf } from './values.js';

export interface SarifOptions {
  /** Write out what passes too. */
  readonly passes: boolean;
  /** The status that the command ends with. */
  readonly status: Status;
}

/** The folder that the command ran in: paths are from there, so that the log says nothing of the machine. */
const ROOT = '%SRCROOT%';

/**
 * Findings as SARIF 2.1.0, one run for all files. Fails are errors, marginal findings warnings, and what cannot be said is a note. Faults of the
 * text are errors or warnings under their own codes; a file that cannot be read is a notification of the run.
 */
export function formatSarif(readings: readonly Reading[], { passes, status }: SarifOptions): string {
  const codes = [...new Set(readings.flatMap(({ problems }) => problems.flatMap(({ code }) => code ?? [])))].sort();
  const rules = [...checks.map(ruleOf), ...codes.map(ruleOfCode)];
  const indexOf = new Map(rules.map(({ id }, index) => [id, index]));
  const results = readings.flatMap(({ file, problems, assessment }) => [
    ...problems.filter(({ code }) => code !== undefined).map((problem) => resultOfProblem(file, problem)),
    ...(assessment?.findings ?? [])
      .filter(({ verdict }) => passes || verdict !== 'pass')
      .map((finding) => resultOf(file, finding)),
  ]);
  const notifications = readings.flatMap(({ file, problems }) =>
    problems.filter(({ code }) => code === undefined).map((problem) => notificationOf(file, problem)),
  );
  const log: Log = {
    version: '2.1.0',
    $schema: 'https://json.schemastore.org/sarif-2.1.0.json',
    runs: [
      {
        tool: { driver: { name: 'Boothwright', version, semanticVersion: version, language: 'en', rules } },
        invocations: [
          {
            executionSuccessful: readings.every(({ understood }) => understood),
            exitCode: status,
            ...(notifications.length > 0 && { toolExecutionNotifications: notifications }),
          },
        ],
        originalUriBaseIds: { [ROOT]: { description: { text: 'The folder that the command ran in.' } } },
        columnKind: 'utf16CodeUnits',
        results: fingerprinted(results).map((result) => ({ ...result, ruleIndex: indexOf.get(result.ruleId!) })),
      },
    ],
  };
  return `${JSON.stringify(log, null, 2)}\n`;
}

const levels: Record<Verdict, Result['level']> = { fail: 'error', marginal: 'warning', unknown: 'note', pass: 'none' };

function resultOf(file: string, finding: Finding): Result {
  const { check, verdict, message, missing, origin, related, accepted } = finding;
  const addition = missing && !message.includes(missing.example) ? ` Add to ${missing.of}: ${missing.example}.` : '';
  const fixes = finding.remedies.filter(({ changes }) => changes.length > 0).map(fixOf);
  return {
    ruleId: check,
    kind: verdict === 'pass' ? 'pass' : 'fail',
    level: levels[verdict],
    message: { text: literal(message + addition) },
    locations: [locationOf(file, origin)],
    ...(related.length > 0 && {
      relatedLocations: related.map((one, index) => ({
        id: index + 1,
        ...locationOf(file, one.origin),
        message: { text: literal(one.message) },
      })),
    }),
    ...(accepted !== undefined && {
      suppressions: [{ kind: 'inSource' as const, status: 'accepted' as const, justification: accepted }],
    }),
    ...(fixes.length > 0 && { fixes }),
    properties: {
      verdict,
      subject: `${finding.subject.kind} ${finding.subject.name}`,
      operator: finding.operator ?? null,
      posture: finding.posture ?? null,
      ...measuresOf(finding),
      source: finding.source,
      strength: finding.strength,
    },
  };
}

function resultOfProblem(file: string, { code, severity, message, origin }: Problem): Result {
  return {
    ruleId: code!,
    kind: 'fail',
    level: severity,
    message: { text: literal(message) },
    locations: [locationOf(file, origin)],
  };
}

function notificationOf(file: string, { severity, message }: Problem): Notification {
  return { level: severity, message: { text: literal(message) }, locations: [locationOf(file, undefined)] };
}

function fixOf({ title, changes }: Remedy): Fix {
  const files = new Map<string, Remedy['changes'][number][]>();
  for (const change of changes) files.set(change.origin.uri, [...(files.get(change.origin.uri) ?? []), change]);
  return {
    description: { text: literal(title) },
    artifactChanges: [...files.values()].map((own) => ({
      artifactLocation: artifactAt(placeOf(own[0]!.origin).file),
      replacements: own.map(({ origin, text }) => ({
        deletedRegion: regionOf(placeOf(origin)),
        insertedContent: { text },
      })),
    })),
  };
}

/** What a finding is about, whatever the line it stands on: the same finding keeps it when the file is edited around it. */
function fingerprinted(results: readonly Result[]): Result[] {
  const seen = new Map<string, number>();
  return results.map((result) => {
    const { subject, operator, posture } = (result.properties ?? {}) as Record<string, unknown>;
    const about = [
      result.ruleId,
      result.locations![0]!.physicalLocation!.artifactLocation!.uri,
      subject,
      operator,
      posture,
    ];
    const key = JSON.stringify(subject === undefined ? [...about, result.message.text] : about);
    const times = (seen.get(key) ?? 0) + 1;
    seen.set(key, times);
    const hash = createHash('sha256').update(key).digest('hex').slice(0, 32);
    return { ...result, partialFingerprints: { 'aboutHash/v1': `${hash}:${times}` } };
  });
}

function locationOf(file: string, origin: Origin | undefined): Location {
  if (!origin) return { physicalLocation: { artifactLocation: artifactAt(file) } };
  const place = placeOf(origin);
  return { physicalLocation: { artifactLocation: artifactAt(place.file), region: regionOf(place) } };
}

function regionOf({ start, end }: Place): Region {
  return { startLine: start.line, startColumn: start.column, endLine: end.line, endColumn: end.column };
}

/** A path below the folder is relative to it; anything else needs its whole address. */
function artifactAt(file: string): ArtifactLocation {
  if (/^[a-z][a-z\d+.-]*:\/\//i.test(file)) return { uri: file };
  const relative = path.relative(process.cwd(), path.resolve(file));
  const isBelow = !path.isAbsolute(relative) && relative.split(path.sep)[0] !== '..';
  if (!isBelow) return { uri: pathToFileURL(file).href };
  return { uri: relative.split(path.sep).map(encodeURIComponent).join('/'), uriBaseId: ROOT };
}

/** Brackets that would read as a link, set as they are. */
function literal(text: string): string {
  return /\[[^\]]*\]\(/.test(text) ? text.replace(/[\\[\]]/g, '\\$&') : text;
}

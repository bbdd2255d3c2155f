import { stripVTControlCharacters } from 'node:util';
import type { Finding, Verdict } from '@boothwright/fit';
import picocolors from 'picocolors';
import { linkTo } from '../place.js';
import type { Reading } from '../reading.js';
import { caution, plain, wrapper } from './prose.js';

export interface TextOptions {
  readonly width: number;
  readonly colours: boolean;
  /** Write out what passes too. */
  readonly passes: boolean;
}

const words: Record<Verdict, string> = { fail: 'FAIL', marginal: 'MARGINAL', unknown: 'CANNOT SAY', pass: 'PASS' };
const order: readonly Verdict[] = ['fail', 'marginal', 'unknown', 'pass'];

/** The findings of each file for people, worst first, then one line that sums up. */
export function formatText(readings: readonly Reading[], options: TextOptions): string {
  const write = writer(options);
  const judged = readings.flatMap(({ file, understood, assessment }) =>
    assessment ? [{ file, understood, assessment }] : [],
  );
  const sections = judged.flatMap(({ file, understood, assessment: { booth, findings } }) => {
    const open = findings.filter(({ accepted }) => accepted === undefined);
    const shown = order
      .filter((verdict) => verdict !== 'pass' || options.passes)
      .flatMap((verdict) => open.filter((finding) => finding.verdict === verdict));
    const accepted = findings.filter((finding) => finding.accepted !== undefined);
    return [
      write.heading(booth.name, file),
      ...(understood ? [] : [write.inPart(file)]),
      ...shown.map((finding) => write.finding(finding, file)),
      ...accepted.map((finding) => write.accepted(finding, file)),
    ];
  });
  const empty = readings
    .filter((reading) => reading.understood && !reading.assessment)
    .map(({ file }) => write.noBooth(file));
  if (judged.length === 0) return empty.map((line) => `${line}\n`).join('');
  const all = judged.flatMap(({ assessment }) => assessment.findings);
  const closing = [write.summary(all), ...(all.some((finding) => finding.caution) ? [write.caution()] : [])];
  return `${[...sections, ...empty, ...closing].join('\n\n')}\n`;
}

/** What the language or the file system says, one line each: `file:line:column: error: …`. */
export function formatProblems(readings: readonly Reading[]): string {
  return readings
    .flatMap(({ file, problems }) =>
      problems.map(({ severity, message, origin }) => `${origin ? linkTo(origin) : file}: ${severity}: ${message}`),
    )
    .map((line) => `${plain(line)}\n`)
    .join('');
}

function writer({ width, colours }: TextOptions) {
  const paint = picocolors.createColors(colours);
  const colourOf: Record<Verdict, (text: string) => string> = {
    fail: paint.red,
    marginal: paint.yellow,
    unknown: paint.blue,
    pass: paint.green,
  };
  const wrap = wrapper(width);

  /** One line, or two if it would be too long. */
  const head = (finding: Finding, file: string, verdict: string) => {
    const [check, subject] = [plain(finding.check), plain(subjectOf(finding))];
    const where = `${whereOf(finding, file)}  ${verdict}  ${paint.dim(check)}`;
    const length = stripVTControlCharacters(where).length + ', '.length + subject.length;
    return length <= width ? `${where}${paint.dim(`, ${subject}`)}` : `${where}\n${paint.dim(wrap(subject))}`;
  };

  return {
    heading: (name: string, file: string) => `${paint.bold(plain(name))} ${paint.dim(plain(file))}`,

    inPart: (file: string) =>
      wrap(
        `${file} was not fully understood: what has errors is left out, and what follows may change once they are corrected.`,
        '',
      ),

    noBooth: (file: string) => wrap(`${file} holds no booth, only pieces for other files: nothing to check.`, ''),

    finding: (finding: Finding, file: string) => {
      const { verdict, message, terms, defaults } = finding;
      const advice = adviceOf(finding);
      const lines = [
        [head(finding, file, paint.bold(colourOf[verdict](words[verdict])))],
        [wrap(message)],
        [terms && paint.dim(wrap(terms))],
        [verdict !== 'pass' && defaults.length > 0 && paint.dim(wrap(`By default: ${defaults.join('; ')}.`))],
        ...advice.map((line) => [wrap(line, '  → ', '    ')]),
        [paint.dim(wrap(`Source: ${sourceOf(finding)}`))],
      ];
      return lines
        .map((parts) => parts.filter(Boolean).join('  '))
        .filter(Boolean)
        .join('\n');
    },

    accepted: (finding: Finding, file: string) =>
      [
        head(finding, file, paint.dim(`${words[finding.verdict]}, accepted`)),
        wrap(`Because: ${finding.accepted ?? ''}`),
      ].join('\n'),

    summary: (findings: readonly Finding[]) => {
      const open = findings.filter(({ accepted }) => accepted === undefined);
      const of = (verdict: Verdict) => open.filter((finding) => finding.verdict === verdict).length;
      const accepted = findings.length - open.length;
      const text = `${of('fail')} failed, ${of('marginal')} marginal, ${of('unknown')} cannot be said, ${of('pass')} passed`;
      return paint.bold(wrap(`${text}${accepted > 0 ? `, ${accepted} accepted` : ''}.`, ''));
    },

    caution: () => paint.dim(wrap(caution, '')),
  };
}

/** What to do. Most messages end with it; what they do not say themselves is said on lines of its own. */
function adviceOf({ verdict, message, missing, remedies }: Finding): readonly string[] {
  if (verdict === 'pass') return [];
  const titles = remedies.map(({ title }) => title).filter((title) => !message.includes(title));
  if (!missing || message.includes(missing.example)) return titles;
  return [`Add to ${missing.of}: ${missing.example}`, ...titles];
}

/** Where to look: the text that the finding points at, or the file. */
function whereOf({ origin }: Finding, file: string): string {
  return plain(origin ? linkTo(origin) : file);
}

function subjectOf({ subject, operator, posture }: Finding): string {
  const who = operator && `${operator}${posture ? ` ${posture === 'sit' ? 'sitting' : 'standing'}` : ''}`;
  return [`${subject.kind.replaceAll('-', ' ')} ${subject.name}`, who].filter(Boolean).join(', ');
}

function sourceOf({ source, strength }: Finding): string {
  return strength === 'strong' || strength === 'medium' ? source : `${source} (${strength})`;
}

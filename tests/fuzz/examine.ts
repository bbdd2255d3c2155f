import type { LangiumDocument } from 'langium';
import type { Range, TextEdit } from 'vscode-languageserver-types';
import { advise, type Assessment } from '@boothwright/fit';
import type { Analysis, FileDiagnostic } from '@boothwright/language';
import { renderMarkdown, renderReport, type ReportOptions } from '@boothwright/report';
import { formatAdvice } from '../../packages/cli/src/formats/advice-text.js';
import { formatJson } from '../../packages/cli/src/formats/json.js';
import { formatSarif } from '../../packages/cli/src/formats/sarif.js';
import { formatProblems, formatText } from '../../packages/cli/src/formats/text.js';
import { toProblem } from '../../packages/cli/src/reading.js';
import { piecesOf } from '../../packages/language/src/formatting/pieces.js';
import type { Case } from './cases.js';
import { applied, type Language } from './language.js';

/** A rule that holds for every text, and does not for this one. */
export class Broken extends Error {}

/** How much is asked of a text. `whole` adds advice, the report and all changes that are offered: far more work. */
export type Depth = 'quick' | 'whole';

/**
 * Takes one text the whole way, from its letters to every output.
 * @throws Broken, or whatever was thrown on the way, with `stage` before its message.
 */
export async function examine({ text, random }: Case, language: Language, depth: Depth): Promise<void> {
  let stage = 'open';
  const at = async <T>(name: string, run: () => T | Promise<T>): Promise<T> => {
    stage = name;
    return run();
  };
  try {
    const document = await at('open', () => language.open(text));
    const analysis = await at('analyse', () => language.analysis(document));
    await at('diagnostics', () => checkDiagnostics(document, analysis));
    if (analysis.assessment) await at('assessment', () => checkFigures(analysis.assessment));
    const offsets = random.times(1, 3, () => random.whole(0, text.length));
    for (const offset of offsets)
      for (const [name, ask] of language.at(document, document.textDocument.positionAt(offset)))
        await at(name, async () => checkAnswer(await ask(), document));
    for (const range of [
      wholeOf(document),
      {
        start: document.textDocument.positionAt(Math.min(...offsets)),
        end: document.textDocument.positionAt(Math.max(...offsets)),
      },
    ])
      for (const [name, ask] of language.over(document, range))
        await at(name, async () => checkAnswer(await ask(), document));
    await at('outputs', () => checkOutputs(text, analysis, depth === 'whole'));
    if (depth === 'whole') {
      await at('actions', async () => {
        for (const { edit, title } of [
          ...(await language.actions(document, wholeOf(document))),
          ...(await language.actions(document, wholeOf(document), ['source.fixAll'])),
        ]) {
          const edits = edit?.changes?.[document.uri.toString()];
          if (edits) checkEdits(edits, document, title);
        }
      });
      if (analysis.assessment) await at('reports', () => checkReports(text, analysis.assessment!));
    }
    await at('format', () => checkFormat(text, document, language));
  } catch (error) {
    if (error instanceof Error) error.message = `${stage}: ${error.message}`;
    throw error;
  }
}

function checkDiagnostics(document: LangiumDocument, { diagnostics }: Analysis): void {
  for (const { uri, start, end, code, message, related } of diagnostics) {
    if (code === 'checks-stopped') throw new Broken(message);
    if (uri === document.uri.toString()) checkRange({ start, end }, document, code);
    for (const said of [message, ...related.map((each) => each.message)])
      checkWords(said, document.textDocument.getText(), code);
  }
}

/** Every number of a computed thing is one, and no text has a hole in it. */
function checkFigures(value: unknown, path = ''): void {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new Broken(`${path} is ${value}`);
  if (typeof value !== 'object' || value === null) return;
  for (const [key, inner] of Object.entries(value)) checkFigures(inner, `${path}.${key}`);
}

function checkAnswer(answer: unknown, document: LangiumDocument): void {
  checkFigures(answer, 'answer');
  checkWords(JSON.stringify(answer) ?? '', document.textDocument.getText(), 'answer');
  forEachRange(answer, (range, isOwn) => isOwn && checkRange(range, document, 'answer'));
}

function forEachRange(value: unknown, visit: (range: Range, isOwn: boolean) => void, isOwn = true): void {
  if (typeof value !== 'object' || value === null) return;
  if ('start' in value && 'end' in value && typeof value.start === 'object') visit(value as Range, isOwn);
  for (const [key, inner] of Object.entries(value)) {
    const isHere = isOwn && !key.startsWith('target') && !/^file:.*furniture/.test(key) && !('uri' in value);
    forEachRange(inner, visit, isHere);
  }
}

function checkRange({ start, end }: Range, { textDocument }: LangiumDocument, what: string): void {
  for (const place of [start, end]) {
    const back = textDocument.positionAt(textDocument.offsetAt(place));
    if (back.line !== place.line || back.character !== place.character)
      throw new Broken(`${what} points at ${JSON.stringify(place)}, which the text does not have`);
  }
  if (textDocument.offsetAt(start) > textDocument.offsetAt(end)) throw new Broken(`${what} ends before it starts`);
}

const holes = /\b(?:NaN|Infinity|undefined)\b|\[object /;

/** No words that a program says when it has lost its figure; a text that holds them itself may be quoted. */
function checkWords(said: string, text: string, what: string): void {
  const hole = holes.exec(said);
  if (hole && !holes.test(text))
    throw new Broken(`${what} says ${hole[0]}: …${said.slice(Math.max(0, hole.index - 60), hole.index + 40)}…`);
}

function checkOutputs(text: string, { diagnostics, assessment }: Analysis, isWhole: boolean): void {
  const problems = diagnostics.filter(({ kind }) => kind === 'text').map(toProblem);
  const reading = {
    file: 'hall.booth',
    understood: problems.length === 0,
    problems,
    ...(assessment && { assessment }),
  };
  const outputs = {
    // Wrapping lines takes longer than all the rest, and so do the rules of SARIF, which are the same for every file.
    text: isWhole ? formatText([reading], { width: 80, colours: false, passes: true }) : '',
    problems: formatProblems([reading]),
    json: formatJson([reading]),
    sarif: isWhole ? formatSarif([reading], { passes: true, status: 0 }) : '{}',
  };
  for (const [name, output] of Object.entries(outputs)) checkWords(output, text, name);
  for (const json of [outputs.json, outputs.sarif]) JSON.parse(json);
}

function checkReports(text: string, assessment: Assessment): void {
  const advice = advise(assessment.booth);
  checkFigures(advice, 'advice');
  for (const names of ['full', 'letters'] as const) {
    const options: ReportOptions = { generatedBy: 'Boothwright 1', date: '4 May 2026', names, advice };
    const html = renderReport(assessment, options);
    checkWords(html, text, 'report');
    if (/<script|javascript:|\son\w+="/i.test(html)) throw new Broken('the report holds a script');
    checkWords(renderMarkdown(assessment, options), text, 'markdown');
  }
  checkWords(formatAdvice('hall.booth', assessment, advice, { width: 80, colours: false }), text, 'advice');
}

function checkEdits(edits: readonly TextEdit[], document: LangiumDocument, title: string): void {
  for (const { range } of edits) checkRange(range, document, title);
  // The library throws at edits that overlap.
  applied(document, edits);
}

/** Formatting moves white space alone, none of it in a text that does not parse, and a second time nothing. */
async function checkFormat(text: string, document: LangiumDocument, language: Language): Promise<void> {
  const { lexerErrors, parserErrors } = document.parseResult;
  const edits = language.format(document);
  checkEdits(edits, document, 'format');
  if (edits.length > 0 && lexerErrors.length + parserErrors.length > 0)
    throw new Broken('a text that does not parse was formatted');
  if (edits.length === 0) return;
  const once = applied(document, edits);
  if (imagesOf(once, language) !== imagesOf(text, language)) throw new Broken('formatting changed a word or a comment');
  const before = language.analysis(document);
  const again = await language.open(once);
  const second = language.format(again);
  if (second.length > 0) throw new Broken(`formatting twice is not formatting once: ${JSON.stringify(second[0])}`);
  const after = language.analysis(again);
  // A form feed goes with the white space, and what was not held against a faulty text is then said.
  const isMended = before.diagnostics.some(isHidden) && !after.diagnostics.some(isHidden);
  if (!isMended && saidOf(after) !== saidOf(before)) throw new Broken('formatting changed what is found');
}

function imagesOf(text: string, { services }: Language): string {
  return piecesOf(text, services.parser.Lexer)
    .map(({ image }) => image)
    .join('\u0000');
}

/** What is found, but for a form feed and the like between words: it is white space, which formatting sets anew. */
function isHidden({ code }: FileDiagnostic): boolean {
  return code === 'hidden-character';
}

function saidOf({ diagnostics }: Analysis): string {
  return diagnostics
    .filter((diagnostic) => !isHidden(diagnostic))
    .map(({ code, message }) => `${code} ${message}`)
    .join('\n');
}

function wholeOf({ textDocument }: LangiumDocument): Range {
  return { start: { line: 0, character: 0 }, end: textDocument.positionAt(textDocument.getText().length) };
}

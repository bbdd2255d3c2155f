import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import ts from 'typescript';
import { checks, dimensionWords, howToMeasure, keyFrom, profiles } from '@boothwright/fit';
import { kinds, markAdvice, vocabulary, withArticle } from '@boothwright/language';
import { faultHelp } from '@boothwright/language/fault-help';
import { pageWords } from '@boothwright/report';

const root = path.resolve(import.meta.dirname, '../..');

/** Every text that a person can read in the editor, as a translation knows it, and where it comes from. */
export function sentences(): Map<string, string> {
  const found = new Map<string, string>();
  for (const file of sourceFiles(path.join(root, 'packages')))
    for (const key of keysIn(file)) found.set(key, path.relative(root, file));
  for (const [text, where] of textsInData()) found.set(text, where);
  return found;
}

/** Names of sources: most are titles of documents and stay as they are; a translation may know the others. */
export function sourceNames(): Set<string> {
  return new Set([
    ...checks.flatMap(({ sources }) => sources.map(({ name }) => name)),
    ...textsUnder('source', profiles),
  ]);
}

export function placeholdersOf(sentence: string): string[] {
  return [...new Set(sentence.match(/\{\d+\}/g))].sort();
}

function* sourceFiles(folder: string): Generator<string> {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const full = path.join(folder, entry.name);
    if (entry.isDirectory() && !/^(node_modules|dist|generated|testing)$/.test(entry.name)) yield* sourceFiles(full);
    else if (/\.tsx?$/.test(entry.name) && !/\.(test|d)\.tsx?$/.test(entry.name)) yield full;
  }
}

/** What is tagged with `say`, or given to the editor's own `l10n.t`. */
function keysIn(file: string): string[] {
  const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true);
  const keys: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isTaggedTemplateExpression(node) && node.tag.getText() === 'say') keys.push(keyFrom(partsOf(node.template)));
    if (ts.isCallExpression(node) && node.expression.getText() === 'l10n.t') keys.push(literalOf(node.arguments[0]));
    ts.forEachChild(node, visit);
  };
  visit(source);
  return keys;
}

function partsOf(template: ts.TemplateLiteral): string[] {
  if (ts.isNoSubstitutionTemplateLiteral(template)) return [template.text];
  return [template.head.text, ...template.templateSpans.map(({ literal }) => literal.text)];
}

function literalOf(node: ts.Expression | undefined): string {
  if (node && ts.isStringLiteralLike(node)) return node.text;
  throw new Error(`\`l10n.t\` needs its sentence as a literal: ${node?.getText()}`);
}

function* textsInData(): Generator<[text: string, where: string]> {
  for (const { id, title, question, computes, limits, sources, caution, strength, unpublished } of checks) {
    for (const text of [title, question, computes, limits, caution ?? '', unpublished ?? '', strength])
      if (text) yield [text, id];
    for (const { says, read } of sources) for (const text of [says, read]) yield [text, id];
  }
  for (const text of [...Object.values(dimensionWords), ...Object.values(howToMeasure)]) yield [text, 'dimensions'];
  for (const note of textsUnder('note', profiles)) yield [note, 'limits'];
  for (const noun of Object.values(kinds)) for (const text of [noun, withArticle(noun)]) yield [text, 'kinds'];
  for (const text of Object.values(markAdvice)) yield [text, 'markAdvice'];
  for (const { kind, says, properties } of vocabulary) {
    yield [says, kind];
    for (const { key, says: meaning, shape } of properties) {
      yield [meaning, `${kind} ${key}`];
      const around = [
        ...('from' in shape ? (shape.from ?? []) : []),
        ...('directions' in shape ? (shape.directions ?? []) : []),
      ];
      for (const word of around) yield [word, `${kind} ${key}`];
    }
  }
  for (const [code, { title, means, instead }] of Object.entries(faultHelp))
    for (const text of [title, means, instead]) yield [text, code];
  for (const text of pageWords) yield [text, 'pages'];
}

function* textsUnder(wanted: string, value: unknown): Generator<string> {
  if (typeof value !== 'object' || value === null) return;
  for (const [key, inner] of Object.entries(value)) {
    if (key === wanted && typeof inner === 'string') yield inner;
    else yield* textsUnder(wanted, inner);
  }
}

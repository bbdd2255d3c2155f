import { type AstNode, AstUtils, type LangiumDocument } from 'langium';
import { say } from '@boothwright/fit';
import type { CodeAction, Diagnostic, Range, TextEdit } from 'vscode-languageserver-types';
import { isAccept, isLimit } from '../generated/ast.js';
import { wantedKinds } from '../references/scope.js';
import type { BoothServices } from '../services.js';
import { showOf } from '../reading/reader.js';
import { nodeAt } from '../syntax/tree.js';
import type { IssueCode, IssueData } from '../validation/issue.js';
import { kinds } from '../vocabulary/entries.js';
import { entryOf } from '../vocabulary/vocabulary.js';
import { editOf } from './edits.js';
import { declarationSnippet, plainText } from './snippets.js';

/** Changes that put a fault of the text right: what the fault suggests, and what can be said from the text around it. */
export function textFixes(
  diagnostic: Diagnostic,
  { text = '', suggestions = [] }: IssueData,
  document: LangiumDocument,
  services: BoothServices,
): CodeAction[] {
  const { range } = diagnostic;
  const code = diagnostic.code as IssueCode;
  const fix = (title: string, edit: TextEdit, isPreferred = false): CodeAction => ({
    title,
    kind: 'quickfix',
    diagnostics: [diagnostic],
    isPreferred,
    edit: editOf([{ uri: document.uri.toString(), ...edit }]),
  });
  const suggested = suggestions.map((suggestion, index) => {
    const isClear = index === 0 && (suggestions.length === 1 || code === 'curly-quotes');
    return fix(titleOf(code, text, suggestion), { range, newText: suggestion }, isClear);
  });
  const node = nodeAt(document, range.start);
  switch (code) {
    case 'unused-acceptance':
      return [fix(say`Remove the acceptance of ${text}`, { range: wholeLines(range, document), newText: '' }, true)];
    case 'missing-reason':
      return because(node, fix);
    case 'unknown-name':
      return [...suggested, ...declare(node, text, document, services, fix)];
    default:
      return suggested;
  }
}

type Fix = (title: string, edit: TextEdit, isPreferred?: boolean) => CodeAction;

function titleOf(code: IssueCode, text: string, suggestion: string): string {
  if (suggestion === '') return say`Remove ${text}`;
  if (code === 'curly-quotes') return say`Write it with straight quotes: ${suggestion}`;
  if (code === 'open-text') return say`Close the quote`;
  return code === 'no-unit' ? say`Write ${suggestion}` : say`Change to ${suggestion}`;
}

/** The word and the quotes for a reason; the reason itself is the person's. */
function because(node: AstNode | undefined, fix: Fix): CodeAction[] {
  const statement = node && AstUtils.getContainerOfType(node, (each) => isAccept(each) || isLimit(each));
  const end = statement?.$cstNode?.range.end;
  if (!end || statement.because) return [];
  return [fix(say`Add because "", for the reason`, { range: { start: end, end }, newText: ' because ""' })];
}

/** A whole thing of the wanted kind at the end of the file, to be filled in. */
function declare(
  node: AstNode | undefined,
  name: string,
  document: LangiumDocument,
  { parser }: BoothServices,
  fix: Fix,
): CodeAction[] {
  const [kind, ...others] = (node && wantedKinds(node)) ?? [];
  if (!kind || others.length > 0 || !/^[\p{L}_][\p{L}\p{M}\p{N}_-]*$/u.test(name)) return [];
  const writing = { lexer: parser.Lexer, show: showOf(document), names: () => [] };
  const example = plainText(declarationSnippet(entryOf(kind), writing));
  const newText = example.replace(/^(\S+) \S+/, `$1 ${name}`);
  const end = document.textDocument.positionAt(document.textDocument.getText().length);
  const separator = end.character === 0 ? '' : '\n';
  return [
    fix(say`Declare a ${kinds[kind]} called ${name}, to be filled in`, {
      range: { start: end, end },
      newText: `${separator}${newText}\n`,
    }),
  ];
}

/** The range with the rest of its line, if nothing else stands there. */
function wholeLines({ start, end }: Range, { textDocument }: LangiumDocument): Range {
  const lines = textDocument.getText().split('\n');
  const before = (lines[start.line] ?? '').slice(0, start.character);
  const after = (lines[end.line] ?? '').slice(end.character);
  if (before.trim() !== '' || after.trim() !== '') return { start, end };
  return { start: { line: start.line, character: 0 }, end: { line: end.line + 1, character: 0 } };
}

import { say } from '@boothwright/fit';
import type { AstNode, LangiumDocument } from 'langium';
import {
  isAccept,
  isBlock,
  isDocument,
  isImport,
  isLimit,
  isOdd,
  isPlacement,
  isProperty,
  isText,
} from '../generated/ast.js';
import type { Fault } from '../syntax/faults.js';
import { readText } from '../syntax/texts.js';
import { Remembered } from '../syntax/remembered.js';
import { partOf, topLevel } from '../syntax/tree.js';
import { type Issue, rangeOf, type Report } from './issue.js';

/** What the lexer and the parser could not read, and quotes that are not straight or not closed. */
export function checkSyntax(document: LangiumDocument, report: Report): void {
  const { lexerErrors, parserErrors, value } = document.parseResult;
  for (const error of lexerErrors as Fault[]) {
    const start = { line: (error.line ?? 1) - 1, character: (error.column ?? 1) - 1 };
    const range = { start, end: { ...start, character: start.character + error.length } };
    report({ code: error.code ?? 'syntax', message: error.message, range, data: error.data });
  }
  for (const { token, message } of parserErrors) {
    const text = document.textDocument;
    const known = Number.isFinite(token.startOffset);
    const [from, to] = known
      ? [token.startOffset, token.endOffset! + 1]
      : [text.getText().length, text.getText().length];
    report({ code: 'syntax', message, range: { start: text.positionAt(from), end: text.positionAt(to) } });
  }
  if (!isDocument(value)) return;
  for (const declaration of topLevel(document))
    for (const issue of textIssues.of(declaration, () => checkTexts(declaration))) report(issue);
}

const textIssues = new Remembered<readonly Issue[]>();

/** All texts between quotes. */
function checkTexts(declaration: AstNode): readonly Issue[] {
  const issues: Issue[] = [];
  const report = (issue: Issue) => void issues.push(issue);
  const nodes: AstNode[] = [declaration];
  while (nodes.length > 0) {
    const node = nodes.pop()!;
    if (isBlock(node) || isOdd(node)) checkText(node, 'title', report);
    else if (isImport(node)) checkText(node, 'path', report);
    else if (isAccept(node) || isLimit(node)) checkText(node, 'reason', report);
    else if (isText(node)) checkText(node, 'raw', report);
    if ('items' in node) nodes.push(...(node.items as AstNode[]));
    if (isProperty(node) || isOdd(node)) nodes.push(...node.values);
    if (isPlacement(node)) nodes.push(...node.settings);
  }
  return issues;
}

function checkText(node: AstNode, property: string, report: Report): void {
  const raw = (node as unknown as Record<string, string | undefined>)[property];
  if (raw === undefined) return;
  const { closed, curly, straight } = readText(raw);
  const range = rangeOf(partOf(node, property));
  const data = { text: raw, suggestions: [straight] };
  if (!closed) report({ code: 'open-text', message: say`This text lacks its closing quote.`, range, data });
  else if (curly)
    report({ code: 'curly-quotes', message: say`These are curly quotes: write ${straight}.`, range, data });
}

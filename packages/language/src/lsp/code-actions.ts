import { CstUtils, GrammarUtils, type LangiumDocument, type LangiumDocuments, URI } from 'langium';
import type { CodeActionProvider } from 'langium/lsp';
import type { Origin, Remedy } from '@boothwright/fit';
import type { CodeAction, Diagnostic, Range, TextEdit, WorkspaceEdit } from 'vscode-languageserver-types';
import type { CodeActionParams } from 'vscode-languageserver';
import type { BoothServices } from '../services.js';
import type { FindingData } from '../validation/findings.js';
import type { IssueCode, IssueData } from '../validation/issue.js';

/** Changes that would put a diagnostic right, all of them taken from what the diagnostic carries. */
export class BoothCodeActionProvider implements CodeActionProvider {
  private readonly documents: LangiumDocuments;

  constructor(services: BoothServices) {
    this.documents = services.shared.workspace.LangiumDocuments;
  }

  getCodeActions(document: LangiumDocument, { context }: Pick<CodeActionParams, 'context'>): CodeAction[] {
    if (context.only && !context.only.some((kind) => 'quickfix'.startsWith(kind))) return [];
    return context.diagnostics.flatMap((diagnostic) => this.actionsFor(diagnostic, document));
  }

  private actionsFor(diagnostic: Diagnostic, document: LangiumDocument): CodeAction[] {
    const data = diagnostic.data as IssueData | FindingData | undefined;
    if (!data) return [];
    if (!('check' in data)) return suggestions(diagnostic, data, document);
    const actions = data.remedies
      .filter(({ changes }) => changes.length > 0)
      .map((remedy) => ofRemedy(remedy, diagnostic));
    const addition = this.addition(data, diagnostic);
    return [...actions, ...(addition ? [addition] : []), acceptance(data, diagnostic, document)];
  }

  /** Puts the property that a check lacks into the block that lacks it. */
  private addition({ missing }: FindingData, diagnostic: Diagnostic): CodeAction | undefined {
    if (!missing?.origin) return undefined;
    const { property, of, example, origin } = missing;
    const place = this.insideBlock(origin);
    if (!place) return undefined;
    const newText = ` ${property} ${example} `;
    const edit = editOf([{ uri: origin.uri, range: { start: place, end: place }, newText }]);
    return { title: `Add \`${property} ${example}\` to ${of}`, kind: 'quickfix', diagnostics: [diagnostic], edit };
  }

  /** The place just after the opening brace of the block that is declared there. */
  private insideBlock({ uri, start }: Origin): Range['start'] | undefined {
    const document = this.documents.getDocument(URI.parse(uri));
    const root = document?.parseResult.value.$cstNode;
    const leaf = root && CstUtils.findLeafNodeAtOffset(root, document.textDocument.offsetAt(start));
    return GrammarUtils.findNodeForKeyword(leaf?.astNode.$cstNode, '{')?.range.end;
  }
}

function suggestions(
  diagnostic: Diagnostic,
  { text, suggestions = [] }: IssueData,
  document: LangiumDocument,
): CodeAction[] {
  const { range, code } = diagnostic;
  return suggestions.map((suggestion, index) => ({
    title: titleOf(code as IssueCode, text ?? '', suggestion),
    kind: 'quickfix',
    diagnostics: [diagnostic],
    isPreferred: index === 0 && (suggestions.length === 1 || code === 'curly-quotes'),
    edit: editOf([{ uri: document.uri.toString(), range, newText: suggestion }]),
  }));
}

function titleOf(code: IssueCode, text: string, suggestion: string): string {
  if (suggestion === '') return `Remove ${text}`;
  if (code === 'curly-quotes') return `Write it with straight quotes: ${suggestion}`;
  if (code === 'open-text') return 'Close the quote';
  return code === 'no-unit' ? `Write ${suggestion}` : `Change to ${suggestion}`;
}

function ofRemedy({ title, changes, safe }: Remedy, diagnostic: Diagnostic): CodeAction {
  const edits = changes.map(({ origin: { uri, start, end }, text }) => ({ uri, range: { start, end }, newText: text }));
  return { title, kind: 'quickfix', diagnostics: [diagnostic], isPreferred: safe, edit: editOf(edits) };
}

/** Tolerates a finding on purpose. The reason is left open: until it is written, the file says that it is missing. */
function acceptance({ check, subject }: FindingData, diagnostic: Diagnostic, document: LangiumDocument): CodeAction {
  const text = document.textDocument.getText();
  const end = document.textDocument.positionAt(text.length);
  const isName = /^[\p{L}_][\p{L}\p{M}\p{N}_-]*$/u.test(subject);
  const line = `accept ${check}${isName ? ` on ${subject}` : ''} because ""\n`;
  const newText = text === '' || text.endsWith('\n') ? line : `\n${line}`;
  const edit = editOf([{ uri: document.uri.toString(), range: { start: end, end }, newText }]);
  return {
    title: `Accept ${check}${isName ? ` of ${subject}` : ''}, with a reason`,
    kind: 'quickfix',
    diagnostics: [diagnostic],
    edit,
  };
}

function editOf(edits: readonly (TextEdit & { readonly uri: string })[]): WorkspaceEdit {
  const changes: Record<string, TextEdit[]> = {};
  for (const { uri, range, newText } of edits) (changes[uri] ??= []).push({ range, newText });
  return { changes };
}

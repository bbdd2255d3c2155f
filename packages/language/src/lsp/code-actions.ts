import { GrammarUtils, type LangiumDocument, type LangiumDocuments, URI } from 'langium';
import type { CodeActionProvider } from 'langium/lsp';
import { type Missing, type Remedy, say } from '@boothwright/fit';
import type { CodeAction, Diagnostic, Position, Range, TextEdit } from 'vscode-languageserver-types';
import type { CodeActionParams } from 'vscode-languageserver';
import { isBlock, isDocument, isScreen } from '../generated/ast.js';
import { explainCommand, type ExplainParams } from '../protocol.js';
import { namesOf } from '../references/scope.js';
import type { BoothServices } from '../services.js';
import { allBlocks, kindOf, nodeAt } from '../syntax/tree.js';
import type { FindingData } from '../validation/findings.js';
import type { IssueData } from '../validation/issue.js';
import { propertyOf } from '../vocabulary/vocabulary.js';
import { adviceActions } from './advice-actions.js';
import { editOf, editOfChanges } from './edits.js';
import { fixAll, fixAllKind } from './fix-all.js';
import { textFixes } from './text-fixes.js';
import { tidied } from './tidy.js';

/** Changes that would put a diagnostic right, taken from what the diagnostic carries, and the plans for a workstation. */
export class BoothCodeActionProvider implements CodeActionProvider {
  private readonly documents: LangiumDocuments;

  constructor(private readonly services: BoothServices) {
    this.documents = services.shared.workspace.LangiumDocuments;
  }

  async getCodeActions(
    document: LangiumDocument,
    { context: { only, diagnostics: asked }, range }: Pick<CodeActionParams, 'context' | 'range'>,
  ): Promise<CodeAction[]> {
    const diagnostics = asked.filter((diagnostic) => isCurrent(diagnostic, document));
    const isWanted = (kind: string) =>
      only === undefined || only.some((wanted) => kind === wanted || kind.startsWith(wanted && `${wanted}.`));
    const fixes = isWanted('quickfix')
      ? diagnostics.flatMap((diagnostic) => this.actionsFor(diagnostic, document))
      : [];
    const plans =
      isWanted('quickfix') || isWanted('refactor.rewrite')
        ? adviceActions(document, range.start, diagnostics, this.services)
        : [];
    const all = only && isWanted(fixAllKind) ? await fixAll(document, this.services) : undefined;
    const explanations = this.services.Editor.opensPages && isWanted('quickfix') ? explain(diagnostics) : [];
    const wanted = merged([...fixes, ...plans.filter(({ kind }) => isWanted(kind!))]);
    const changes = wanted.map((action) => ({ ...action, edit: tidied(action.edit!, this.services) }));
    return [...changes, ...explanations, ...(all ? [all] : [])];
  }

  private actionsFor(diagnostic: Diagnostic, document: LangiumDocument): CodeAction[] {
    const data = (diagnostic.data ?? {}) as IssueData | FindingData;
    if (!('check' in data)) return textFixes(diagnostic, data, document, this.services);
    const actions = data.remedies
      .filter(({ changes }) => changes.length > 0)
      .map((remedy) => ofRemedy(remedy, diagnostic));
    const addition = this.addition(data, diagnostic, document);
    return [...actions, ...(addition ? [addition] : []), this.acceptance(data, diagnostic, document)];
  }

  /** Tolerates a finding on purpose. The reason is left open: until it is written, the file says that it is missing. */
  private acceptance({ check, subject }: FindingData, diagnostic: Diagnostic, document: LangiumDocument): CodeAction {
    const isName = this.services.workspace.Imports.visibleFrom(document).some((each) => namesOf(each).has(subject));
    const line = `accept ${check}${isName ? ` on ${subject}` : ''} because ""`;
    const edit = editOf([{ uri: document.uri.toString(), range: endOf(document), newText: lineAtEnd(document, line) }]);
    const title = isName ? say`Accept ${check} of ${subject}, with a reason` : say`Accept ${check}, with a reason`;
    return { title, kind: 'quickfix', diagnostics: [diagnostic], edit };
  }

  /** Puts what a check lacks into the block that lacks it, or a placement at the end of the file. */
  private addition({ missing }: FindingData, diagnostic: Diagnostic, main: LangiumDocument): CodeAction | undefined {
    if (!missing) return undefined;
    const { property, of, example, origin } = missing;
    const document = origin ? this.documents.getDocument(URI.parse(origin.uri)) : main;
    if (!document) return undefined;
    const brace = braceOf(missing, document);
    if (!brace && property !== 'place') return undefined;
    const change = brace
      ? insertion(brace, example, document)
      : { range: endOf(document), newText: lineAtEnd(document, example) };
    const edit = editOf([{ uri: document.uri.toString(), ...change }]);
    return { title: say`Add \`${example}\` to ${of}`, kind: 'quickfix', diagnostics: [diagnostic], edit };
  }
}

/** One action of each title and change, for all the diagnostics that it is offered for. */
function merged(actions: readonly CodeAction[]): CodeAction[] {
  const byChange = new Map<string, CodeAction>();
  for (const action of actions) {
    const key = JSON.stringify([action.title, action.edit]);
    const same = byChange.get(key);
    const diagnostics = [...(same?.diagnostics ?? []), ...(action.diagnostics ?? [])];
    byChange.set(key, { ...action, ...same, ...(diagnostics.length > 0 && { diagnostics }) });
  }
  return [...byChange.values()];
}

/** An editor may ask about a diagnostic of the text as it was a keystroke ago: its range would edit the wrong words. */
function isCurrent({ code, range, message }: Diagnostic, document: LangiumDocument): boolean {
  const same = (a: Position, b: Position) => a.line === b.line && a.character === b.character;
  return (document.diagnostics ?? []).some(
    (own) =>
      own.code === code &&
      own.message === message &&
      same(own.range.start, range.start) &&
      same(own.range.end, range.end),
  );
}

/** The place just after the opening brace of the block that has the property: the one declared there, or the only one. */
function braceOf({ property, of, origin }: Missing, document: LangiumDocument): Position | undefined {
  const root = document.parseResult.value;
  if (!isDocument(root) || !root.$cstNode) return undefined;
  const declared = origin && nodeAt(document, origin.start);
  const only = allBlocks(root).find(({ kind }) => kind === of);
  const block = [declared, only].find(
    (node) => (isBlock(node) || isScreen(node)) && propertyOf(kindOf(node), property) !== undefined,
  );
  return GrammarUtils.findNodeForKeyword(block?.$cstNode, '{')?.range.end;
}

/** In a block of several lines a line of its own, with its comment left to the brace; else beside the brace. */
function insertion(brace: Position, example: string, { textDocument }: LangiumDocument): TextEdit {
  const line = textDocument.getText().split('\n')[brace.line] ?? '';
  const rest = line.slice(brace.character).trim();
  if (rest !== '' && !rest.startsWith('//')) return { range: { start: brace, end: brace }, newText: ` ${example} ` };
  const end = { line: brace.line, character: line.replace(/\r$/, '').length };
  return { range: { start: end, end }, newText: `\n${example}` };
}

function endOf({ textDocument }: LangiumDocument): Range {
  const end = textDocument.positionAt(textDocument.getText().length);
  return { start: end, end };
}

function lineAtEnd({ textDocument }: LangiumDocument, line: string): string {
  const text = textDocument.getText();
  return text === '' || text.endsWith('\n') ? `${line}\n` : `\n${line}\n`;
}

function ofRemedy({ title, changes, safe }: Remedy, diagnostic: Diagnostic): CodeAction {
  return { title, kind: 'quickfix', diagnostics: [diagnostic], isPreferred: safe, edit: editOfChanges(changes) };
}

/** Opens the page behind each code. */
function explain(diagnostics: readonly Diagnostic[]): CodeAction[] {
  return [...new Set(diagnostics.map(({ code }) => code as string))].map((code) => {
    const params: ExplainParams = { code };
    return {
      title: say`Explain ${code}`,
      kind: 'quickfix',
      diagnostics: diagnostics.filter((diagnostic) => diagnostic.code === code),
      command: { title: say`Explain`, command: explainCommand, arguments: [params] },
    };
  });
}

import { type LangiumDocument, TextDocument } from 'langium';
import { SemanticTokensDecoder } from 'langium/lsp';
import {
  type CodeAction,
  type DocumentSymbol,
  type Position,
  type Range,
  type SelectionRange,
  SymbolKind,
  type TextEdit,
  type WorkspaceEdit,
} from 'vscode-languageserver-types';
import { pieceKey } from '@boothwright/fit';
import { editOf } from '../lsp/edits.js';
import { selectionRangesOf } from '../lsp/selection.js';
import { piecesAt } from '../preview/pieces.js';
import { editsFor, offeredHandles } from '../preview/set.js';
import type { BoothServices } from '../services.js';

/** What is asked of the services at the carets of an open document. */
export interface Asked {
  readonly document: LangiumDocument;
  readonly carets: readonly Position[];
  readonly services: BoothServices;
}

type View = (asked: Asked) => Promise<string> | string;

const options = { tabSize: 2, insertSpaces: true };
const everywhere: Range = { start: { line: 0, character: 0 }, end: { line: 100_000, character: 0 } };
const aboutDocument = ({ document }: Asked) => ({ textDocument: { uri: document.uri.toString() } });
const atCaret = (asked: Asked) => ({ ...aboutDocument(asked), position: asked.carets[0]! });

/** What an editor shows of each feature, as text; by the name of its folder in `tests/fixtures/editor`. */
export const views: Readonly<Record<string, View>> = {
  async completion(asked) {
    const list = await asked.services.lsp.CompletionProvider!.getCompletion(asked.document, atCaret(asked));
    const lines = list!.items.map(({ label, detail, textEdit }) => {
      const inserted = textEdit!.newText === label ? '' : ` ⇒ ${textEdit!.newText.replaceAll('\n', '⏎')}`;
      return `${label}${detail ? ` — ${detail}` : ''}${inserted}`;
    });
    return lines.join('\n') || 'nothing';
  },

  async hover(asked) {
    const hover = await asked.services.lsp.HoverProvider!.getHoverContent(asked.document, atCaret(asked));
    if (!hover) return 'nothing';
    const word = asked.document.textDocument.getText(hover.range);
    return `[${word}]\n\n${(hover.contents as { value: string }).value}`;
  },

  async 'code-actions'(asked) {
    const { document, carets, services } = asked;
    const range = { start: carets[0]!, end: carets[carets.length - 1]! };
    const diagnostics = (document.diagnostics ?? []).filter((each) => touches(each.range, range));
    const actions = (await services.lsp.CodeActionProvider!.getCodeActions(document, {
      ...aboutDocument(asked),
      range,
      context: { diagnostics },
    })) as CodeAction[];
    return (
      actions.map(({ title, kind, edit }) => `${title} (${kind})\n${changesOf(edit!, services, true)}`).join('\n') ||
      'nothing'
    );
  },

  async format(asked) {
    const edits = await asked.services.lsp.Formatter!.formatDocument(asked.document, {
      ...aboutDocument(asked),
      options,
    });
    return applied(asked.document, edits);
  },

  async 'format-range'(asked) {
    const range = { start: asked.carets[0]!, end: asked.carets[1]! };
    const params = { ...aboutDocument(asked), options, range };
    return applied(asked.document, await asked.services.lsp.Formatter!.formatDocumentRange(asked.document, params));
  },

  async 'format-on-type'(asked) {
    const position = asked.carets[0]!;
    const ch = position.character === 0 ? '\n' : '}';
    const params = { ...aboutDocument(asked), options, position, ch };
    return applied(asked.document, await asked.services.lsp.Formatter!.formatDocumentOnType(asked.document, params));
  },

  async hints(asked) {
    const params = { ...aboutDocument(asked), range: everywhere };
    const hints = (await asked.services.lsp.InlayHintProvider!.getInlayHints(asked.document, params)) ?? [];
    const edits = hints.map(({ position, label }) => ({
      range: { start: position, end: position },
      newText: `‹${label as string}›`,
    }));
    return applied(asked.document, edits);
  },

  async lens(asked) {
    const lenses = (await asked.services.lsp.CodeLensProvider!.provideCodeLens(asked.document, aboutDocument(asked)))!;
    return (
      lenses
        .map(({ range, command }) => `${asked.document.textDocument.getText(range)}: ${command!.title}`)
        .join('\n') || 'nothing'
    );
  },

  async symbols(asked) {
    const symbols = await asked.services.lsp.DocumentSymbolProvider!.getSymbols(asked.document, aboutDocument(asked));
    return outline(symbols);
  },

  async folding(asked) {
    const ranges = await asked.services.lsp.FoldingRangeProvider!.getFoldingRanges(
      asked.document,
      aboutDocument(asked),
    );
    const lines = asked.document.textDocument.getText().split('\n');
    return lines
      .map((line, number) => {
        const own = ranges.filter(({ startLine }) => startLine === number);
        return own.map(({ endLine, kind }) => `${line.trim()} … line ${endLine + 1}${kind ? ` (${kind})` : ''}`);
      })
      .flat()
      .join('\n');
  },

  selection({ document, carets }) {
    const steps: string[] = [];
    const [first] = selectionRangesOf(document, [carets[0]!]);
    for (let step: SelectionRange | undefined = first; step; step = step.parent)
      steps.push(document.textDocument.getText(step.range).replaceAll('\n', '⏎'));
    return steps.join('\n');
  },

  async 'semantic-tokens'(asked) {
    const provider = asked.services.lsp.SemanticTokenProvider!;
    const tokens = await provider.semanticHighlight(asked.document, aboutDocument(asked));
    const declaration = provider.tokenModifiers.declaration!;
    return SemanticTokensDecoder.decode(tokens, provider.tokenTypes, asked.document)
      .map(({ text, tokenType, tokenModifiers }) => {
        return `${text}: ${tokenType}${tokenModifiers & declaration ? ', declared' : ''}`;
      })
      .join('\n');
  },

  async highlights(asked) {
    const found = await asked.services.lsp.DocumentHighlightProvider!.getDocumentHighlight(
      asked.document,
      atCaret(asked),
    );
    return applied(
      asked.document,
      (found ?? []).map(({ range }) => ({ range, newText: `«${asked.document.textDocument.getText(range)}»` })),
    );
  },

  async definition(asked) {
    const links = await asked.services.lsp.DefinitionProvider!.getDefinition(asked.document, atCaret(asked));
    return (links ?? [])
      .map(({ targetUri, targetSelectionRange }) => placeIn(targetUri, targetSelectionRange, asked.services))
      .join('\n');
  },

  async references(asked) {
    const params = { ...atCaret(asked), context: { includeDeclaration: true } };
    const found = await asked.services.lsp.ReferencesProvider!.findReferences(asked.document, params);
    return found
      .map(({ uri, range }) => placeIn(uri, range, asked.services))
      .sort()
      .join('\n');
  },

  async rename(asked) {
    const params = { ...atCaret(asked), newName: 'Other' };
    const edit = await asked.services.lsp.RenameProvider!.rename(asked.document, params);
    return edit ? changesOf(edit, asked.services, false) : 'nothing';
  },

  async links(asked) {
    const links = await asked.services.lsp.DocumentLinkProvider!.getDocumentLinks(asked.document, aboutDocument(asked));
    return (
      links.map(({ range, target }) => `${asked.document.textDocument.getText(range)} → ${target}`).join('\n') ||
      'nothing'
    );
  },

  /** What a drawing offers to move of what the caret is on, and the text after each number is set 4 in or 100 mm on. */
  handles({ document, carets, services }) {
    const { LangiumDocuments } = services.shared.workspace;
    const { assessment } = services.Assessments.of(document)!;
    const keys = piecesAt(document, carets[0]!, assessment.booth).map(pieceKey);
    const offered = offeredHandles(assessment, LangiumDocuments).filter(
      ({ is, pieces }) => is === 'place' && pieces.some((piece) => keys.includes(pieceKey(piece))),
    );
    const shown = offered.map(({ id, says, told, value }) => {
      const edits = editsFor([{ handle: id, value: value + 101 }], assessment, LangiumDocuments)!;
      return `${told} ${says}\n${changesOf(editOf(edits), services, true)}`;
    });
    return shown.join('\n') || 'nothing';
  },

  diagnostics({ document }) {
    const severities = ['', 'error', 'warning', 'information', 'hint'];
    return (document.diagnostics ?? [])
      .map(({ range, severity, code, message, relatedInformation = [] }) => {
        const place = `${range.start.line + 1}:${range.start.character + 1}`;
        const related = relatedInformation.map(
          (each) => `\n    ${nameOf(each.location.uri)} ${each.location.range.start.line + 1}: ${each.message}`,
        );
        const word = document.textDocument.getText(range);
        return `${place} ${word}\n  ${severities[severity!]} ${code}: ${message as string}${related.join('')}`;
      })
      .join('\n');
  },
};

function applied({ textDocument }: LangiumDocument, edits: readonly TextEdit[]): string {
  return TextDocument.applyEdits(textDocument, [...edits]);
}

function touches(a: Range, b: Range): boolean {
  const isBefore = (one: Position, other: Position) =>
    one.line < other.line || (one.line === other.line && one.character < other.character);
  return !isBefore(a.end, b.start) && !isBefore(b.end, a.start);
}

const nameOf = (uri: string) => uri.slice(uri.lastIndexOf('/') + 1);

/** The lines of each file that an edit changes, as they were (if that is wanted) and as they become. */
function changesOf({ changes = {} }: WorkspaceEdit, services: BoothServices, withBefore: boolean): string {
  const { LangiumDocuments } = services.shared.workspace;
  const files = Object.entries(changes).sort(([a], [b]) => a.localeCompare(b));
  return files
    .map(([uri, edits]) => {
      const document = LangiumDocuments.all.find((each) => each.uri.toString() === uri)!;
      const before = document.textDocument.getText().split('\n');
      const after = applied(document, edits).split('\n');
      const lost = before.filter((line) => !after.includes(line)).map((line) => `  − ${line}`);
      const won = after.filter((line) => line !== '' && !before.includes(line)).map((line) => `  + ${line}`);
      return [...(files.length > 1 ? [`  ${nameOf(uri)}`] : []), ...(withBefore ? lost : []), ...won].join('\n');
    })
    .join('\n');
}

function placeIn(uri: string, { start }: Range, { shared }: BoothServices): string {
  const document = shared.workspace.LangiumDocuments.all.find((each) => each.uri.toString() === uri)!;
  return `${nameOf(uri)} ${start.line + 1}: ${document.textDocument.getText().split('\n')[start.line]!.trim()}`;
}

const symbolNames = new Map(Object.entries(SymbolKind).map(([name, kind]) => [kind, name]));

function outline(symbols: readonly DocumentSymbol[] = [], depth = 0): string {
  return symbols
    .map(({ name, detail, kind, children }) => {
      const line = `${'  '.repeat(depth)}${name}${detail ? ` (${detail})` : ''}: ${symbolNames.get(kind)}`;
      return [line, ...(children?.length ? [outline(children, depth + 1)] : [])].join('\n');
    })
    .join('\n');
}

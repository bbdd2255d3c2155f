import { type LangiumDocument, TextDocument, URI } from 'langium';
import type { CodeAction, Position, Range, TextEdit } from 'vscode-languageserver-types';
import {
  analysisOf,
  type Analysis,
  createBoothServices,
  type BoothServices,
  type Computation,
} from '@boothwright/language';
import { selectionRangesOf } from '../../packages/language/src/lsp/selection.js';
import { MemoryFiles } from '../../packages/language/src/testing/memory.js';

const folder = 'file:///hall/';
const uri = URI.parse(`${folder}hall.booth`);
const options = { tabSize: 2, insertSpaces: true };

/** The language's services over files in memory, as a server has them. One text is open at a time. */
export class Language {
  private readonly shared;
  readonly services: BoothServices;

  constructor(furniture: string, computation?: Computation) {
    const files = new MemoryFiles(new Map([[`${folder}furniture.booth`, furniture]]));
    const { shared, booth } = createBoothServices({ fileSystemProvider: () => files, computation });
    this.shared = shared;
    this.services = booth;
  }

  async open(text: string): Promise<LangiumDocument> {
    const { LangiumDocuments, LangiumDocumentFactory, DocumentBuilder } = this.shared.workspace;
    if (LangiumDocuments.hasDocument(uri)) LangiumDocuments.deleteDocument(uri);
    const document = LangiumDocumentFactory.fromString(text, uri);
    LangiumDocuments.addDocument(document);
    await DocumentBuilder.build([document], { validation: true });
    return document;
  }

  analysis(document: LangiumDocument): Analysis {
    return analysisOf(document, this.services);
  }

  /** What an editor asks at one place of a text, by name. */
  at(document: LangiumDocument, position: Position): readonly (readonly [string, () => unknown])[] {
    const { lsp } = this.services;
    const textDocument = { uri: uri.toString() };
    const params = { textDocument, position };
    return [
      ['hover', () => lsp.HoverProvider!.getHoverContent(document, params)],
      ['completion', () => lsp.CompletionProvider!.getCompletion(document, params)],
      ['definition', () => lsp.DefinitionProvider!.getDefinition(document, params)],
      ['highlight', () => lsp.DocumentHighlightProvider!.getDocumentHighlight(document, params)],
      [
        'references',
        () => lsp.ReferencesProvider!.findReferences(document, { ...params, context: { includeDeclaration: true } }),
      ],
      ['rename', () => lsp.RenameProvider!.rename(document, { ...params, newName: 'Renamed' })],
      ['prepare rename', () => lsp.RenameProvider!.prepareRename(document, params)],
      ['selection', () => selectionRangesOf(document, [position])],
      ['format on }', () => lsp.Formatter!.formatDocumentOnType(document, { ...params, ch: '}', options })],
      ['format on line end', () => lsp.Formatter!.formatDocumentOnType(document, { ...params, ch: '\n', options })],
    ];
  }

  /** What an editor asks of a whole text, or of a stretch of it, by name. */
  over(document: LangiumDocument, range: Range): readonly (readonly [string, () => unknown])[] {
    const { lsp } = this.services;
    const params = { textDocument: { uri: uri.toString() }, range };
    return [
      ['symbols', () => lsp.DocumentSymbolProvider!.getSymbols(document, params)],
      ['folding', () => lsp.FoldingRangeProvider!.getFoldingRanges(document, params)],
      ['links', () => lsp.DocumentLinkProvider!.getDocumentLinks(document, params)],
      ['colours', () => lsp.SemanticTokenProvider!.semanticHighlight(document, params)],
      ['hints', () => lsp.InlayHintProvider!.getInlayHints(document, params)],
      ['lenses', () => lsp.CodeLensProvider!.provideCodeLens(document, params)],
      ['format range', () => lsp.Formatter!.formatDocumentRange(document, { ...params, options })],
    ];
  }

  actions(document: LangiumDocument, range: Range, only?: string[]): Promise<CodeAction[]> {
    const context = { diagnostics: document.diagnostics ?? [], only };
    const params = { textDocument: { uri: uri.toString() }, range, context };
    return Promise.resolve(this.services.lsp.CodeActionProvider!.getCodeActions(document, params)) as Promise<
      CodeAction[]
    >;
  }

  format(document: LangiumDocument): TextEdit[] {
    return this.services.lsp.Formatter!.formatDocument(document, {
      textDocument: { uri: uri.toString() },
      options,
    }) as TextEdit[];
  }
}

export function applied(document: LangiumDocument, edits: readonly TextEdit[]): string {
  return TextDocument.applyEdits(document.textDocument, [...edits]);
}

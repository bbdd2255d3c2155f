import type { LangiumDocument, Lexer } from 'langium';
import type { Formatter } from 'langium/lsp';
import type {
  DocumentFormattingParams,
  DocumentOnTypeFormattingOptions,
  DocumentOnTypeFormattingParams,
  DocumentRangeFormattingParams,
  FormattingOptions,
} from 'vscode-languageserver';
import type { TextEdit } from 'vscode-languageserver-types';
import { apply, type Gap, layOut } from '../formatting/layout.js';
import { documentPieces, piecesOf } from '../formatting/pieces.js';
import type { BoothServices } from '../services.js';

/** Moves white space only, and none of it in a text that cannot be read. */
export class BoothFormatter implements Formatter {
  readonly formatOnTypeOptions: DocumentOnTypeFormattingOptions = {
    firstTriggerCharacter: '}',
    moreTriggerCharacter: ['\n'],
  };
  private readonly lexer: Lexer;

  constructor(services: BoothServices) {
    this.lexer = services.parser.Lexer;
  }

  formatDocument(document: LangiumDocument, { options }: Pick<DocumentFormattingParams, 'options'>): TextEdit[] {
    return this.edits(document, options);
  }

  formatDocumentRange(
    document: LangiumDocument,
    { options, range }: Pick<DocumentRangeFormattingParams, 'options' | 'range'>,
  ): TextEdit[] {
    const last = range.end.character === 0 && range.end.line > range.start.line ? range.end.line - 1 : range.end.line;
    return this.edits(document, options).filter(
      ({ range: { end } }) => end.line >= range.start.line && end.line <= last,
    );
  }

  /** The line that was left, or the block that was closed. */
  formatDocumentOnType(
    document: LangiumDocument,
    { options, position, ch }: Pick<DocumentOnTypeFormattingParams, 'options' | 'position' | 'ch'>,
  ): TextEdit[] {
    const edits = this.edits(document, options);
    if (ch === '\n')
      return edits.filter(({ range: { start, end } }) => start.line === end.line && end.line === position.line - 1);
    const closing = document.textDocument.offsetAt(position) - 1;
    const opening = openingOf(closing, piecesOf(document.textDocument.getText(), this.lexer));
    if (opening === undefined) return [];
    return edits.filter(({ range: { start, end } }) => {
      const [from, to] = [document.textDocument.offsetAt(start), document.textDocument.offsetAt(end)];
      return from > opening && to <= closing;
    });
  }

  /** The text with all edits; the text itself if it cannot be read. */
  formatted(document: LangiumDocument, options: FormattingOptions): string {
    return apply(document.textDocument.getText(), this.gaps(document, options));
  }

  private edits(document: LangiumDocument, options: FormattingOptions): TextEdit[] {
    const { textDocument } = document;
    const text = textDocument.getText();
    return this.gaps(document, options)
      .filter((gap) => text.slice(gap.start, gap.end) !== gap.text)
      .map(({ start, end, text: newText }) => ({
        range: { start: textDocument.positionAt(start), end: textDocument.positionAt(end) },
        newText,
      }));
  }

  /** None if the text cannot be read, or would be read otherwise with other white space. */
  private gaps(document: LangiumDocument, { tabSize, insertSpaces }: FormattingOptions): Gap[] {
    const { lexerErrors, parserErrors } = document.parseResult;
    if (lexerErrors.length > 0 || parserErrors.length > 0) return [];
    const text = document.textDocument.getText();
    const pieces = documentPieces(document, this.lexer);
    const gaps = layOut(text, pieces, {
      indent: insertSpaces ? ' '.repeat(tabSize) : '\t',
      newLine: text.includes('\r\n') ? '\r\n' : '\n',
    });
    const images = (list: readonly { readonly image: string }[]) => list.map(({ image }) => image).join('\u0000');
    return images(piecesOf(apply(text, gaps), this.lexer)) === images(pieces) ? gaps : [];
  }
}

/** The brace that the one at an offset closes. */
function openingOf(
  closing: number,
  pieces: readonly { readonly type: string; readonly start: number }[],
): number | undefined {
  let depth = 0;
  for (const { type, start } of pieces.filter((piece) => piece.start <= closing).reverse()) {
    if (type === '}') depth++;
    if (type === '{' && --depth === 0) return start;
  }
  return undefined;
}

import type { AstNode, LangiumDocument, Lexer } from 'langium';
import { DefaultFoldingRangeProvider, type FoldingRangeAcceptor } from 'langium/lsp';
import { piecesOf } from '../formatting/pieces.js';
import type { BoothServices } from '../services.js';

/** This many lines of comment, one below the other, can be folded. */
const FOLDED_LINES = 3;

/** Folds blocks, long comments, and line comments that stand together. */
export class BoothFoldingRangeProvider extends DefaultFoldingRangeProvider {
  private readonly lexer: Lexer;

  constructor(services: BoothServices) {
    super(services);
    this.lexer = services.parser.Lexer;
  }

  protected override collectCommentFolding(
    document: LangiumDocument,
    node: AstNode,
    accept: FoldingRangeAcceptor,
  ): void {
    super.collectCommentFolding(document, node, accept);
    const { textDocument } = document;
    const text = textDocument.getText();
    let run: number[] = [];
    const finish = () => {
      if (run.length >= FOLDED_LINES) accept({ startLine: run[0]!, endLine: run.at(-1)!, kind: 'comment' });
      run = [];
    };
    for (const { type, start } of piecesOf(text, this.lexer)) {
      const { line, character } = textDocument.positionAt(start);
      const isOwnLine = type === 'LINE_COMMENT' && text.slice(start - character, start).trim() === '';
      if (!isOwnLine || (run.length > 0 && run.at(-1) !== line - 1)) finish();
      if (isOwnLine) run.push(line);
    }
    finish();
  }
}

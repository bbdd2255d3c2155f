import type { AstNode, LangiumDocument, Lexer } from 'langium';
import { DefaultFoldingRangeProvider, type FoldingRangeAcceptor } from 'langium/lsp';
import { piecesOf } from '../formatting/pieces.js';
import type { BoothServices } from '../services.js';

/** This many lines of comment, one below the other, can be folded. */
const FOLDED_LINES = 3;

/** A line comment that begins or ends a part to fold, as the editor's own language configuration says too. */
const region = /^\/\/\s*#(end)?region\b/;

/** Folds blocks, long comments, line comments that stand together, and what stands between two marks of a region. */
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
    const regions: number[] = [];
    let run: number[] = [];
    const finish = () => {
      if (run.length >= FOLDED_LINES) accept({ startLine: run[0]!, endLine: run.at(-1)!, kind: 'comment' });
      run = [];
    };
    for (const { type, start, end } of piecesOf(text, this.lexer)) {
      const { line, character } = textDocument.positionAt(start);
      const isOwnLine = type === 'LINE_COMMENT' && text.slice(start - character, start).trim() === '';
      if (!isOwnLine || (run.length > 0 && run.at(-1) !== line - 1)) finish();
      const mark = isOwnLine ? region.exec(text.slice(start, end)) : null;
      if (mark) {
        finish();
        if (!mark[1]) regions.push(line);
        else if (regions.length > 0) accept({ startLine: regions.pop()!, endLine: line, kind: 'region' });
      } else if (isOwnLine) run.push(line);
    }
    finish();
  }
}

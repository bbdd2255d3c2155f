import { AstUtils, type LangiumDocument, type Lexer } from 'langium';
import {
  isAccept,
  isBlock,
  isImport,
  isLimit,
  isNames,
  isOdd,
  isPlacement,
  isProperty,
  isScreen,
} from '../generated/ast.js';
import { isPropertyNode } from '../syntax/tree.js';

/** A token or a comment of a text, which a layout moves but never changes. */
export interface Piece {
  readonly image: string;
  readonly start: number;
  readonly end: number;
  /** The token's type; a comment has its terminal's name. */
  readonly type: string;
  readonly isComment: boolean;
  /** It begins a block, a property or a statement, and reads best with some room before it. */
  readonly begins: 'item' | 'phrase' | undefined;
}

/** All that a text holds but white space, in its order. */
export function piecesOf(text: string, lexer: Lexer): Omit<Piece, 'begins'>[] {
  const { tokens, hidden } = lexer.tokenize(text);
  const comments = new Set(hidden);
  return [...tokens, ...hidden]
    .sort((a, b) => a.startOffset - b.startOffset)
    .map((token) => ({
      image: token.image,
      start: token.startOffset,
      end: token.startOffset + token.image.length,
      type: token.tokenType.name,
      isComment: comments.has(token),
    }));
}

/** The pieces of a parsed document, and what begins where. */
export function documentPieces(document: LangiumDocument, lexer: Lexer): Piece[] {
  const beginnings = new Map<number, Piece['begins']>();
  for (const node of AstUtils.streamAst(document.parseResult.value)) {
    const start = node.$cstNode?.offset;
    const begins =
      isPropertyNode(node) ||
      [isBlock, isScreen, isPlacement, isAccept, isLimit, isImport, isOdd].some((is) => is(node));
    if (start !== undefined && begins && !beginnings.has(start))
      beginnings.set(start, continuesPhrase(node) ? 'phrase' : 'item');
  }
  return piecesOf(document.textDocument.getText(), lexer).map((piece) => ({
    ...piece,
    begins: piece.isComment ? undefined : beginnings.get(piece.start),
  }));
}

/** The `at` of `place Left at 14ft, 6ft` and of `under Left at 2in`. */
function continuesPhrase(node: object): boolean {
  if (!isProperty(node) || node.key !== 'at') return false;
  const { $container: holder, $containerIndex: index = 0 } = node;
  if (isPlacement(holder)) return index === 0;
  const before = 'items' in holder ? holder.items[index - 1] : undefined;
  return isNames(before) && before.key === 'under';
}

import type { AstNode } from 'langium';
import { AbstractSemanticTokenProvider, type SemanticTokenAcceptor } from 'langium/lsp';
import {
  isAccept,
  isBetween,
  isBlock,
  isFlag,
  isImport,
  isLimit,
  isNames,
  isPlacement,
  isProperty,
  isQuantity,
  isScreen,
  isSide,
  isText,
  isWord,
} from '../generated/ast.js';

/**
 * What each word is where it stands: a name (`class`, where it is declared with `declaration`), a block's kind (`keyword`), a
 * `property`, a quantity (`number`), a word of the language (`enumMember`), a check (`function`) or a text (`string`).
 */
export class BoothSemanticTokenProvider extends AbstractSemanticTokenProvider {
  protected override highlightElement(node: AstNode, accept: SemanticTokenAcceptor): void {
    if (isBlock(node)) {
      accept({ node, property: 'kind', type: 'keyword' });
      accept({ node, property: 'name', type: 'class', modifier: 'declaration' });
      accept({ node, property: 'title', type: 'string' });
    } else if (isScreen(node)) {
      accept({ node, property: 'kind', type: 'keyword' });
      accept({ node, property: 'monitor', type: 'class' });
    } else if (isPlacement(node)) accept({ node, property: 'pieces', type: 'class' });
    else if (isProperty(node)) accept({ node, property: 'key', type: 'property' });
    else if (isNames(node)) {
      accept({ node, property: 'key', type: 'property' });
      accept({ node, property: 'refs', type: 'class' });
      accept({ node, property: 'walls', type: 'enumMember' });
    } else if (isBetween(node)) accept({ node, property: 'key', type: 'property' });
    else if (isSide(node)) {
      accept({ node, property: 'landmark', type: 'enumMember' });
      accept({ node, property: 'piece', type: 'class' });
    } else if (isFlag(node)) accept({ node, property: 'key', type: 'enumMember' });
    else if (isQuantity(node)) this.quantity(node, accept);
    else if (isWord(node)) accept({ node, property: 'text', type: 'enumMember' });
    else if (isText(node)) accept({ node, property: 'raw', type: 'string' });
    else if (isAccept(node) || isLimit(node)) {
      accept({ node, property: 'check', type: 'function' });
      if (isAccept(node)) accept({ node, property: 'subject', type: 'class' });
      accept({ node, property: 'reason', type: 'string' });
    } else if (isImport(node)) accept({ node, property: 'path', type: 'string' });
  }

  private quantity(node: AstNode, accept: SemanticTokenAcceptor): void {
    if (!isQuantity(node)) return;
    for (const property of ['text', 'upper'] as const) accept({ node, property, type: 'number' });
    for (const property of ['direction', 'relation', 'landmark', 'reported'] as const)
      accept({ node, property, type: 'enumMember' });
  }
}

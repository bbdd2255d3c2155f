import type { LangiumDocument, Lexer } from 'langium';
import { isDocument } from '../generated/ast.js';
import type { Token } from './faults.js';
import { lastBlockFrom } from './tree.js';

interface Words {
  readonly tokens: readonly Token[];
  readonly hidden: readonly Token[];
}

/**
 * The words and comments of a document around a place, as they stand in it: of the block there (or the last one before it), the one before and the
 * one after at least. All of them, where the tree does not say for sure that what comes before stands by itself: if it has a fault,
 * or is older than the text.
 */
export function wordsAround(document: LangiumDocument, offset: number, lexer: Lexer): Words {
  const text = document.textDocument.getText();
  const { from, to } = partAround(document, text, offset);
  const { tokens, hidden } = lexer.tokenize(text.slice(from, to), { mode: 'partial' });
  return { tokens: tokens.map((token) => moved(token, from)), hidden: hidden.map((token) => moved(token, from)) };
}

function partAround({ parseResult }: LangiumDocument, text: string, offset: number) {
  const { value, lexerErrors, parserErrors } = parseResult;
  const all = { from: 0, to: text.length };
  if (!isDocument(value) || value.$cstNode?.root.fullText !== text) return all;
  const at = lastBlockFrom(value.blocks, offset - 1);
  const startOf = (index: number) => value.blocks[index]?.$cstNode?.offset;
  const part = { from: startOf(at - 1) ?? 0, to: startOf(at + 2) ?? text.length };
  const faults = [...lexerErrors.map((error) => error.offset), ...parserErrors.map(({ token }) => token.startOffset)];
  return faults.every((fault) => fault >= part.from) ? part : all;
}

function moved(token: Token, by: number): Token {
  return by === 0 ? token : { ...token, startOffset: token.startOffset + by, endOffset: token.endOffset! + by };
}

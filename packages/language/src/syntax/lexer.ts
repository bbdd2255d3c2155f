import { say } from '@boothwright/fit';
import { DefaultLexer, type LexerResult, type TokenizeOptions } from 'langium';
import { balance } from './balance.js';
import { fault, type Fault } from './faults.js';
import { tooLong, tooMuch } from './too-large.js';

/**
 * Cuts a text into tokens and balances their braces. A partial text, as completion sees it, is left as it is. A text that is too large has
 * one fault and no tokens.
 */
export class BoothLexer extends DefaultLexer {
  override tokenize(text: string, options?: TokenizeOptions): LexerResult {
    const long = tooLong(text);
    if (long) return nothing(long);
    const result = super.tokenize(text, options);
    const much = tooMuch(result);
    if (much) return nothing(much);
    if (options?.mode === 'partial') return result;
    const { tokens, faults } = balance(result.tokens, this.definition);
    const openComments = result.hidden
      .filter(({ tokenType }) => tokenType.name === 'OPEN_COMMENT')
      .map((token) => {
        const start = { ...token, endOffset: token.startOffset + 1 };
        return fault('open-comment', start, say`This comment is never closed: */ is missing.`);
      });
    return { ...result, tokens, errors: [...result.errors, ...faults, ...openComments] };
  }
}

function nothing(error: Fault): LexerResult {
  return { tokens: [], hidden: [], errors: [error] };
}

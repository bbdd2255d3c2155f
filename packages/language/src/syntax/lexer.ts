import { say } from '@boothwright/fit';
import { DefaultLexer, type LexerResult, type TokenizeOptions } from 'langium';
import { balance } from './balance.js';
import { fault } from './faults.js';

/** Cuts a text into tokens and balances their braces. A partial text, as completion sees it, is left as it is. */
export class BoothLexer extends DefaultLexer {
  override tokenize(text: string, options?: TokenizeOptions): LexerResult {
    const result = super.tokenize(text, options);
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

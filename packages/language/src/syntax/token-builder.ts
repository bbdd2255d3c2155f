import { DefaultTokenBuilder, type GrammarAST, RegExpUtils } from 'langium';
import type { Token } from './faults.js';

type TokenType = Token['tokenType'];

/** As the library's, but what a terminal could begin with is worked out once, not again for each keyword: most of the time to make a lexer. */
export class BoothTokenBuilder extends DefaultTokenBuilder {
  private readonly beginnings = new Map<TokenType, RegExp>();

  protected override findLongerAlt({ value }: GrammarAST.Keyword, terminals: TokenType[]): TokenType[] {
    return terminals.filter((terminal) => (this.beginningOf(terminal)?.exec(value)?.[0].length ?? 0) > 0);
  }

  private beginningOf(terminal: TokenType): RegExp | undefined {
    const { PATTERN: pattern } = terminal;
    if (!(pattern instanceof RegExp)) return undefined;
    const known = this.beginnings.get(terminal) ?? RegExpUtils.partialRegExp(`^${pattern.source}$`);
    this.beginnings.set(terminal, known);
    return known;
  }
}

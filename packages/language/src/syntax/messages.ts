import { AbstractParserErrorMessageProvider, DefaultLexerErrorMessageProvider } from 'langium';
import type { Token } from './faults.js';

const advice: Record<string, string> = {
  ':': 'a property and its value need only a space between them: `width 60in`',
  '=': 'a property and its value need only a space between them: `width 60in`',
  ';': 'a property needs no mark at its end',
  '(': 'blocks are written in { }',
  ')': 'blocks are written in { }',
  '[': 'blocks are written in { }',
  ']': 'blocks are written in { }',
  '#': 'a comment starts with //',
};

/** What is said of a character that no word of the language has. */
export class BoothLexerMessages extends DefaultLexerErrorMessageProvider {
  override buildUnexpectedCharactersMessage(text: string, offset: number, length: number): string {
    const found = text.slice(offset, offset + length);
    const hint = advice[found[0]!];
    return hint ? `\`${found}\` has no meaning here: ${hint}.` : `\`${found}\` has no meaning here: remove it.`;
  }
}

/** What is said where the text cannot go on. The grammar is wide and the braces are balanced, so this is rare. */
export class BoothParserMessages extends AbstractParserErrorMessageProvider {
  override buildMismatchTokenMessage({ actual, previous }: { actual: Token; previous: Token }): string {
    return cannotFollow(actual, previous);
  }

  override buildNotAllInputParsedMessage({ firstRedundant }: { firstRedundant: Token }): string {
    return cannotFollow(firstRedundant);
  }

  override buildNoViableAltMessage({ actual, previous }: { actual: Token[]; previous: Token }): string {
    return cannotFollow(actual[0], previous);
  }

  override buildEarlyExitMessage({ actual, previous }: { actual: Token[]; previous: Token }): string {
    return cannotFollow(actual[0], previous);
  }
}

function cannotFollow(actual: Token | undefined, previous?: Token): string {
  if (!actual?.image) return `The text ends too early${after(previous)}.`;
  return `\`${actual.image}\` does not belong here${after(previous)}: remove it, or put what it belongs to before it.`;
}

function after(previous: Token | undefined): string {
  return previous?.image ? `, after \`${previous.image}\`` : '';
}

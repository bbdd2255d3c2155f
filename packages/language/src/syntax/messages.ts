import { said, say } from '@boothwright/fit';
import { AbstractParserErrorMessageProvider, DefaultLexerErrorMessageProvider } from 'langium';
import type { Token } from './faults.js';

/** Why these marks have no meaning; shown in the language that is spoken. */
export const markAdvice: Record<string, string> = {
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
    const hint = markAdvice[found[0]!];
    return hint
      ? say`\`${found}\` has no meaning here: ${said(hint)}.`
      : say`\`${found}\` has no meaning here: remove it.`;
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
  const before = previous?.image;
  if (!actual?.image)
    return before ? say`The text ends too early, after \`${before}\`.` : say`The text ends too early.`;
  return before
    ? say`\`${actual.image}\` does not belong here, after \`${before}\`: remove it, or put what it belongs to before it.`
    : say`\`${actual.image}\` does not belong here: remove it, or put what it belongs to before it.`;
}

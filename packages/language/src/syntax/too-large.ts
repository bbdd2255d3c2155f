import { say } from '@boothwright/fit';
import type { LexerResult } from 'langium';
import { bounds } from '../bounds.js';
import { type Fault, fault, type Token } from './faults.js';

/** What is said of a text that is too long to be cut into words at all; nothing if it is not. */
export function tooLong(text: string): Fault | undefined {
  if (text.length <= bounds.characters) return undefined;
  const message = say`This file is too large: it may have ${count(bounds.characters)} characters, and has more. Nothing of it was read: split it, and import the parts that you need.`;
  return { code: 'too-large', message, offset: 0, line: 1, column: 1, length: 1 };
}

/** What is said at the first word that is too long, or too many; nothing if there is none. */
export function tooMuch({ tokens, hidden }: LexerResult): Fault | undefined {
  const long = tokens.find(({ image }) => image.length > bounds.word);
  if (long)
    return at(
      long,
      say`This word is too long: it may have ${count(bounds.word)} characters. Nothing of the file was read: shorten it.`,
    );
  if (tokens.length > bounds.tokens)
    return at(
      tokens[bounds.tokens]!,
      say`This file is too large: it may have ${count(bounds.tokens)} words and marks. Nothing of it was read: split it.`,
    );
  if (hidden.length > bounds.comments)
    return at(
      hidden[bounds.comments]!,
      say`This file is too large: it may have ${count(bounds.comments)} comments. Nothing of it was read: split it.`,
    );
  const end = endOfRun(tokens);
  return (
    end &&
    at(
      end,
      say`This block is too long: it may have ${count(bounds.run)} words and marks. Nothing of the file was read: split it.`,
    )
  );
}

/** Where a run ends: something new begins. */
const breaks = new Set(['{', '}', 'import', 'place', 'accept', 'limit']);

function endOfRun(tokens: readonly Token[]): Token | undefined {
  let run = 0;
  return tokens.find(({ image }) => {
    run = breaks.has(image) ? 0 : run + 1;
    return run > bounds.run;
  });
}

/** At the beginning of a token: the whole of it may be a megabyte. */
function at(token: Token, message: string): Fault {
  return { ...fault('too-large', token, message), length: 1 };
}

function count(number: number): string {
  return number.toLocaleString('en-GB');
}

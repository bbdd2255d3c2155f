import { stripVTControlCharacters } from 'node:util';
import { wrapAnsi } from 'fast-wrap-ansi';

/** One line without control characters and without turns of direction: a name in a file must not drive the terminal. */
export function plain(text: string): string {
  return stripVTControlCharacters(text).replace(/[\u0000-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]+/g, ' ');
}

/** Breaks prose at a width, `first` before its first line and `rest` before the others. */
export function wrapper(width: number) {
  return (text: string, first = '  ', rest = first) =>
    wrapAnsi(plain(text), width - rest.length, { trim: true })
      .split('\n')
      .map((line, index) => (index === 0 ? first : rest) + line)
      .join('\n');
}

export const caution = 'This is a planning aid; your local building or fire official decides.';

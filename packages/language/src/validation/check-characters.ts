import { say } from '@boothwright/fit';
import type { LangiumDocument } from 'langium';
import type { Report } from './issue.js';

/** Overrides of the direction of reading, and control characters other than tab and line ends. */
const unseen = /[\u202a-\u202e\u2066-\u2069]|[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f]/g;
/** A binary file has thousands: more say nothing new. */
const ENOUGH = 20;

/** Characters that are not seen and change how a text reads, or what a terminal does with it, wherever they stand. */
export function checkCharacters({ textDocument }: LangiumDocument, report: Report): void {
  let found = 0;
  for (const { 0: character, index } of textDocument.getText().matchAll(unseen)) {
    if (++found > ENOUGH) return;
    const name = `U+${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}`;
    const message =
      character >= '\u202a'
        ? say`A character that is not seen (${name}) turns the order in which this text is read: remove it.`
        : say`A control character that is not seen (${name}) stands here: remove it.`;
    const range = { start: textDocument.positionAt(index), end: textDocument.positionAt(index + 1) };
    report({ code: 'hidden-character', message, range, data: { text: name, suggestions: [''] } });
  }
}

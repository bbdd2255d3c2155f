import type { Verdict } from '@boothwright/fit';
import type { Span, Text } from '../content/blocks.js';
import type { ColourName } from '../palette.js';
import { settable, type Measure, type Weight } from './type.js';

/** A run of words of one look, and where on its line it starts, points. */
export interface Run {
  readonly x: number;
  readonly text: string;
  readonly weight: Weight;
  readonly colour: ColourName;
  /** Drawn before the run. */
  readonly mark?: Verdict;
}

export type Line = readonly Run[];

/** What a mark and its gap take before the word, in sizes of the text. */
export const MARK_ROOM = 1.2;

interface Word {
  readonly text: string;
  readonly weight: Weight;
  readonly colour: ColourName;
  readonly mark?: Verdict;
  readonly width: number;
}

/** Breaks a text into lines no wider than this, between words; a word that is wider alone is broken too. */
export function linesOf(text: Text, size: number, widest: number, measure: Measure): readonly Line[] {
  const words = text.flatMap((span) => wordsOf(span, size, widest, measure));
  const lines: Run[][] = [];
  let x = Infinity;
  for (const word of words) {
    const { width, ...run } = word;
    const space = measure.width(' ', word.weight, size);
    if (x + space + width > widest + 0.01) {
      lines.push([{ ...run, x: 0 }]);
      x = width;
    } else {
      join(lines.at(-1)!, { ...run, x: x + space });
      x += space + width;
    }
  }
  return lines;
}

/** The width of the text on one line, and of its widest word. */
export function widthsOf(text: Text, size: number, measure: Measure): { whole: number; word: number } {
  const words = text.flatMap((span) => wordsOf(span, size, Infinity, measure));
  const space = measure.width(' ', 'regular', size);
  return {
    whole: words.reduce((sum, { width }) => sum + width + space, -space),
    word: Math.max(0, ...words.map(({ width }) => width)),
  };
}

/** Words of one look that follow each other are one run: whoever takes the text out of the file gets whole lines. */
function join(line: Run[], next: Run): void {
  const last = line.at(-1)!;
  if (last.weight === next.weight && last.colour === next.colour && !next.mark) {
    line[line.length - 1] = { ...last, text: `${last.text} ${next.text}` };
  } else line.push(next);
}

function wordsOf(span: Span, size: number, widest: number, measure: Measure): Word[] {
  const { text, weight, colour, mark } = lookOf(span);
  const words = settable(text).split(' ').filter(Boolean);
  return words.flatMap((word, index) => {
    const room = mark && index === 0 ? MARK_ROOM * size : 0;
    return pieces(word, widest - room, (part) => measure.width(part, weight, size)).map((part, nth): Word => {
      const first = index === 0 && nth === 0;
      const width = measure.width(part, weight, size) + (first ? room : 0);
      return { text: part, weight, colour, width, ...(mark && first && { mark }) };
    });
  });
}

function lookOf(span: Span): { text: string; weight: Weight; colour: ColourName; mark?: Verdict } {
  if (typeof span === 'string') return { text: span, weight: 'regular', colour: 'ink' };
  if ('verdict' in span) return { text: span.word, weight: 'strong', colour: span.verdict, mark: span.verdict };
  if (span.as === 'soft') return { text: span.text, weight: 'regular', colour: 'soft' };
  return { text: span.text, weight: 'strong', colour: 'ink' };
}

/** A word, or parts of it that fit. */
function pieces(word: string, widest: number, width: (part: string) => number): string[] {
  if (width(word) <= widest) return [word];
  const parts = [''];
  for (const character of word) {
    const longer = parts.at(-1)! + character;
    if (parts.at(-1) === '' || width(longer) <= widest) parts[parts.length - 1] = longer;
    else parts.push(character);
  }
  return parts;
}

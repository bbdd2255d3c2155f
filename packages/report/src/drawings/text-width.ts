import { TEXT_SIZE } from './drawing.js';

/**
 * Widths of characters in hundredths of the text's size: those of DejaVu Sans, the widest of the fonts that the style sheet may end up with,
 * so that what is kept apart here stays apart in any of them.
 */
const widths: readonly (readonly [number, string])[] = [
  [24, '′'],
  [28, "'ijl"],
  [30, 'IJ'],
  [32, ' \u00a0,.·’'],
  [34, '/:;\\|'],
  [36, 'f'],
  [40, '-″()[]t'],
  [42, '!r'],
  [46, '"'],
  [50, '*_`°–'],
  [54, '?sz'],
  [56, 'Lc'],
  [58, 'Fk'],
  [60, 'vxy'],
  [62, 'PTYaeoéö'],
  [64, '0123456789$ESbdghnpqu{}ß'],
  [66, 'K'],
  [70, 'ABCRVXZ'],
  [76, 'UHN'],
  [80, '&DGOQ'],
  [84, '#+<=>^~−×w'],
  [88, 'M'],
  [100, '%m@W'],
];

const byCharacter = new Map(
  widths.flatMap(([width, characters]) => [...characters].map((one) => [one, width] as const)),
);
const USUAL = 72;
const IDEOGRAPH = 105;
const STRONGER = 1.14;

/** The width of a text in units of the paper; never less than what a browser makes of it. */
export function textWidth(text: string, strong = false): number {
  let sum = 0;
  for (const character of text) {
    sum += byCharacter.get(character) ?? (character.codePointAt(0)! > 0x2e7f ? IDEOGRAPH : USUAL);
  }
  return (sum / 100) * TEXT_SIZE * (strong ? STRONGER : 1);
}

/** A text in lines no wider than this, broken between words; a word that is wider alone is cut with an ellipsis. */
export function wrapped(text: string, widest: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ').map((one) => shortened(one, widest))) {
    const longer = `${lines.at(-1) ?? ''} ${word}`;
    if (lines.length > 0 && textWidth(longer) <= widest) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

/** A text that ends with an ellipsis where it would be wider than this. */
export function shortened(text: string, widest: number, strong = false): string {
  if (textWidth(text, strong) <= widest) return text;
  const characters = [...text];
  while (characters.length > 1 && textWidth(`${characters.join('')}…`, strong) > widest) characters.pop();
  return `${characters.join('')}…`;
}

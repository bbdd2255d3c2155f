import type PDFDocument from 'pdfkit';
import { unzlibSync } from 'fflate';
import regular from '../generated/noto-sans-regular.js';
import semibold from '../generated/noto-sans-semibold.js';
import { covered } from '../generated/noto-sans-covered.js';

export type Doc = InstanceType<typeof PDFDocument>;
export type Weight = 'regular' | 'strong';

/** Stands where the fonts lack a character. */
export const LACKING = '\ufffd';

/** Puts the fonts into a document. */
export function addFonts(doc: Doc): void {
  doc.registerFont('regular', bytesOf(regular));
  doc.registerFont('strong', bytesOf(semibold));
}

/** One line of text that the fonts can set: composed, without control characters, with a sign for what they lack. */
export function settable(text: string): string {
  return [...oneLine(text)].map((character) => (isCovered(character) ? character : LACKING)).join('');
}

/** The characters of a text that the fonts lack, each once. */
export function lackingIn(text: string): readonly string[] {
  return [...new Set(oneLine(text))].filter((character) => !isCovered(character));
}

/** Signs of the product's own words that the fonts lack, in other words. */
const instead: Readonly<Record<string, string>> = { '√': 'root of ', '≤': 'at most ', '≥': 'at least ', '≈': 'about ' };

function oneLine(text: string): string {
  return text
    .normalize('NFC')
    .replace(/[√≤≥≈]/g, (sign) => instead[sign]!)
    .replace(/[\t-\r\u0085\u2028\u2029]+/g, ' ')
    .replace(/\p{C}/gu, '');
}

function isCovered(character: string): boolean {
  const code = character.codePointAt(0)!;
  return covered.some(([first, last]) => code >= first && code <= last);
}

function bytesOf(base64: string): ArrayBuffer {
  const packed = Uint8Array.from(atob(base64), (character) => character.charCodeAt(0));
  return unzlibSync(packed).slice().buffer;
}

/** Widths of words, measured once for each. */
export class Measure {
  private readonly known = new Map<string, number>();

  constructor(private readonly doc: Doc) {}

  /** Points. */
  width(text: string, weight: Weight, size: number): number {
    const key = `${weight} ${text}`;
    const found = this.known.get(key) ?? this.doc.font(weight).fontSize(100).widthOfString(text) / 100;
    this.known.set(key, found);
    return found * size;
  }
}

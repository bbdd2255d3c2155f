import type { DisplayUnit } from '@boothwright/fit';
import { unitsOf, type Units } from '../words.js';

/** Lengths as the report writes them, but never broken between two lines: a number and its unit stay together. */
export function drawingUnits(show: DisplayUnit): Units {
  const { length, range } = unitsOf(show);
  return { length: (value) => unbroken(length(value)), range: (value) => unbroken(range(value)) };
}

function unbroken(text: string): string {
  return text.replaceAll(' ', '\u00a0');
}

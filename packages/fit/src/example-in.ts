import { typeLength } from './format.js';
import { FOOT, INCH, type DisplayUnit, type Millimetres } from './units.js';

/** An example as it would be typed in a file of another unit: its lengths, which are in inches and feet, as round ones near them. */
export function exampleIn(example: string, show: DisplayUnit): string {
  if (show === 'in' || show === 'ft' || example.startsWith('"')) return example;
  return example
    .replace(FEET_AND_INCHES, (_, feet: string, inches: string) =>
      round(Number(feet) * FOOT + Number(inches) * INCH, show),
    )
    .replace(LENGTH, (_, whole: string | undefined, top: string, bottom: string | undefined, unit: string) => {
      const count = Number(whole ?? 0) + Number(top) / Number(bottom ?? 1);
      return round(count * (unit === 'ft' ? FOOT : INCH), show);
    });
}

/** `5'3"` */
const FEET_AND_INCHES = /(?<!\w)(\d+)'(\d+(?:\.\d+)?)"/g;
/** `41 1/2in`, `3/4in`, `14ft`; nothing inside a name. */
const LENGTH = /(?<!\w)(?:(\d+) (?=\d+\/))?(\d+(?:\.\d+)?)(?:\/(\d+))?(in|ft)\b/g;

function round(length: Millimetres, show: DisplayUnit): string {
  if (length >= 10 * FOOT) return `${Number((length / 1000).toFixed(1))}m`;
  const step = length < 100 ? 5 : 10;
  return typeLength(Math.round(length / step) * step, show);
}

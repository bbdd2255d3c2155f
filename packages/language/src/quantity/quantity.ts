import { FOOT, INCH, POUND } from '@boothwright/fit';

/** What a quantity says, in the units of the computation. `text` is a clean spelling where the typed one is not. */
export type Quantity =
  | { readonly is: 'length'; readonly value: number; readonly curly?: string }
  | { readonly is: 'angle'; readonly value: number }
  | { readonly is: 'share'; readonly value: number }
  | { readonly is: 'weight'; readonly value: number }
  | { readonly is: 'pixels'; readonly value: number }
  | { readonly is: 'ratio'; readonly across: number; readonly down: number }
  | { readonly is: 'size'; readonly across: number; readonly down: number }
  | { readonly is: 'number'; readonly value: number }
  | Malformed;

/** A near miss: what is wrong, and spellings that may be meant. */
export interface Malformed {
  readonly is: 'malformed';
  readonly fault: 'unit' | 'inch mark' | 'decimal comma' | 'fraction' | 'number';
  /** The part that is wrong. */
  readonly part: string;
  readonly suggestions: readonly string[];
}

const amount = String.raw`(?:\d+(?:[ \t]+|-)\d+\/\d+|\d+\/\d+|\d*[ \t]?[¼-¾⅐-⅞]|\d+(?:\.\d+)?|\.\d+)`;
const feetMark = String.raw`(?:['’′]|[ \t]*(?:feet|foot|ft))`;
const inchMark = String.raw`(?:''|’’|["“”″]|[ \t]*(?:inches|inch|in))`;
const feetAndInches = new RegExp(`^(${amount})${feetMark}(?:[ \\t]+|-)?(${amount})${inchMark}$`);
const feetAndSomething = new RegExp(`^(${amount}${feetMark})[ \\t]*(${amount})$`);
const measured = new RegExp(`^(${amount})[ \\t]*(\\D+)$`);
const bare = new RegExp(`^${amount}$`);
const pair = /^(\d+(?:\.\d+)?)[ \t]*([x×X:])[ \t]*(\d+(?:\.\d+)?)$/;
const decimalComma = /^(\d+),(\d+)[ \t]*([^\d\s]*)$/;
const numberAndUnit = /^(\d+(?:\.\d+)?)([^\d.].*)$/;

const lengths: Record<string, number> = {
  mm: 1,
  millimetre: 1,
  millimetres: 1,
  millimeter: 1,
  millimeters: 1,
  cm: 10,
  centimetre: 10,
  centimetres: 10,
  centimeter: 10,
  centimeters: 10,
  m: 1000,
  metre: 1000,
  metres: 1000,
  meter: 1000,
  meters: 1000,
  in: INCH,
  inch: INCH,
  inches: INCH,
  '"': INCH,
  '“': INCH,
  '”': INCH,
  '″': INCH,
  "''": INCH,
  '’’': INCH,
  ft: FOOT,
  foot: FOOT,
  feet: FOOT,
  "'": FOOT,
  '’': FOOT,
  '′': FOOT,
};
const weights: Record<string, number> = {
  kg: 1,
  kilogram: 1,
  kilograms: 1,
  lb: POUND,
  lbs: POUND,
  pound: POUND,
  pounds: POUND,
};
const angles = new Set(['deg', 'degree', 'degrees', '°']);

/** Reads one quantity as the lexer cut it out. Never throws: what cannot be read is `malformed`. */
export function parseQuantity(text: string): Quantity {
  const sign = /^[-−]/.test(text) ? -1 : 1;
  const body = sign < 0 ? text.slice(1) : text;
  const quantity = parseUnsigned(body);
  return sign > 0 || !('value' in quantity) ? quantity : { ...quantity, value: -quantity.value };
}

function parseUnsigned(text: string): Quantity {
  const pairOf = pair.exec(text);
  if (pairOf) {
    const [across, down] = [Number(pairOf[1]), Number(pairOf[3])];
    return { is: pairOf[2] === ':' ? 'ratio' : 'size', across, down };
  }
  const both = feetAndInches.exec(text);
  if (both)
    return finite(
      withCurly({ is: 'length', value: readAmount(both[1]!) * FOOT + readAmount(both[2]!) * INCH }, text),
      text,
    );
  if (bare.test(text)) return finite({ is: 'number', value: readAmount(text) }, text);
  const feet = feetAndSomething.exec(text);
  if (feet) {
    const inches = /[a-z]/.test(feet[1]!) ? 'in' : '"';
    return malformed('inch mark', feet[2]!, [straighten(text) + inches]);
  }
  const one = measured.exec(text);
  return (one && parseMeasured(one[1]!, one[2]!, text)) ?? nearMiss(text);
}

function parseMeasured(number: string, unit: string, text: string): Quantity | undefined {
  const value = readAmount(number);
  if (Object.hasOwn(lengths, unit))
    return finite(withCurly({ is: 'length', value: value * lengths[unit]! }, text), text);
  if (Object.hasOwn(weights, unit)) return finite({ is: 'weight', value: value * weights[unit]! }, text);
  if (angles.has(unit)) return { is: 'angle', value };
  if (unit === '%') return { is: 'share', value: value / 100 };
  if (unit === 'px') return { is: 'pixels', value };
  return undefined;
}

/** `41 1/2`, `41-1/2`, `41½`, `1/2`, `.5`, `41.5`. */
function readAmount(text: string): number {
  const vulgar = /^(\d*)[ \t]?([¼-¾⅐-⅞])$/.exec(text);
  if (vulgar) {
    const [top, bottom] = vulgar[2]!.normalize('NFKD').split('⁄');
    return Number(`0${vulgar[1]}`) + Number(top) / Number(bottom);
  }
  const mixed = /^(?:(\d+)(?:[ \t]+|-))?(\d+)\/(\d+)$/.exec(text);
  return mixed ? Number(mixed[1] ?? 0) + Number(mixed[2]) / Number(mixed[3]) : Number(text);
}

/** Free of the noise of binary fractions; a fraction with a zero below it is no number. */
function finite(quantity: Quantity, text: string): Quantity {
  if (!('value' in quantity)) return quantity;
  if (!Number.isFinite(quantity.value)) return malformed('fraction', text, []);
  return { ...quantity, value: Number(quantity.value.toFixed(6)) };
}

function withCurly(quantity: { is: 'length'; value: number }, text: string): Quantity {
  return /[“”’]/.test(text) ? { ...quantity, curly: straighten(text) } : quantity;
}

/** The same text with the marks that a typewriter has. */
export function straighten(text: string): string {
  return text.replace(/’’/g, '"').replace(/[“”]/g, '"').replace(/[‘’]/g, "'");
}

function nearMiss(text: string): Malformed {
  const comma = decimalComma.exec(text);
  if (comma) {
    const [, whole, rest, unit] = comma;
    return malformed('decimal comma', text, [`${whole}.${rest}${unit}`]);
  }
  if (text.includes('/')) return malformed('fraction', text, []);
  const misspelt = numberAndUnit.exec(text);
  if (misspelt) return malformed('unit', misspelt[2]!.trim(), []);
  return malformed('number', text, []);
}

function malformed(fault: Malformed['fault'], part: string, suggestions: readonly string[]): Malformed {
  return { is: 'malformed', fault, part, suggestions };
}

import type { DisplayUnit } from '@boothwright/fit';
import { parseQuantity } from '../quantity/quantity.js';
import type { Shape } from '../vocabulary/entries.js';

/** The units that a bare number may take in a property of that shape, the file's own first. */
export function unitsFor(shape: Shape, number: string, show: DisplayUnit): string[] {
  const isInches = show === 'in' || show === 'ft';
  switch (shape.is) {
    case 'length':
      return lengthUnits(isInches, show).filter((unit) => isWithin(number + unit, shape));
    case 'point':
      return lengthUnits(isInches, isInches ? 'ft' : 'm').filter((unit) => unit !== 'mm');
    case 'angle':
      return ['deg'];
    case 'share':
      return ['%'];
    case 'weight':
      return isInches ? ['lb', 'kg'] : ['kg', 'lb'];
    case 'text size':
      return ['px', 'mm'];
    default:
      return [];
  }
}

function lengthUnits(isInches: boolean, first: DisplayUnit): string[] {
  const all = isInches ? ['in', 'ft', 'cm', 'mm', 'm'] : ['cm', 'mm', 'm', 'in', 'ft'];
  return [first, ...all.filter((unit) => unit !== first)];
}

function isWithin(text: string, { min, max }: { readonly min: number; readonly max: number }): boolean {
  const quantity = parseQuantity(text);
  return quantity.is === 'length' && quantity.value >= min && quantity.value <= max;
}

import type { Crowd, DimensionName, Given, Named, Operator, Sex } from '@boothwright/fit';
import { entryOf } from '../vocabulary/vocabulary.js';
import type { Sheet } from './sheet.js';

export function readOperator(sheet: Sheet, named: Named): Operator {
  const measured: Partial<Record<DimensionName, Given<number>>> = {};
  for (const { key, dimension, shape } of entryOf('operator').properties) {
    const given = dimension && (shape.is === 'weight' ? sheet.number(key) : sheet.length(key));
    if (given) measured[dimension] = given;
  }
  const stature = sheet.meaning('stature')?.meaning;
  return {
    ...named,
    sex: sheet.word<Sex>('body'),
    measured,
    statureIsReported: stature?.is === 'length' && stature.reported,
  };
}

export function readCrowd(sheet: Sheet, named: Named): Crowd {
  return {
    ...named,
    women: sheet.numberOr('women'),
    cover: sheet.numberOr('cover'),
    stature: sheet.range('stature'),
    ages: sheet.ages('age'),
  };
}

import { say } from '@boothwright/fit';
import type { Quantity } from '../quantity/quantity.js';
import type { PropertyEntry } from '../vocabulary/entries.js';

/** What a property wants, as a sentence says it. */
export function needOf({ shape }: PropertyEntry): string {
  switch (shape.is) {
    case 'length':
      return shape.range === 'wanted' ? say`a range of lengths` : say`a length`;
    case 'point':
      return say`two lengths, from the left wall and from the back wall`;
    case 'angle':
      return say`an angle`;
    case 'share':
      return say`a share`;
    case 'weight':
      return say`a weight`;
    case 'count':
      return say`a whole number`;
    case 'ages':
      return say`an age or a range of ages in years`;
    case 'text size':
      return say`a font size in px or a length`;
    case 'aspect':
      return say`a ratio`;
    case 'pixels':
      return say`pixels across and down`;
    case 'words':
      return shape.many ? say`one or more of ${shape.words.join(', ')}` : say`one of ${shape.words.join(', ')}`;
    case 'names':
      return say`a name`;
    case 'wall':
      return say`a wall`;
    case 'sides':
      return say`two things that bound it`;
    case 'text':
      return say`a text in quotes`;
    case 'flag':
      return 'nothing';
  }
}

/** What a quantity is called in a message. */
export function called(quantity: Quantity): string {
  switch (quantity.is) {
    case 'length':
      return say`a length`;
    case 'angle':
      return say`an angle`;
    case 'share':
      return say`a share`;
    case 'weight':
      return say`a weight`;
    case 'pixels':
      return say`a number of pixels`;
    case 'ratio':
      return say`a ratio`;
    case 'size':
      return say`a size in pixels`;
    case 'number':
      return say`a bare number`;
    case 'malformed':
      return say`not a number`;
  }
}

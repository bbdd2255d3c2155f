import { expect, test } from 'vitest';
import { exampleIn } from './example-in.js';

test.each([
  ['28in..32in', 'mm', '710mm..810mm'],
  ['41 1/2in', 'cm', '105cm'],
  ['14ft, 6ft', 'm', '4.3m, 183cm'],
  [`5'3"`, 'cm', '160cm'],
  ['25mm', 'in', '25mm'],
  ['18in below seat', 'ft', '18in below seat'],
  ['"in 12in"', 'cm', '"in 12in"'],
  [`headroom 7'6"`, 'm', 'headroom 229cm'],
  ['height 3/4in', 'mm', 'height 20mm'],
  ['steps { risers 2  tread 13in  handrail }', 'cm', 'steps { risers 2  tread 33cm  handrail }'],
  ['flame-certificate "NFPA 701, in the hall file"', 'cm', 'flame-certificate "NFPA 701, in the hall file"'],
  ['place Desk12in at 14ft, 6ft', 'cm', 'place Desk12in at 4.3m, 183cm'],
] as const)('the example %s in %s is %s', (example, show, expected) => {
  expect(exampleIn(example, show)).toBe(expected);
});

const head = 'booth "Hall" { }\nroom { width 40ft  depth 60ft }\n';
const many = (count: number, line: (n: number) => string) => Array.from({ length: count }, (_, n) => line(n));
const people = (count: number) => many(count, (n) => `P${n}`);
const operators = (count: number) => many(count, (n) => `operator P${n} { stature ${1500 + (n % 400)}mm }`).join('\n');
const place = 'stool T { seat 28in }\ndesk D { height 40in  width 60in  depth 30in }\n';

/** A text that nobody means well with, what is said of it, and whether the rest of it is still checked. */
export interface Hostile {
  readonly name: string;
  readonly text: string;
  /** Of the first message, or of one of them; nothing for a text that is good. */
  readonly says: RegExp | undefined;
}

export const hostile: readonly Hostile[] = [
  {
    name: 'ten megabytes',
    text: head + '// hall\n'.repeat(1_300_000),
    says: /too large: it may have 1,000,000 characters/,
  },
  {
    name: 'one line of a megabyte',
    text: `${head.replaceAll('\n', ' ')}${many(17_000, (n) => `desk D${n} { width 60in  depth 30in  height 40in }`).join(' ')}`,
    says: undefined,
  },
  {
    name: 'a line of more',
    text: `booth "${'a '.repeat(600_000)}" { }`,
    says: /too large: it may have 1,000,000 characters/,
  },
  {
    name: 'a hundred thousand declarations',
    text: head + many(100_000, () => 'desk A{}').join('\n'),
    says: /too large: it may have 250,000 words and marks/,
  },
  {
    name: 'a name of half a megabyte',
    text: `${head}desk ${'a'.repeat(500_000)} { }`,
    says: /word is too long: it may have 2,000 characters/,
  },
  {
    name: 'a number of half a megabyte',
    text: `${head}desk A { width ${'9'.repeat(500_000)}in }`,
    says: /word is too long/,
  },
  { name: 'half a megabyte of spaces', text: `${head}desk A {${' '.repeat(500_000)}width 60in }`, says: undefined },
  { name: 'comments without end', text: head + '//\n'.repeat(30_000), says: /may have 20,000 comments/ },
  { name: 'a comment that does not end', text: `${head}/* ${'x '.repeat(400_000)}`, says: /comment is never closed/ },
  {
    name: 'deep nesting',
    text: head + 'desk A { tray { '.repeat(8000) + '} }'.repeat(8000),
    says: /`tray`|is not closed/,
  },
  { name: 'braces alone', text: '{'.repeat(100_000), says: /more faults in this file/ },
  { name: 'closing braces alone', text: '}'.repeat(100_000), says: /99,000 more faults|99000 more faults/ },
  {
    name: 'a list of a hundred thousand',
    text: `${head}desk A { width ${','.repeat(100_000)} }`,
    says: /block is too long: it may have 2,000 words/,
  },
  { name: 'flags without end', text: `${head}desk A { ${'closed '.repeat(100_000)} }`, says: /block is too long/ },
  {
    name: 'more people than a workstation has',
    text: `${head}${operators(500)}\n${place}workstation W { desk D  stool T  operators ${people(500).join(', ')} }`,
    says: /more than 100 people can share a workstation/,
  },
  {
    name: 'as many people at a workstation as there may be',
    text:
      `${head}${operators(100)}\nstool Tall { seat 24in..33in }\ndesk D { height 38in  width 60in  depth 30in }\n` +
      `workstation W { desk D  stool Tall  posture sit, stand  operators ${people(100).join(', ')} }`,
    says: undefined,
  },
  {
    name: 'names that objects have',
    text: names('__proto__', 'constructor', 'toString', 'hasOwnProperty', 'valueOf'),
    says: undefined,
  },
  {
    name: 'control characters',
    text: 'booth "Ha\u0007ll" { }\u001b',
    says: /control character that is not seen \(U\+0007\)/,
  },
  { name: 'a turned text', text: 'booth "\u202elaH" { } // \u2066', says: /\(U\+202E\) turns the order/ },
  { name: 'every space of Unicode', text: spaces(), says: undefined },
  { name: 'half of a character', text: 'booth "\ud800" { }', says: undefined },
  {
    name: 'half of a character in a path',
    text: 'import "hall\udfff.booth"\nbooth "Hall" { }',
    says: /holds half of a character|no readable file `hall\ufffd\.booth`/,
  },
  {
    name: 'a number beyond all',
    text: `${head}desk A { width 1e400in  depth ${'9'.repeat(400)}in }`,
    says: /`e400in` is no unit/,
  },
  { name: 'a number below all', text: `${head}desk A { width 0.0000001in }`, says: /plausible is/ },
  { name: 'a fraction over nothing', text: `${head}desk A { width 1/0in }`, says: /1\/0/ },
];

function names(...list: readonly string[]): string {
  const declared = list.map(
    (name) => `desk ${name} { width 60in  depth 30in  height 40in }\noperator ${name} { stature 5'6" }`,
  );
  const used = list.map(
    (name, n) => `workstation ${name} { desk ${name}  operators ${name} }\nplace ${name} at ${6 * n}ft, 9ft`,
  );
  return [head, ...declared, ...used].join('\n');
}

function spaces(): string {
  const all =
    '\t\v\f \u00a0\u1680\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u2028\u2029\u202f\u205f\u3000\ufeff';
  return [...all]
    .filter((space) => space !== '\v' && space !== '\f')
    .map((space, n) => `desk${space}D${n}${space}{${space}width${space}60in${space}}`)
    .join('\n');
}

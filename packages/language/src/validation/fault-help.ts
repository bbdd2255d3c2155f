import type { IssueCode } from './issue.js';

/** What a code of the text means, what to do, and a text that has the fault with the same text mended. */
export interface FaultHelp {
  readonly title: string;
  readonly means: string;
  readonly instead: string;
  /** Absent where no text causes it. */
  readonly example?: { readonly wrong: string; readonly right: string };
}

const desk = 'desk Left { width 60in  depth 27in  height 40in }';
const stool = 'stool Tall { seat 26in..32in }';

/** Help for every code that the language gives of the text itself. */
export const faultHelp: Record<IssueCode, FaultHelp> = {
  syntax: {
    title: 'Text that cannot be read',
    means: 'A mark or a word stands here that the language has no place for.',
    instead: 'Write what the message asks for, or take away what stands there.',
    example: { wrong: 'desk Left { width: 60in }', right: 'desk Left { width 60in }' },
  },
  'stray-brace': {
    title: 'A closing brace too many',
    means: 'This } closes no block: every block before it is closed already.',
    instead: 'Take the brace away, or write the block’s first line before it.',
    example: { wrong: `${desk} }`, right: desk },
  },
  'missing-brace': {
    title: 'A block without its brace',
    means: 'A block is open that is not closed, or what stands here needs a block in braces after it.',
    instead: 'Close the block with } where it ends, or open one with {.',
    example: { wrong: 'desk Left { width 60in', right: 'desk Left { width 60in }' },
  },
  'open-comment': {
    title: 'A comment that does not end',
    means: 'A comment begins here with /* and nothing closes it, so that all after it is lost.',
    instead: 'Write */ where the comment ends.',
    example: { wrong: `${desk}\n/* bought last year`, right: `${desk}\n/* bought last year */` },
  },
  'open-text': {
    title: 'A text without its closing quote',
    means: 'A text in quotes ends on the line on which it begins.',
    instead: 'Write the closing quote where the text ends.',
    example: { wrong: 'booth "Larkfield Hall {\n}', right: 'booth "Larkfield Hall" {\n}' },
  },
  'curly-quotes': {
    title: 'Curly quotes',
    means: 'A text stands between straight quotes; these are the curly ones of a word processor.',
    instead: 'Write straight quotes. The light bulb does it.',
    example: { wrong: 'booth “Larkfield Hall” { }', right: 'booth "Larkfield Hall" { }' },
  },
  'missing-value': {
    title: 'A value is missing',
    means: 'A word that needs a value, or a comma that needs another, has none after it.',
    instead: 'Write the value, as the message shows it.',
    example: { wrong: 'desk Left { width }', right: 'desk Left { width 60in }' },
  },
  'stray-value': {
    title: 'A value that belongs to nothing',
    means: 'A value stands where no property takes it, or a comma between two values is missing.',
    instead: 'Say which property it is of, put the comma, or take the value away.',
    example: { wrong: 'desk Left { 60in }', right: 'desk Left { width 60in }' },
  },
  'no-unit': {
    title: 'A number without its unit',
    means: 'Every length, angle and weight says its unit, so that no inch is taken for a centimetre.',
    instead:
      'Write the unit right after the number: in, ft, mm, cm, m; deg; lb, kg. The light bulb offers the likeliest.',
    example: { wrong: 'desk Left { width 60 }', right: 'desk Left { width 60in }' },
  },
  'unknown-unit': {
    title: 'A unit that is not known',
    means: 'The letters after this number are no unit of the language.',
    instead: 'Write one of in, ft, mm, cm, m for a length; deg for an angle; lb, kg for a weight.',
    example: { wrong: 'desk Left { width 2yd }', right: 'desk Left { width 60in }' },
  },
  'malformed-number': {
    title: 'A number that cannot be read',
    means: 'This looks like a number, but it is not written like one.',
    instead: 'Write a decimal point, as 27.5in, or a fraction, as 27 1/2in.',
    example: { wrong: 'desk Left { width 60,5in }', right: 'desk Left { width 60.5in }' },
  },
  'wrong-quantity': {
    title: 'A value of the wrong kind',
    means: 'A length stands where an angle is wanted, a number where a word is, or the like.',
    instead: 'Write the kind of value that the message names.',
    example: { wrong: 'desk Left { width 60kg }', right: 'desk Left { width 60in }' },
  },
  'out-of-bounds': {
    title: 'A value that cannot be meant',
    means: 'The value is far outside what such a thing can be, most often by a slip or a wrong unit.',
    instead: 'Write a value within the bounds that the message names.',
    example: { wrong: 'desk Left { height 40m }', right: 'desk Left { height 40in }' },
  },
  'range-reversed': {
    title: 'A range from high to low',
    means: 'A range runs from its lower end to its higher one.',
    instead: 'Change the ends about. The light bulb does it.',
    example: { wrong: 'stool Tall { seat 32in..26in }', right: stool },
  },
  'range-unwanted': {
    title: 'A range where one value is wanted',
    means: 'This is fixed when it is built: it has one value.',
    instead: 'Write the one value.',
    example: { wrong: 'desk Left { width 60in..66in }', right: 'desk Left { width 60in }' },
  },
  'too-many-values': {
    title: 'More values than are wanted',
    means: 'The property takes fewer values than stand here.',
    instead: 'Keep as many as the message says.',
    example: { wrong: 'desk Left { width 60in, 66in }', right: 'desk Left { width 60in }' },
  },
  'unwanted-word': {
    title: 'A word that is not wanted here',
    means: 'A word stands after the value that the property has no use for.',
    instead: 'Take the word away, or write it as the message shows.',
    example: { wrong: 'desk Left { width 60in below seat }', right: 'desk Left { width 60in }' },
  },
  'unknown-word': {
    title: 'A word that is none of the choices',
    means: 'The property takes one of a few words, and this is none of them.',
    instead: 'Write one of the words that the message names.',
    example: { wrong: 'booth "Hall" { show inches }', right: 'booth "Hall" { show in }' },
  },
  'unknown-property': {
    title: 'A property that is not known',
    means: 'Nothing of that name can be said here.',
    instead: 'Mend the spelling, or look at what completion offers in this block.',
    example: { wrong: 'desk Left { widht 60in }', right: 'desk Left { width 60in }' },
  },
  misplaced: {
    title: 'Something in the wrong place',
    means: 'The language knows this, but it belongs in another block, or outside of any.',
    instead: 'Move it to where the message says.',
    example: { wrong: 'desk Left { seat 26in }', right: 'desk Left { width 60in }\nstool Tall { seat 26in }' },
  },
  'duplicate-property': {
    title: 'Said twice',
    means: 'The same thing is said twice in one block, and only one can be true.',
    instead: 'Keep one.',
    example: { wrong: 'desk Left { width 60in  width 66in }', right: 'desk Left { width 60in }' },
  },
  'duplicate-block': {
    title: 'A second block where there can be one',
    means: 'A file has one booth and one room; a block has one of most things in it.',
    instead: 'Put all into the first one.',
    example: { wrong: 'room { width 30ft }\nroom { depth 44ft }', right: 'room { width 30ft  depth 44ft }' },
  },
  'duplicate-name': {
    title: 'A name that is taken',
    means: 'Two things that are looked up together bear one name.',
    instead: 'Choose another name for one of them.',
    example: {
      wrong: 'desk Left { width 60in }\ndesk Left { width 66in }',
      right: 'desk Left { width 60in }\ndesk Right { width 66in }',
    },
  },
  'missing-name': {
    title: 'A name is missing',
    means: 'What stands here must be named, so that other parts of the file can speak of it.',
    instead: 'Write a name after the word, or a title in quotes after `booth`.',
    example: { wrong: 'desk { width 60in }', right: 'desk Left { width 60in }' },
  },
  'unwanted-name': {
    title: 'A name that is not wanted',
    means: 'There is one such thing, and nothing speaks of it by name.',
    instead: 'Take the name away.',
    example: { wrong: 'room Main { width 30ft }', right: 'room { width 30ft }' },
  },
  'reserved-name': {
    title: 'A word of the language as a name',
    means: 'This word has a meaning of its own here, so nothing can be called by it.',
    instead: 'Choose another name; a capital letter at its beginning is enough.',
    example: { wrong: 'desk booth { width 60in }', right: 'desk Booth { width 60in }' },
  },
  'unknown-name': {
    title: 'A name that nothing bears',
    means: 'Nothing in this file, or in a file that it imports, is called that.',
    instead: 'Mend the spelling, declare the thing, or import the file that does.',
    example: { wrong: 'workstation Sound { desk Left }', right: `${desk}\nworkstation Sound { desk Left }` },
  },
  'wrong-kind': {
    title: 'The name of another kind of thing',
    means: 'The name is known, but what it names is not what is wanted here.',
    instead: 'Write the name of a thing of the kind that the message names.',
    example: {
      wrong: `${stool}\nworkstation Sound { desk Tall }`,
      right: `${stool}\n${desk}\nworkstation Sound { desk Left  stool Tall }`,
    },
  },
  'repeated-name': {
    title: 'A name that is given twice',
    means: 'One thing is named twice in a list, placed twice, or imported twice.',
    instead: 'Keep one.',
    example: { wrong: `${desk}\nplace Left, Left at 10ft, 6ft`, right: `${desk}\nplace Left at 10ft, 6ft` },
  },
  'unknown-check': {
    title: 'A check that is not known',
    means: '`accept` and `limit` name a check, by the code that its findings bear.',
    instead: 'Mend the spelling; completion offers the codes of all checks.',
    example: {
      wrong: 'booth "Hall" { accept skirt-dorp because "hemmed on site" }',
      right: 'booth "Hall" { accept skirt-drop because "hemmed on site" }',
    },
  },
  'no-single-limit': {
    title: 'A check that takes no limit of the file’s own',
    means: 'The check has bounds on both sides, or of a body: one number cannot stand for them.',
    instead: 'Take the limit away. Accept the finding with a reason instead.',
    example: {
      wrong: 'booth "Hall" { limit thigh-room 3in because "slim operators" }',
      right: 'booth "Hall" { accept thigh-room because "slim operators" }',
    },
  },
  'missing-reason': {
    title: 'A reason is missing',
    means: 'Whoever reads the report must see why a finding was accepted, or a limit changed.',
    instead: 'Write `because` and the reason in quotes. The report repeats it.',
    example: {
      wrong: 'booth "Hall" { accept skirt-drop }',
      right: 'booth "Hall" { accept skirt-drop because "hemmed on site" }',
    },
  },
  'unused-acceptance': {
    title: 'An acceptance of nothing',
    means: 'The check has nothing to say against the thing any more, so there is nothing left to accept.',
    instead: 'Remove it: else it would hide what the check may find later.',
    example: {
      wrong: `booth "Hall" { }\n${desk}\nskirt Front { on Left  drop 39in }\naccept skirt-drop on Front because "hemmed"`,
      right: `booth "Hall" { }\n${desk}\nskirt Front { on Left  drop 45in }\naccept skirt-drop on Front because "hemmed"`,
    },
  },
  'import-path': {
    title: 'A path that cannot be imported',
    means: 'An import names a booth file beside this one, by a path that stays within reach.',
    instead: 'Write the path from this file, as in `import "furniture.booth"`.',
    example: { wrong: 'import "/furniture.booth"', right: 'import "furniture.booth"' },
  },
  'import-missing': {
    title: 'An imported file that is not there',
    means: 'No file that can be read lies where this import points.',
    instead: 'Mend the path, or put the file there.',
    example: { wrong: 'import "furnitur.booth"', right: 'import "furniture.booth"' },
  },
  'import-circle': {
    title: 'An import that goes round in a circle',
    means: 'The file that is imported imports this one, itself or through others.',
    instead: 'Remove one of the imports that the message lists.',
    example: { wrong: 'import "hall.booth"', right: 'import "furniture.booth"' },
  },
  'hidden-character': {
    title: 'A character that is not seen',
    means: 'The text holds a character that shows nothing, but turns the order of what is read or drives a terminal.',
    instead: 'Remove it; the quick fix does.',
    example: { wrong: 'booth "Hall\u202e" { }', right: 'booth "Hall" { }' },
  },
  'too-large': {
    title: 'More than is read',
    means:
      'A file, a word, a list or a set of imports exceeds what this program takes on; the message says how much may be.',
    instead: 'Split what is too large. People who are many are a crowd.',
    example: { wrong: `desk ${'Long'.repeat(600)} { width 60in  depth 27in  height 40in }`, right: desk },
  },
  'more-faults': {
    title: 'More faults than are shown',
    means: 'The file has more faults than anybody reads; the first are shown.',
    instead: 'Mend the first ones: the rest often goes with them.',
    example: { wrong: '} '.repeat(1002), right: desk },
  },
  'checks-stopped': {
    title: 'The checks stopped',
    means: 'A fault of the program, not of your file, stopped the checks. Nothing was checked but the text.',
    instead: 'Change what you wrote last, to get the checks back; and report the fault with the file, if you can.',
  },
};

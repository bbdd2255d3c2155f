import { AstUtils, GrammarAST } from 'langium';
import { checks, dimensionNames } from '@boothwright/fit';
import { describe, expect, test } from 'vitest';
import { BoothLanguageGrammar } from '../generated/grammar.js';
import { analyseText, silent } from '../testing/analysis.js';
import { issueCodes } from '../validation/issue.js';
import type { BlockEntry, Kind, PropertyEntry } from './entries.js';
import { entryOf, spellings, vocabulary } from './vocabulary.js';

function keywordsOf(...rules: string[]): string[] {
  const { rules: all } = BoothLanguageGrammar();
  const words = rules.flatMap((name) => {
    const rule = all.find((each) => each.name === name);
    if (!rule) throw new Error(`The grammar has no rule ${name}.`);
    return AstUtils.streamAllContents(rule).filter(GrammarAST.isKeyword).toArray();
  });
  return words.map(({ value }) => value).sort();
}

const properties = vocabulary.flatMap((entry) => entry.properties.map((property) => ({ entry, property })));
const keysWith = (fits: (shape: PropertyEntry['shape']['is']) => boolean) =>
  [
    ...new Set(
      properties.filter(({ property }) => fits(property.shape.is)).flatMap(({ property }) => spellings(property)),
    ),
  ].sort();

describe('the grammar and the vocabulary have the same words', () => {
  test('for properties with values', () => {
    const named = new Set(['names', 'wall', 'sides', 'flag']);
    expect([...keywordsOf('PropertyKey'), 'cover', 'users'].sort()).toEqual(keysWith((is) => !named.has(is)));
  });

  test('for flags', () => {
    expect(keywordsOf('FlagKey')).toEqual(keysWith((is) => is === 'flag'));
  });

  test('for names', () => {
    expect(keywordsOf('NamesKey', 'KindNamesKey')).toEqual(keysWith((is) => is === 'names' || is === 'wall'));
  });

  test('for blocks', () => {
    const words = (fits: (entry: BlockEntry) => boolean) =>
      vocabulary
        .filter(fits)
        .map(({ word }) => word)
        .sort();
    expect([...keywordsOf('BlockKind'), 'place'].sort()).toEqual(words(({ within }) => within === 'file'));
    expect([...keywordsOf('NestedKind'), 'monitor'].sort()).toEqual(words(({ within }) => within !== 'file'));
  });
});

/** Something to refer to, of every kind that can be. */
const known = [
  'desk Left { }  desk Right { }  stool Tall { }  chair Office { }  monitor Lyrics { }',
  'operator Noor { }  operator Tobias { }  crowd Volunteers { }  walkway Behind { }',
].join('\n');

/** A whole file around what a block says. */
function fileWith(kind: Kind, inside: string): string {
  const { word, within, naming } = entryOf(kind);
  if (kind === 'place') return `${known}\nplace Left ${inside.startsWith('at') ? '' : 'at 1m, 1m '}${inside}`;
  const head = { title: `${word} "Title"`, name: `${word} Fresh`, none: word, reference: `${word} Lyrics` }[naming];
  const block = `${head} { ${inside} }`;
  return `${known}\n${within === 'file' ? block : fileWith(within, block).slice(known.length)}`;
}

describe('what the vocabulary shows as an example can be typed', () => {
  test.each(vocabulary.map((entry) => [entry.kind, entry] as const))('%s', async (kind, { example, within }) => {
    const text = within === 'file' ? example : fileWith(within, example);
    const { diagnostics } = await analyseText(within === 'file' ? withKnown(text) : text, silent);
    expect(diagnostics.map(({ message }) => message)).toEqual([]);
  });

  const cases = properties.flatMap(({ entry, property }) =>
    spellings(property).map((key) => [`${entry.kind} ${key}`, entry, property, key] as const),
  );
  test.each(cases)('%s', async (_, { kind }, { example }, key) => {
    const { diagnostics } = await analyseText(fileWith(kind, `${key} ${example}`), silent);
    expect(diagnostics.map(({ message }) => message)).toEqual([]);
  });

  const defaults = properties.filter(({ property }) => property.default !== undefined && property.shape.is !== 'flag');
  test.each(defaults.map(({ entry, property }) => [`${entry.kind} ${property.key}`, entry, property] as const))(
    'default of %s',
    async (_, { kind }, property) => {
      const { diagnostics } = await analyseText(fileWith(kind, `${property.key} ${property.default!}`), silent);
      expect(diagnostics.map(({ message }) => message)).toEqual([]);
    },
  );
});

/** The known names that an example does not itself declare. */
function withKnown(example: string): string {
  const declared = /^(\w+) (\p{L}+)/u.exec(example);
  return `${known.replaceAll(new RegExp(`${declared?.[1] ?? '!'} ${declared?.[2] ?? '!'} \\{ \\}`, 'g'), '')}\n${example}`;
}

test('every body dimension can be measured', () => {
  const dimensions = entryOf('operator').properties.flatMap(({ dimension }) => dimension ?? []);
  expect([...dimensions].sort()).toEqual([...dimensionNames].sort());
});

test('every check can be accepted by its id, and no fault of the text shares an id with a check', async () => {
  const text = checks.map(({ id }) => `accept ${id} because "known"`).join('\n');
  const { diagnostics } = await analyseText(text);
  expect(diagnostics.map(({ message }) => message)).toEqual([]);
  expect(checks.map(({ id }) => id).filter((id) => (issueCodes as readonly string[]).includes(id))).toEqual([]);
});

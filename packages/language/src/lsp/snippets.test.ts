import { EmptyFileSystem } from 'langium';
import { parseHelper } from 'langium/test';
import { describe, expect, test } from 'vitest';
import type { DisplayUnit } from '@boothwright/fit';
import { createBoothServices } from '../module.js';
import { analyseText, silent } from '../testing/analysis.js';
import { topLevel, vocabulary } from '../vocabulary/vocabulary.js';
import type { BoothFormatter } from './formatter.js';
import { smallBooths } from './small-booth.js';
import { declarationSnippet, plainText } from './snippets.js';

const { booth: services } = createBoothServices(EmptyFileSystem);
const parse = parseHelper(services);
const formatted = async (text: string) =>
  (services.lsp.Formatter as BoothFormatter).formatted(await parse(text), { tabSize: 2, insertSpaces: true });

describe('a whole small booth', () => {
  test.each(smallBooths().map(({ label, snippet }) => [label, plainText(snippet!)]))(
    '%s reads without a fault, and nothing in it fails',
    async (_, text) => {
      const { diagnostics, assessment } = await analyseText(text);
      const hard = diagnostics.filter(({ severity }) => severity === 'error' || severity === 'warning');
      expect(hard).toEqual([]);
      expect(assessment!.findings.filter(({ verdict }) => verdict === 'pass').length).toBeGreaterThan(15);
      expect(assessment!.workstations[0]!.served.map(({ who, posture }) => `${who} ${posture}`)).toEqual([
        'Noor sit',
        'Noor stand',
      ]);
    },
  );

  test.each(smallBooths().map(({ label, snippet }) => [label, plainText(snippet!)]))(
    '%s is formatted',
    async (_, text) => {
      expect(await formatted(text)).toBe(text);
    },
  );
});

const known = `desk First { }  desk Second { }  stool Tall { }  chair Office { }  monitor Lyrics { }
operator Noor { }  crowd Volunteers { }  walkway Behind { }  rack Power { }
`;
const names: Readonly<Record<string, readonly string[]>> = {
  desk: ['First', 'Second'],
  stool: ['Tall'],
  chair: ['Office'],
  monitor: ['Lyrics'],
  operator: ['Noor'],
  crowd: ['Volunteers'],
  walkway: ['Behind'],
  rack: ['Power'],
};
const units: readonly DisplayUnit[] = ['in', 'ft', 'mm', 'cm', 'm'];

describe.each(vocabulary.filter(({ kind }) => kind !== 'place'))('a whole $word in $within', (entry) => {
  test.each(units)('in %s is formatted, and right beside what is there', async (show) => {
    const writing = {
      lexer: services.parser.Lexer,
      show,
      names: (kinds: readonly string[]) => kinds.flatMap((kind) => names[kind] ?? []),
    };
    const own = plainText(declarationSnippet(entry, writing)).replaceAll(
      /(?<=^\w+ )(Left|Tall|Office|Lyrics|Noor|Volunteers|Behind|Power)\b/g,
      (name) => (entry.naming === 'reference' ? name : `${name}Two`),
    );
    expect(await formatted(own)).toBe(`${own}\n`);
    const outer = topLevel.find(({ kind }) => kind === entry.within);
    const head = outer && (outer.naming === 'name' ? `${outer.word} Outer` : outer.word);
    const { diagnostics } = await analyseText(known + (head ? `${head} { ${own} }` : own), silent);
    expect(diagnostics.filter(({ code }) => code !== 'missing-name').map(({ message }) => message)).toEqual([]);
  });
});

test.each([
  ['desk ${1:Left} { width ${2:60in} }', 'desk Left { width 60in }'],
  ['desk ${2|Left,Right|}', 'desk Left'],
  ['because "$1"', 'because ""'],
  ['a $0b \\$ \\} ${1:x\\}y}', 'a b $ } x}y'],
])('the snippet %s is plainly %s', (snippet, expected) => {
  expect(plainText(snippet)).toBe(expected);
});

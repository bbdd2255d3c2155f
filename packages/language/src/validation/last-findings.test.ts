import { TextDocument } from 'langium';
import fc from 'fast-check';
import type { Diagnostic } from 'vscode-languageserver-types';
import { describe, expect, test } from 'vitest';
import { type FindingData, topicOf } from './findings.js';
import { LastFindings } from './last-findings.js';
import { analyseText } from '../testing/analysis.js';

const uri = 'file:///hall/hall.booth';
const create = (text: string) => TextDocument.create(uri, 'booth', 1, text);
const good = 'desk Left { height 40in }\nskirt Front { on Left  drop 45in }\ndesk Right { height 38in }\n';

function found(text: string, word: string): { topic: string; diagnostic: Diagnostic } {
  const document = create(text);
  const at = text.indexOf(word);
  const range = { start: document.positionAt(at), end: document.positionAt(at + word.length) };
  const data: FindingData = {
    check: 'skirt-drop',
    subject: 'Front',
    remedies: [{ title: '', changes: [], safe: true }],
  };
  const relatedInformation = [{ location: { uri, range }, message: 'here' }];
  return { topic: word, diagnostic: { range, message: word, data, relatedInformation } };
}

/** The words that findings on `words` still stand on after each of the texts in turn. */
function left(words: readonly string[], ...texts: readonly string[]): string[] {
  const last = new LastFindings();
  last.keep(
    create(good),
    words.map((word) => found(good, word)),
  );
  let standing: string[] = [];
  for (const text of texts) {
    const document = create(text);
    standing = last.staying(document, undefined).map(({ range, relatedInformation }) => {
      expect(relatedInformation!.map(({ location }) => location.range)).toEqual([range]);
      return document.getText(range);
    });
  }
  return standing;
}

const words = ['40in', 'Front', '45in', 'Right'];

describe('while a text cannot be read, a finding', () => {
  test.each([
    ['stays before what is typed', good.replace('38in', '3'), words],
    ['moves behind what is typed', good.replace('desk Left', 'desk  Lef{t'), words],
    ['moves with its line', `// more {\n${good}`, words],
    ['goes when its word is changed', good.replace('45in', '45i'), ['40in', 'Front', 'Right']],
    ['goes when its word grows', good.replace('45in', '45inx'), ['40in', 'Front', 'Right']],
    ['goes when its word grows in front', good.replace('45in', '145in'), ['40in', 'Front', 'Right']],
    ['stays when a space or a brace is typed next to it', good.replace('45in', '45in {'), words],
    ['goes with its line', good.replace(/skirt.*\n/, ''), ['40in', 'Right']],
    ['goes with the text', '', []],
  ])('%s', (_, text, expected) => {
    expect(left(words, text)).toEqual(expected);
  });

  test('follows edit after edit, each at another end of the text', () => {
    const first = good.replace('desk Right', 'desk { Right');
    expect(left(words, first, `// a\n${first}`, `// a\n${first}}`)).toEqual(words);
  });

  test('does not come back once its word was touched', () => {
    expect(left(words, good.replace('45in', '45i'), good.replace('desk Right', 'desk { Right'))).toEqual(
      words.filter((word) => word !== '45in'),
    );
  });

  test('offers no change that may no longer fit', () => {
    const last = new LastFindings();
    last.keep(create(good), [found(good, '45in')]);
    const [diagnostic] = last.staying(create(`${good}{`), undefined);
    expect((diagnostic!.data as FindingData).remedies).toEqual([]);
  });

  test('gives way to what the checks still say of the same thing', async () => {
    const text = 'booth "H" { }\ndesk Left { height 40in }\nskirt Front { on Left  drop 45in }\n';
    const { assessment } = await analyseText(text);
    const finding = assessment!.findings.find(({ check }) => check === 'skirt-drop')!;
    const last = new LastFindings();
    last.keep(create(text), [{ ...found(text, '45in'), topic: topicOf(finding) }]);
    expect(last.staying(create(`${text}{`), assessment)).toEqual([]);
    expect(last.staying(create(`${text}{`), { ...assessment!, findings: [] })).toHaveLength(1);
  });

  test('of a file that was closed is forgotten', () => {
    const last = new LastFindings();
    last.keep(create(good), [found(good, '45in')]);
    last.forget(uri);
    expect(last.staying(create(good), undefined)).toEqual([]);
  });

  test('stands on its own words, whatever is typed', () => {
    fc.assert(
      fc.property(fc.nat(good.length), fc.nat(20), fc.string({ maxLength: 12 }), (at, length, typed) => {
        const text = good.slice(0, at) + typed + good.slice(at + length);
        expect(words).toEqual(expect.arrayContaining(left(words, text)));
      }),
    );
  });
});

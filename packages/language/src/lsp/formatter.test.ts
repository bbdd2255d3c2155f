import { EmptyFileSystem, TextDocument } from 'langium';
import { parseHelper } from 'langium/test';
import fc from 'fast-check';
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { piecesOf } from '../formatting/pieces.js';
import { createBoothServices } from '../module.js';
import { analyseText } from '../testing/analysis.js';
import type { BoothFormatter } from './formatter.js';

const { booth: services } = createBoothServices(EmptyFileSystem);
const parse = parseHelper(services);
const formatter = services.lsp.Formatter as BoothFormatter;
const options = { tabSize: 2, insertSpaces: true };

async function format(text: string, own = options): Promise<string> {
  return formatter.formatted(await parse(text), own);
}

const read = (folder: string) => {
  const root = new URL(`../../../../${folder}/`, import.meta.url);
  return readdirSync(root)
    .filter((name) => name.endsWith('.booth'))
    .map((name) => [name, readFileSync(new URL(name, root), 'utf8')] as const);
};
const files = [...read('examples'), ...read('tests/fixtures/language')];

describe('a text gets', () => {
  test.each([
    ['its blocks indented', 'room {\nwidth 40ft\n      depth 66ft\n  }', 'room {\n  width 40ft\n  depth 66ft\n}\n'],
    [
      'two spaces between properties',
      'desk A {width 60in depth 27in    height 40in}',
      'desk A { width 60in  depth 27in  height 40in }\n',
    ],
    ['one inside them', 'skirt F { on   A ,B  sides front,ends }', 'skirt F { on A, B  sides front, ends }\n'],
    ['no space around the dots of a range', 'stool T { seat 28in .. 32in }', 'stool T { seat 28in..32in }\n'],
    ['one in an empty block', 'desk A {}', 'desk A { }\n'],
    [
      'one where a phrase goes on',
      'place A   at 1ft, 2ft turn 5deg\nrack R { under A   at 2in }',
      'place A at 1ft, 2ft  turn 5deg\nrack R { under A at 2in }\n',
    ],
    [
      'one step more where a line goes on',
      'workstation S {\noperators Noor,\nTobias\n}',
      'workstation S {\n  operators Noor,\n    Tobias\n}\n',
    ],
    ['at most one empty line', '\n\ndesk A { }\n\n\n\ndesk B { }\n\n\n', 'desk A { }\n\ndesk B { }\n'],
    ['nothing at the ends of lines', 'desk A {   \n}  ', 'desk A {\n}\n'],
    [
      'room before a comment',
      'desk A { } // the long one\n  // its own line',
      'desk A { }  // the long one\n// its own line\n',
    ],
    ['nested blocks indented', 'desk A {\ntray {\ndrop 3in\n} }', 'desk A {\n  tray {\n    drop 3in\n  }  }\n'],
  ])('%s', async (_, text, expected) => {
    expect(await format(text)).toBe(expected.replace('  }  }', '  } }'));
  });

  test('the indentation that the editor is set to', async () => {
    expect(await format('room {\nwidth 40ft\n}', { tabSize: 4, insertSpaces: true })).toBe(
      'room {\n    width 40ft\n}\n',
    );
    expect(await format('room {\nwidth 40ft\n}', { tabSize: 4, insertSpaces: false })).toBe(
      'room {\n\twidth 40ft\n}\n',
    );
  });

  test('the line ends that it has', async () => {
    expect(await format('room {\r\nwidth 40ft }\r\n')).toBe('room {\r\n  width 40ft }\r\n');
  });
});

describe('columns', () => {
  test('that are there stay, no wider than they must be', async () => {
    const text = `operator Noor     { stature 5'3"    body female }
operator Tobias   { stature 6ft     body male }
`;
    expect(await format(text)).toBe(`operator Noor   { stature 5'3"  body female }
operator Tobias { stature 6ft   body male }
`);
  });

  test('that are not there are not made', async () => {
    const text = `operator Noor { stature 5'3"  body female }\noperator Tobias { stature 6ft  body male }\n`;
    expect(await format(text)).toBe(text);
  });

  test('end at an empty line', async () => {
    expect(await format('desk A   { }\n\ndesk Left { }\n')).toBe('desk A { }\n\ndesk Left { }\n');
  });

  test('of comments stay too', async () => {
    expect(await format('booth "H" {\n  show in       // read\n  limits us     // held to\n}\n')).toBe(
      'booth "H" {\n  show in    // read\n  limits us  // held to\n}\n',
    );
  });
});

describe('nothing is changed', () => {
  test.each([
    'desk A { width 60in',
    'desk A   { width  : 60in }',
    'desk A {  } }',
    '/* open  \n desk   A { }',
    'booth "H { show   in }',
  ])('in a text that cannot be read: %s', async (text) => {
    expect(formatter.formatDocument(await parse(text), { options })).toEqual([]);
  });

  test.each(files.filter(([name]) => /larkfield|millbrook|furniture/.test(name)))(
    'but white space in %s',
    async (_, text) => {
      expect((await format(text)).replace(/\s+/g, '')).toBe(text.replace(/\s+/g, ''));
    },
  );

  test('outside of a range', async () => {
    const document = await parse('desk A {width 1in}\ndesk B {width 1in}\ndesk C {width 1in}\n');
    const range = { start: { line: 1, character: 3 }, end: { line: 2, character: 0 } };
    const edits = formatter.formatDocumentRange(document, { options, range });
    expect(TextDocument.applyEdits(document.textDocument, edits)).toBe(
      'desk A {width 1in}\ndesk B { width 1in }\ndesk C {width 1in}\n',
    );
  });
});

describe('while somebody types', () => {
  async function typed(text: string, ch: string): Promise<string> {
    const place = text.indexOf('|');
    const document = await parse(text.replace('|', ''));
    const position = document.textDocument.positionAt(place);
    return TextDocument.applyEdits(
      document.textDocument,
      formatter.formatDocumentOnType(document, { options, position, ch }),
    );
  }

  test('a closing brace tidies its block and nothing else', async () => {
    expect(await typed('desk A {width 1in}\nroom {\nwidth 40ft\n  }|\n', '}')).toBe(
      'desk A {width 1in}\nroom {\n  width 40ft\n}\n',
    );
  });

  test('the end of a line tidies that line, and leaves the next to the editor', async () => {
    expect(await typed('room {\n  width   40ft depth 3ft\n  |\n}', '\n')).toBe(
      'room {\n  width 40ft  depth 3ft\n  \n}',
    );
  });
});

/** What is said of a text, wherever in it. */
async function said(text: string) {
  const { diagnostics, assessment } = await analyseText(text);
  return [
    diagnostics.map(({ code, message, severity }) => [code, message, severity]),
    assessment?.workstations.map(({ served }) => served),
  ];
}

async function holdsOf(text: string): Promise<string> {
  const once = await format(text);
  expect(await format(once)).toBe(once);
  const images = (of: string) => piecesOf(of, services.parser.Lexer).map(({ image }) => image);
  expect(images(once)).toEqual(images(text));
  return once;
}

describe('formatting again changes nothing, and no word, comment or finding is lost', { timeout: 120_000 }, () => {
  test.each(files)('in %s', async (_, text) => {
    const once = await holdsOf(text);
    expect(await said(once)).toEqual(await said(text));
  });

  const white = fc.constantFrom(
    ' ',
    '  ',
    '   ',
    '\n',
    '\n\n\n',
    '\t',
    ' // why not\n',
    ' /* so */ ',
    '\n  /* two\n lines */\n',
    '\r\n',
  );
  const words = fc.constantFrom(
    ...`desk operator Left Noor { } { } { } , .. 40in 5'3" width height on at under place in a row import "x" accept skirt-drop because "so" closed tray and between unknown`.split(
      ' ',
    ),
  );

  test('in any sequence of words and white space', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(fc.tuple(words, white), { maxLength: 40 }), async (parts) => {
        await holdsOf(parts.map((part) => part.join('')).join(''));
      }),
      { numRuns: 500 },
    );
  });

  test('in a good file with any white space', async () => {
    const tour = files.find(([name]) => name === 'larkfield-hall-first-plan.booth')![1].replace(/^import.*$/m, '');
    const before = await said(tour);
    const pieces = piecesOf(tour, services.parser.Lexer);
    await fc.assert(
      fc.asyncProperty(fc.array(white, { minLength: 20, maxLength: 60 }), async (whites) => {
        const text = pieces
          .map(({ image, type }, index) => {
            return image + (type === 'LINE_COMMENT' ? '\n' : whites[index % whites.length]!);
          })
          .join('');
        const once = await holdsOf(text);
        expect(once).not.toBe(text);
        expect(await said(once)).toEqual(before);
      }),
      { numRuns: 25 },
    );
  });
});

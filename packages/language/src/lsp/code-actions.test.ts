import { EmptyFileSystem, TextDocument } from 'langium';
import { parseHelper } from 'langium/test';
import type { CodeAction } from 'vscode-languageserver-types';
import { describe, expect, test } from 'vitest';
import { createBoothServices } from '../module.js';

const { booth } = createBoothServices(EmptyFileSystem);
const parse = parseHelper(booth);

interface Offered {
  readonly title: string;
  /** The text with the change. */
  readonly after: string;
  /** The same diagnostic is gone from it. */
  readonly cures: boolean;
}

/** The quick fixes of all diagnostics with that code, each tried on the text. */
async function offered(text: string, code: string): Promise<Offered[]> {
  const document = await parse(text, { validation: true });
  const diagnostics = (document.diagnostics ?? []).filter((diagnostic) => diagnostic.code === code);
  expect(diagnostics, `diagnostics ${code}`).not.toEqual([]);
  const actions = await booth.lsp.CodeActionProvider!.getCodeActions(document, {
    textDocument: { uri: document.uri.toString() },
    range: diagnostics[0]!.range,
    context: { diagnostics },
  });
  return Promise.all(
    (actions as CodeAction[]).map(async ({ title, edit }) => {
      const after = TextDocument.applyEdits(document.textDocument, edit!.changes![document.uri.toString()]!);
      const { diagnostics: left = [] } = await parse(after, { validation: true });
      const count = left.filter((diagnostic) => diagnostic.code === code).length;
      return { title, after, cures: count < diagnostics.length };
    }),
  );
}

async function codesOf(text: string): Promise<unknown[]> {
  const { diagnostics = [] } = await parse(text, { validation: true });
  return diagnostics.map(({ code }) => code);
}

describe('faults of the text', () => {
  test.each([
    [
      'desk A { width 60 }',
      'no-unit',
      [
        ['Write 60in', 'desk A { width 60in }'],
        ['Write 60cm', 'desk A { width 60cm }'],
      ],
    ],
    [
      'booth "H" { show mm }\ndesk A { width 600 }',
      'no-unit',
      [
        ['Write 600mm', 'booth "H" { show mm }\ndesk A { width 600mm }'],
        ['Write 600in', 'booth "H" { show mm }\ndesk A { width 600in }'],
      ],
    ],
    ['desk A { widht 60in }', 'unknown-property', [['Change to width', 'desk A { width 60in }']]],
    ['des A { }', 'unknown-property', [['Change to desk', 'desk A { }']]],
    [
      'desk Left { }\nworkstation B { desk Lfet }',
      'unknown-name',
      [
        ['Change to Left', 'desk Left { }\nworkstation B { desk Left }'],
        [
          'Declare a desk called Lfet, to be filled in',
          'desk Left { }\nworkstation B { desk Lfet }\ndesk Lfet { width 60in  depth 30in  height 41in  top 1in }',
        ],
      ],
    ],
    ['desk A { width 60” }', 'curly-quotes', [['Write it with straight quotes: 60"', 'desk A { width 60" }']]],
    ['booth “H” { }', 'curly-quotes', [['Write it with straight quotes: "H"', 'booth "H" { }']]],
    ['booth "H { }', 'open-text', [['Close the quote', 'booth "H" { }']]],
    ['desk A { width 60inx }', 'unknown-unit', [['Change to 60in', 'desk A { width 60in }']]],
    ["desk A { width 5'4 }", 'malformed-number', [[`Change to 5'4"`, `desk A { width 5'4" }`]]],
    [
      'workstation A { monitor B { top 14in .. 4in above floor } }',
      'range-reversed',
      [['Change to 4in..14in', 'workstation A { monitor B { top 4in..14in above floor } }']],
    ],
    ['desk A { height 44in..37in }', 'range-reversed', [['Change to 37in..44in', 'desk A { height 37in..44in }']]],
    [
      'operator A { body man }',
      'unknown-word',
      [
        ['Change to female', 'operator A { body female }'],
        ['Change to male', 'operator A { body male }'],
      ],
    ],
    ['desk A { closed yes  width 60in }', 'stray-value', [['Remove yes', 'desk A { closed  width 60in }']]],
    ['accept skirt-dorp because "so"', 'unknown-check', [['Change to skirt-drop', 'accept skirt-drop because "so"']]],
    ['desk width { }', 'reserved-name', [['Change to Width', 'desk Width { }']]],
  ])('%s', async (text, code, expected) => {
    const fixes = await offered(text, code);
    expect(fixes.map(({ title, after }) => [title, after.trimEnd()])).toEqual(expected);
    expect(fixes.filter(({ cures }) => !cures)).toEqual([]);
  });
});

const hall = `booth "Hall" { show in }
desk Left { width 60in  depth 30in  height 40in }
skirt Front { on Left  drop 45in }
`;

describe('findings', () => {
  test('can be put right as the check computed it, or accepted with a reason', async () => {
    const fixes = await offered(hall, 'skirt-drop');
    expect(fixes[0]!.cures).toBe(true);
    expect(fixes[0]!.after).toMatch(/drop 3\d( \d\/\d)?in \}/);
    expect(fixes[1]).toMatchObject({
      title: 'Accept skirt-drop of Front, with a reason',
      after: `${hall}accept skirt-drop on Front because ""\n`,
    });
    expect(await codesOf(fixes[1]!.after)).toContain('missing-reason');
    expect(await codesOf(fixes[1]!.after.replace('""', '"hemmed"'))).not.toContain('skirt-drop');
  });

  test('that lack a property can be given one', async () => {
    const fixes = await offered(hall.replace('  drop 45in', ''), 'skirt-drop');
    expect(fixes[0]).toMatchObject({ cures: true });
    expect(fixes[0]!.title).toMatch(/^Add `drop .*` to skirt Front$/);
    expect(fixes[0]!.after).toMatch(/skirt Front \{ drop \S+ {2}on Left/);
  });

  test('are not offered where something else is asked for', async () => {
    const document = await parse(hall, { validation: true });
    const actions = await booth.lsp.CodeActionProvider!.getCodeActions(document, {
      textDocument: { uri: document.uri.toString() },
      range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } },
      context: { diagnostics: document.diagnostics!, only: ['refactor'] },
    });
    expect(actions).toEqual([]);
  });

  test('are not offered for a diagnostic of the text as it was a keystroke ago', async () => {
    const before = await parse('desk Left { width 6 depth 27in }', { validation: true });
    const now = await parse('desk Left { width 60 depth 27in }', { validation: true });
    const ask = (diagnostics = before.diagnostics!) =>
      booth.lsp.CodeActionProvider!.getCodeActions(now, {
        textDocument: { uri: now.uri.toString() },
        range: diagnostics[0]!.range,
        context: { diagnostics },
      });
    expect(await ask()).toEqual([]);
    expect(await ask(now.diagnostics)).not.toEqual([]);
  });
});

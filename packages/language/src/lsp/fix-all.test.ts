import { EmptyFileSystem, TextDocument } from 'langium';
import { parseHelper } from 'langium/test';
import { checks, type Remedy } from '@boothwright/fit';
import type { CodeAction } from 'vscode-languageserver-types';
import { describe, expect, test } from 'vitest';
import { createBoothServices } from '../module.js';
import type { FindingData } from '../validation/findings.js';

const { booth: services } = createBoothServices(EmptyFileSystem);
const parse = parseHelper(services);

async function actionsFor(
  text: string,
  only?: string[],
): Promise<{ actions: CodeAction[]; document: Awaited<ReturnType<typeof parse>> }> {
  const document = await parse(text, { validation: true });
  const start = { line: 0, character: 0 };
  const actions = await services.lsp.CodeActionProvider!.getCodeActions(document, {
    textDocument: { uri: document.uri.toString() },
    range: { start, end: start },
    context: { diagnostics: [], ...(only && { only }) },
  });
  return { actions: actions as CodeAction[], document };
}

/** The text after the action; nothing if it is not offered. */
async function fixed(text: string): Promise<string | undefined> {
  const { actions, document } = await actionsFor(text, ['source.fixAll']);
  const [action] = actions;
  return action && TextDocument.applyEdits(document.textDocument, action.edit!.changes![document.uri.toString()]!);
}

async function codesOf(text: string): Promise<unknown[]> {
  const { diagnostics = [] } = await parse(text, { validation: true });
  return diagnostics.map(({ code }) => code);
}

const hall = `booth "Hall" { show in }
desk Left {width 60in   height 40in}
desk Right { width 60in  height 38in }
skirt Front { on Left  drop 45in }
skirt Side { on Right  drop 45in }
`;

describe('the fix of all that is safe', () => {
  test('changes all of it at once, and leaves the file formatted', async () => {
    expect((await codesOf(hall)).filter((code) => code === 'skirt-drop').length).toBe(2);
    const after = (await fixed(hall))!;
    expect(await codesOf(after)).not.toContain('skirt-drop');
    expect(after).toMatch(/^desk Left \{ width 60in {2}height 40in \}$/m);
    expect(await fixed(after)).toBeUndefined();
  });

  test('leaves what is not safe', async () => {
    const shared = hall.replace('on Left  drop 45in', 'on Left, Right  drop 45in').replace(/^skirt Side.*\n/m, '');
    const { document, actions } = await actionsFor(shared, ['source.fixAll']);
    const remedies = document.diagnostics!.flatMap(({ data }) => (data as FindingData).remedies);
    expect(remedies.some(({ changes, safe }) => changes.length > 0 && !safe)).toBe(true);
    expect(actions).toEqual([]);
  });

  test('takes the first of two changes of one text', async () => {
    const document = await parse(hall, { validation: true });
    const change = (text: string): Remedy[] => {
      const origin = {
        uri: document.uri.toString(),
        start: { line: 3, character: 28 },
        end: { line: 3, character: 32 },
      };
      return [{ title: text, changes: [{ origin, text }], safe: true }];
    };
    const range = { start: { line: 0, character: 0 }, end: { line: 0, character: 1 } };
    document.diagnostics = [change('39in'), change('38in')].map((remedies) => ({
      range,
      message: '',
      data: { check: 'skirt-drop', subject: 'Front', remedies } satisfies FindingData,
    }));
    const [action] = (await services.lsp.CodeActionProvider!.getCodeActions(document, {
      textDocument: { uri: document.uri.toString() },
      range,
      context: { diagnostics: [], only: ['source.fixAll.boothwright'] },
    })) as CodeAction[];
    const edits = action!.edit!.changes![document.uri.toString()]!;
    expect(action!.title).toBe('Put right what is safe to change: 1 value');
    expect(TextDocument.applyEdits(document.textDocument, edits)).toContain('drop 39in');
  });

  test('keeps the indentation that the file has', async () => {
    const tabbed = hall.replace(
      'desk Right { width 60in  height 38in }',
      'desk Right {\n\twidth 60in\n\theight 38in\n}',
    );
    expect(await fixed(tabbed)).toContain('{\n\twidth 60in\n\theight 38in\n}');
  });

  test.each([[undefined], [['quickfix']], [['refactor']], [['source.organizeImports']]])(
    'is offered only where it is asked for, not for %j',
    async (only) => {
      const { actions } = await actionsFor(hall, only);
      expect(actions.filter(({ kind }) => kind === 'source.fixAll.boothwright')).toEqual([]);
    },
  );

  test('is not offered for a text that cannot be read', async () => {
    expect(await fixed(`${hall}desk Third {`)).toBeUndefined();
  });
});

/** In order: the last test counts what the others changed. */
describe('on the example of each check it makes nothing worse', { timeout: 60_000, shuffle: false }, () => {
  const fails = async (text: string) => {
    const { diagnostics = [] } = await parse(text, { validation: true });
    return diagnostics.filter(({ severity }) => severity === 1 || severity === 2).map(({ code }) => code);
  };
  let changed = 0;

  test.each(checks.map(({ id, example }) => [id, example.fires] as const))('%s', async (_, text) => {
    const after = await fixed(text);
    if (after === undefined) return;
    changed++;
    const before = await fails(text);
    expect(before).toEqual(expect.arrayContaining(await fails(after)));
  });

  test('and some of them change', () => {
    expect(changed).toBeGreaterThan(5);
  });
});

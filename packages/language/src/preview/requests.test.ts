import type { Origin } from '@boothwright/fit';
import { afterEach, describe, expect, test } from 'vitest';
import type { CodeLens, Hover, WorkspaceEdit } from 'vscode-languageserver';
import {
  pieceFiguresRequest,
  type PieceRef,
  piecesAtRequest,
  pieceSourceRequest,
  previewRequest,
  type PreviewResult,
  setRequest,
  tryRequest,
} from '../protocol.js';
import { Editor, uri } from '../testing/editor.js';
import { uriOf } from '../testing/memory.js';

let editor: Editor;
afterEach(() => editor.connection.dispose());

const hall = (width: string) => `import "furniture.booth"
booth "Hall" { show in }
room { width 30ft  depth 44ft }
desk Left { width ${width}  depth 30in  height 40in }
place Left, Long in a row at 10ft, 62in
walkway Behind { between booth and back-wall  serves 40 }
`;
const furniture = uriOf('furniture.booth').toString();

async function open(text: string, abilities = {}): Promise<void> {
  editor = new Editor();
  await editor.start(abilities);
  await editor.open(text);
}

const ask = <T>(method: string, params: object = {}) => editor.connection.sendRequest<T>(method, { uri, ...params });
const drawn = () => ask<PreviewResult | null>(previewRequest);

test('the assessment is of the text as it is, or the last one, as stale, while the text is broken', async () => {
  await open(hall('60'));
  expect(await drawn()).toEqual({ is: 'nothing', because: 'unread' });
  await editor.change(hall('60in'));
  expect(await drawn()).toMatchObject({ is: 'booth', stale: false, assessment: { booth: { name: 'Hall' } } });
  await editor.change(hall('60'));
  expect(await drawn()).toMatchObject({ is: 'booth', stale: true });
  await editor.change('desk Left { width 60in }');
  expect(await drawn()).toEqual({ is: 'nothing', because: 'no booth' });
});

test('it has all that a drawing needs', async () => {
  await open(hall('60in'));
  const result = await drawn();
  expect(result?.is === 'booth' && result.assessment.sketch?.plan.walkways).toHaveLength(1);
});

test('nothing is known of a file that is not open', async () => {
  await open(hall('60in'));
  expect(await editor.connection.sendRequest(previewRequest, { uri: uriOf('other.booth').toString() })).toBeNull();
});

test('the cursor is on a piece in this file or in one that it imports', async () => {
  await open(hall('60in'));
  const at = (file: string, line: number, character: number) =>
    ask<PieceRef[]>(piecesAtRequest, { booth: uri, uri: file, position: { line, character } });
  expect(await at(uri, 3, 7)).toEqual([{ kind: 'desk', name: 'Left' }]);
  expect(await at(furniture, 0, 2)).toEqual([{ kind: 'desk', name: 'Long' }]);
  expect(await at(uriOf('other.booth').toString(), 0, 2)).toEqual([]);
});

test('a piece is declared in this file or in one that it imports', async () => {
  await open(hall('60in'));
  const source = (piece: PieceRef) => ask<Origin | null>(pieceSourceRequest, { piece });
  expect(await source({ kind: 'desk', name: 'Left' })).toMatchObject({ uri, start: { line: 3, character: 5 } });
  expect(await source({ kind: 'desk', name: 'Long' })).toMatchObject({ uri: furniture });
  expect(await source({ kind: 'desk', name: 'None' })).toBeNull();
});

describe('the figures of a piece', () => {
  const figures = (piece: PieceRef) => ask<string>(pieceFiguresRequest, { piece });

  test('are what the hover over its name says', async () => {
    await open(hall('60in'));
    const { contents } = await editor.connection.sendRequest<Hover>('textDocument/hover', {
      textDocument: { uri },
      position: { line: 5, character: 9 },
    });
    expect(await figures({ kind: 'walkway', name: 'Behind' })).toBe((contents as { value: string }).value);
  });

  test('are of this booth also where the piece is declared in another file', async () => {
    await open(`${hall('60in')}skirt Front { on Long  drop 45in }\n`);
    editor.files.files.set(furniture, 'desk Long { width 60in  depth 30in  height 40in }');
    await editor.connection.sendNotification('workspace/didChangeWatchedFiles', {
      changes: [{ uri: furniture, type: 2 }],
    });
    await expect
      .poll(() => figures({ kind: 'desk', name: 'Long' }))
      .toMatch(/\*\*Long\*\*, desk[\s\S]*from the left wall/);
  });

  test('are empty of a piece that is not there', async () => {
    await open(hall('60in'));
    expect(await figures({ kind: 'desk', name: 'None' })).toBe('');
  });
});

test('a lens shows a workstation from the side, in an editor that can', async () => {
  const text = `${hall('60in')}workstation Sound { desk Left }\n`;
  const commands = async () =>
    (await ask<CodeLens[]>('textDocument/codeLens', { textDocument: { uri } })).map(({ command }) => command);
  await open(text);
  expect((await commands()).map((command) => command?.title)).not.toContain('Show');
  editor.connection.dispose();
  await open(text, { showsPreview: true });
  expect(await commands()).toContainEqual({
    title: 'Show',
    command: 'boothwright.showSide',
    arguments: [{ uri, workstation: 'Sound' }],
  });
});

describe('numbers', () => {
  const settings = [{ handle: 'y desk Left', value: 60 * 25.4 }];

  test('are tried without a change of the text', async () => {
    await open(hall('60in'));
    const tried = await ask<PreviewResult | null>(tryRequest, { settings });
    expect(tried).toMatchObject({
      is: 'booth',
      assessment: { booth: { placements: [{ at: { value: { y: 1524 } } }] } },
    });
    expect(await drawn()).toMatchObject({
      assessment: { booth: { placements: [{ at: { value: { y: 62 * 25.4 } } }] } },
    });
  });

  test('are tried by the steps of the text, which is shorter or longer than what is tried', async () => {
    await open(`${hall('60in')}workstation Sound { desk Left }\n`);
    const steps = (result: PreviewResult | null) =>
      result?.is === 'booth' ? result.handles.map(({ id, step }) => [id, step]) : [];
    const settings = [{ handle: 'height 0 desk Left Sound', value: 40.25 * 25.4 }];
    const tried = steps(await ask<PreviewResult | null>(tryRequest, { settings }));
    expect(tried).toContainEqual(['height 0 desk Left Sound', 6.35]);
    expect(tried).toEqual(steps(await drawn()));
  });

  test('are set by an edit of the file that holds them', async () => {
    editor = new Editor();
    await editor.start();
    editor.files.files.set(furniture, 'desk Long { width 60in  height 40in }');
    await editor.open(`${hall('60in')}workstation Sound { desk Long }\n`);
    expect(await ask<WorkspaceEdit>(setRequest, { settings })).toMatchObject({
      changes: { [uri]: [{ newText: '10ft, 60in' }] },
    });
    const height = [{ handle: 'height 0 desk Long Sound', value: 41 * 25.4 }];
    expect(await ask<WorkspaceEdit>(setRequest, { settings: height })).toMatchObject({
      changes: { [furniture]: [{ newText: '41in' }] },
    });
  });

  test('are not set while the text is broken', async () => {
    await open(hall('60in'));
    await drawn();
    await editor.change(hall('60'));
    expect(await drawn()).toMatchObject({ stale: true, handles: [] });
    expect(await ask(setRequest, { settings })).toBeNull();
    expect(await ask(tryRequest, { settings })).toBeNull();
  });
});

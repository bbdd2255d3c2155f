import { TextDocument, URI } from 'langium';
import { describe, expect, test } from 'vitest';
import { createBoothServices } from '../module.js';
import { silent } from '../testing/analysis.js';
import { MemoryFiles } from '../testing/memory.js';

const before = {
  'hall.booth': 'import "parts/desks.booth"\nimport "seats.booth"\n',
  'seats.booth': 'stool Tall { }\n',
  'parts/desks.booth': 'import "../seats.booth"\nimport "legs.booth"\ndesk Long { }\n',
  'parts/legs.booth': '// nothing yet\n',
  'apart.booth': 'desk Other { }\n',
};
const uriOf = (name: string) => URI.parse(`file:///hall/${name.replaceAll(' ', '%20')}`).toString();

/** The files that change when those are moved, as they become; each still by its old name. */
async function moved(moves: Readonly<Record<string, string>>): Promise<Record<string, string>> {
  const files = new MemoryFiles(new Map(Object.entries(before).map(([name, text]) => [uriOf(name), text])));
  files.readDirectory = (folder) => {
    const inside = folder.toString().replace(/\/$/, '');
    const entries = [...files.files.keys()]
      .filter((uri) => uri.startsWith(`${inside}/`))
      .map((uri) => uri.slice(inside.length + 1).split('/'));
    const names = new Map(entries.map(([first, ...rest]) => [first!, rest.length === 0]));
    return Promise.resolve(
      [...names].map(([name, isFile]) => ({ uri: URI.parse(`${inside}/${name}`), isFile, isDirectory: !isFile })),
    );
  };
  const { shared } = createBoothServices({ fileSystemProvider: () => files, computation: silent });
  await shared.workspace.WorkspaceManager.initializeWorkspace([{ name: 'hall', uri: 'file:///hall' }]);
  const edit = await shared.lsp.FileOperationHandler!.willRenameFiles!({
    files: Object.entries(moves).map(([from, to]) => ({ oldUri: uriOf(from), newUri: uriOf(to) })),
  });
  return Object.fromEntries(
    Object.entries(edit?.changes ?? {}).map(([uri, edits]) => {
      const document = TextDocument.create(uri, 'booth', 1, files.files.get(uri)!);
      return [uri.slice('file:///hall/'.length), TextDocument.applyEdits(document, edits)];
    }),
  );
}

const change = (name: keyof typeof before, from: string, to: string) => ({ [name]: before[name].replace(from, to) });

describe('imports go with', () => {
  test.each([
    [
      'a file that gets another name',
      { 'seats.booth': 'stools.booth' },
      { ...change('hall.booth', 'seats', 'stools'), ...change('parts/desks.booth', 'seats', 'stools') },
    ],
    [
      'a file that goes into a folder, in it too',
      { 'parts/desks.booth': 'desks.booth' },
      {
        ...change('hall.booth', 'parts/desks', 'desks'),
        'parts/desks.booth': 'import "seats.booth"\nimport "parts/legs.booth"\ndesk Long { }\n',
      },
    ],
    [
      'the file that imports',
      { 'hall.booth': 'plans/new/hall.booth' },
      { 'hall.booth': 'import "../../parts/desks.booth"\nimport "../../seats.booth"\n' },
    ],
    ['a folder', { parts: 'furniture' }, change('hall.booth', 'parts/desks', 'furniture/desks')],
    [
      'both ends at once',
      { 'hall.booth': 'old/hall.booth', 'seats.booth': 'old/seats.booth' },
      {
        'hall.booth': 'import "../parts/desks.booth"\nimport "seats.booth"\n',
        ...change('parts/desks.booth', '../seats', '../old/seats'),
      },
    ],
    [
      'a name with a space',
      { 'seats.booth': 'tall seats.booth' },
      {
        ...change('hall.booth', 'seats', 'tall seats'),
        ...change('parts/desks.booth', 'seats', 'tall seats'),
      },
    ],
  ])('%s', async (_, moves, expected) => {
    expect(await moved(moves)).toEqual(expected);
  });
});

test.each([
  ['a file that nobody imports', { 'apart.booth': 'elsewhere.booth' }],
  ['a name that could not be imported', { 'seats.booth': 'seats.txt' }],
  [
    'the whole workspace moved together',
    { parts: 'x/parts', 'hall.booth': 'x/hall.booth', 'seats.booth': 'x/seats.booth' },
  ],
])('nothing changes for %s', async (_, moves: Record<string, string>) => {
  expect(await moved(moves)).toEqual({});
});

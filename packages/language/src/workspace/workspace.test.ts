import { Cancellation, DocumentState, type LangiumDocument, TextDocument } from 'langium';
import type { WorkspaceEdit } from 'vscode-languageserver-types';
import { describe, expect, test } from 'vitest';
import { createBoothServices } from '../module.js';
import { silent } from '../testing/analysis.js';
import { memoryFiles, type MemoryFiles, uriOf } from '../testing/memory.js';

/** A server's services over files in memory, with `hall.booth` open. */
async function open(files: MemoryFiles) {
  const { shared, booth } = createBoothServices({ fileSystemProvider: () => files, computation: silent });
  await shared.workspace.WorkspaceManager.initializeWorkspace([{ name: 'hall', uri: 'file:///hall' }]);
  const { DocumentBuilder, LangiumDocuments } = shared.workspace;
  const update = (...names: string[]) => DocumentBuilder.update(names.map(uriOf), []);
  await update('hall.booth');
  const messages = (name: string) =>
    LangiumDocuments.getDocument(uriOf(name))?.diagnostics?.map(({ message }) => message);
  return { shared, booth, update, messages, document: () => LangiumDocuments.getDocument(uriOf('hall.booth'))! };
}

function place(document: LangiumDocument, word: string) {
  const position = document.textDocument.positionAt(document.textDocument.getText().indexOf(word));
  return { textDocument: { uri: document.uri.toString() }, position };
}

describe('imports', () => {
  test('load only what is imported', async () => {
    const { shared } = await open(
      memoryFiles({ 'hall.booth': 'import "a.booth"', 'a.booth': 'import "b.booth"', 'b.booth': '', 'c.booth': '' }),
    );
    const loaded = shared.workspace.LangiumDocuments.all.map(({ uri }) => uri.path).toArray();
    expect(loaded.sort()).toEqual(['/hall/a.booth', '/hall/b.booth', '/hall/hall.booth']);
  });

  test('are looked at again when a file changes that is reached through another', async () => {
    const files = memoryFiles({
      'hall.booth': 'import "a.booth"\nworkstation Sound { desk Long }',
      'a.booth': 'import "b.booth"',
      'b.booth': 'desk Short { }',
    });
    const { update, messages } = await open(files);
    expect(messages('hall.booth')).toEqual([expect.stringContaining('There is no desk called `Long`')]);
    files.files.set(uriOf('b.booth').toString(), 'desk Long { }');
    await update('b.booth');
    expect(messages('hall.booth')).toEqual([]);
  });

  test('are found when their file appears, and missed when it goes', async () => {
    const files = memoryFiles({ 'hall.booth': 'import "a.booth"\nworkstation Sound { desk Long }' });
    const { shared, update, messages } = await open(files);
    expect(messages('hall.booth')).toHaveLength(2);
    files.files.set(uriOf('a.booth').toString(), 'desk Long { }');
    await update('a.booth');
    expect(messages('hall.booth')).toEqual([]);
    files.files.delete(uriOf('a.booth').toString());
    await shared.workspace.DocumentBuilder.update([], [uriOf('a.booth')]);
    expect(messages('hall.booth')).toHaveLength(2);
  });

  test('go to the definition in the other file', async () => {
    const { booth, document } = await open(
      memoryFiles({ 'hall.booth': 'import "a.booth"\nworkstation Sound { desk Long }', 'a.booth': 'desk Long { }' }),
    );
    const links = await booth.lsp.DefinitionProvider!.getDefinition(document(), place(document(), 'Long'));
    expect(links).toMatchObject([
      { targetUri: 'file:///hall/a.booth', targetSelectionRange: { start: { character: 5 } } },
    ]);
  });

  test('are links to their files', async () => {
    const { booth, document } = await open(
      memoryFiles({ 'hall.booth': 'import "a b.booth"\nimport "http://x/y.booth"' }),
    );
    const links = await booth.lsp.DocumentLinkProvider!.getDocumentLinks(document(), {
      textDocument: { uri: document().uri.toString() },
    });
    expect(links).toEqual([
      {
        range: { start: { line: 0, character: 7 }, end: { line: 0, character: 18 } },
        target: 'file:///hall/a%20b.booth',
      },
    ]);
  });
});

describe('renaming', () => {
  const files = () =>
    memoryFiles({
      'hall.booth': 'import "a.booth"\nworkstation Sound { desk Long  operator Noor }\noperator Noor { }',
      'a.booth': 'desk Long { }',
      'other.booth': 'import "a.booth"\nskirt Front { on Long }\naccept skirt-drop on Long because "so"',
    });

  const renamed = async (word: string, newName: string) => {
    const { booth, document, shared } = await open(files());
    const edit = await booth.lsp.RenameProvider!.rename(document(), { ...place(document(), word), newName });
    return Object.fromEntries(
      Object.entries((edit as WorkspaceEdit).changes!).map(([uri, edits]) => {
        const name = uri.slice(uri.lastIndexOf('/') + 1);
        return [
          name,
          TextDocument.applyEdits(shared.workspace.LangiumDocuments.getDocument(uriOf(name))!.textDocument, edits),
        ];
      }),
    );
  };

  test('reaches all files of the workspace, open or not', async () => {
    expect(await renamed('Long', 'Wide')).toEqual({
      'hall.booth': 'import "a.booth"\nworkstation Sound { desk Wide  operator Noor }\noperator Noor { }',
      'a.booth': 'desk Wide { }',
      'other.booth': 'import "a.booth"\nskirt Front { on Wide }\naccept skirt-drop on Wide because "so"',
    });
  });

  test('keeps to the thing that is meant', async () => {
    expect(Object.keys(await renamed('Noor', 'Nora'))).toEqual(['hall.booth']);
  });

  test.each(['width', '2nd', 'two words', '', 'a{b', '60in'])('refuses %j', async (newName) => {
    await expect(renamed('Long', newName)).rejects.toThrow('cannot be a name');
  });

  test('finds the uses in the same way', async () => {
    const { booth, document } = await open(files());
    const found = await booth.lsp.ReferencesProvider!.findReferences(document(), {
      ...place(document(), 'Long'),
      context: { includeDeclaration: true },
    });
    const names = found.map(({ uri }) => uri.slice(uri.lastIndexOf('/') + 1));
    expect(names.sort()).toEqual(['a.booth', 'hall.booth', 'other.booth', 'other.booth']);
  });
});

test('things are found by name in all files of the workspace, open or not', async () => {
  const { shared } = await open(
    memoryFiles({ 'hall.booth': 'desk Long { }', 'other.booth': 'stool Longest { }\ndesk X { }' }),
  );
  const found = await shared.lsp.WorkspaceSymbolProvider!.getSymbols({ query: 'long' });
  expect(found.map(({ name, location }) => [name, location.uri])).toEqual([
    ['Long', 'file:///hall/hall.booth'],
    ['Longest', 'file:///hall/other.booth'],
  ]);
});

test('of keys that come faster than a build, the last has the last word', async () => {
  const long = Array.from({ length: 100 }, (_, index) => `desk D${index} { width 60in }`).join('\n');
  const files = memoryFiles({ 'hall.booth': long });
  const { shared, messages } = await open(files);
  const { DocumentBuilder, WorkspaceLock } = shared.workspace;
  const keys = 'desk Z { width 60'.split('');
  const written = keys.map(async (_, index) => {
    await new Promise((resolve) => setTimeout(resolve, 2 * index));
    files.files.set(uriOf('hall.booth').toString(), `${long}\n${keys.slice(0, index + 1).join('')}`);
    await WorkspaceLock.write((token) => DocumentBuilder.update([uriOf('hall.booth')], [], token));
  });
  await Promise.all(written);
  expect(messages('hall.booth')).toEqual([
    expect.stringContaining('`desk Z` is not closed'),
    expect.stringContaining('60 has no unit'),
  ]);
});

describe('whoever waits for a file', () => {
  /** Waits for a state of `hall.booth` from the moment at which a change has put it back. */
  const waiting = async (state: DocumentState) => {
    const files = memoryFiles({ 'hall.booth': 'desk A { }' });
    const { shared } = await open(files);
    const { DocumentBuilder } = shared.workspace;
    files.files.set(uriOf('hall.booth').toString(), 'desk B { }');
    const source = new Cancellation.CancellationTokenSource();
    const told: string[] = [];
    const listening = DocumentBuilder.onUpdate(() => {
      listening.dispose();
      void DocumentBuilder.waitUntil(state, uriOf('hall.booth')).then((uri) => told.push(uri!.path));
    });
    return {
      DocumentBuilder,
      source,
      told,
      build: () => DocumentBuilder.update([uriOf('hall.booth')], [], source.token),
    };
  };

  test.each([DocumentState.Parsed, DocumentState.Linked, DocumentState.Validated])(
    'is told when it is there: state %i',
    async (state) => {
      const { build, told } = await waiting(state);
      await build();
      expect(told).toEqual(['/hall/hall.booth']);
    },
  );

  test('is told also if the build is cancelled just then', async () => {
    const { DocumentBuilder, source, told, build } = await waiting(DocumentState.IndexedContent);
    DocumentBuilder.onDocumentPhase(DocumentState.IndexedContent, () => source.cancel());
    await build().catch(() => undefined);
    await DocumentBuilder.update([uriOf('other.booth')], []);
    expect(told).toEqual(['/hall/hall.booth']);
  });
});

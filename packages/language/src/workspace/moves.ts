import { type LangiumDocument, type LangiumDocuments, URI, UriUtils } from 'langium';
import type { FileOperationHandler, LangiumSharedServices } from 'langium/lsp';
import type { FileOperationOptions, FileRename, RenameFilesParams } from 'vscode-languageserver';
import type { TextEdit, WorkspaceEdit } from 'vscode-languageserver-types';
import { partOf } from '../syntax/tree.js';
import { faultOfPath, importsOf } from './imports.js';
import type { BoothWorkspaceManager } from './manager.js';

/** When files or folders get another name or place, imports go with them: in the files that import them, and in themselves. */
export class BoothFileOperationHandler implements FileOperationHandler {
  readonly fileOperationOptions: FileOperationOptions = {
    willRename: {
      filters: [{ pattern: { glob: '**/*.booth', matches: 'file' } }, { pattern: { glob: '**', matches: 'folder' } }],
    },
  };
  private readonly documents: LangiumDocuments;
  private readonly workspace: BoothWorkspaceManager;

  constructor({ workspace }: LangiumSharedServices) {
    this.documents = workspace.LangiumDocuments;
    this.workspace = workspace.WorkspaceManager as BoothWorkspaceManager;
  }

  /** The changes to make before the files move; nothing if no import is concerned. */
  async willRenameFiles({ files }: RenameFilesParams): Promise<WorkspaceEdit | null> {
    await this.workspace.loadAll();
    const changes: Record<string, TextEdit[]> = {};
    for (const document of this.documents.all) {
      const edits = editsFor(document, files);
      if (edits.length > 0) changes[document.uri.toString()] = edits;
    }
    return Object.keys(changes).length > 0 ? { changes } : null;
  }
}

function editsFor(document: LangiumDocument, moves: readonly FileRename[]): TextEdit[] {
  const from = placeAfter(document.uri, moves);
  return importsOf(document).flatMap(({ node, uri }) => {
    const part = uri && partOf(node, 'path');
    if (!part) return [];
    const to = placeAfter(uri, moves);
    if (UriUtils.equals(from, document.uri) && UriUtils.equals(to, uri)) return [];
    const path = pathBetween(from, to);
    const before = pathBetween(document.uri, uri);
    if (path === undefined || path === before || faultOfPath(path) !== undefined) return [];
    return [{ range: part.range, newText: `"${path.replace(/["\\]/g, '\\$&')}"` }];
  });
}

/** Where a file will be: it may be moved itself, or with a folder that it is in. */
function placeAfter(uri: URI, moves: readonly FileRename[]): URI {
  const place = uri.toString();
  for (const { oldUri, newUri } of moves) {
    const old = URI.parse(oldUri).toString();
    if (place === old) return URI.parse(newUri);
    if (place.startsWith(`${old}/`)) return URI.parse(URI.parse(newUri).toString() + place.slice(old.length));
  }
  return uri;
}

/** The path from one file to another, as an import says it; nothing if there is none. */
function pathBetween(from: URI, to: URI): string | undefined {
  if (from.scheme !== to.scheme || from.authority !== to.authority) return undefined;
  const [folders, target] = [from.path.split('/').slice(0, -1), to.path.split('/')];
  let same = 0;
  while (same < folders.length && same < target.length - 1 && folders[same] === target[same]) same++;
  return [...folders.slice(same).map(() => '..'), ...target.slice(same)].join('/');
}

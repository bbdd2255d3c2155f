import { type FileEntry, type FileParams, readDirectoryRequest, readFileRequest } from '@boothwright/language/protocol';
import { type Disposable, FileType, Uri, workspace } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';

/** Reads for the language server what only the editor reaches: files of a virtual folder, or any file from a worker. */
export function answerFileRequests(client: BaseLanguageClient): Disposable[] {
  return [client.onRequest(readFileRequest, readFile), client.onRequest(readDirectoryRequest, readDirectory)];
}

async function readFile({ uri }: FileParams): Promise<string> {
  return new TextDecoder().decode(await workspace.fs.readFile(Uri.parse(uri)));
}

async function readDirectory({ uri }: FileParams): Promise<FileEntry[]> {
  const folder = Uri.parse(uri);
  const entries = await workspace.fs.readDirectory(folder);
  return entries.map(([name, type]) => ({
    uri: Uri.joinPath(folder, name).toString(),
    isFile: (type & FileType.File) !== 0,
    isDirectory: (type & FileType.Directory) !== 0,
  }));
}

import { type FileSystemNode, type FileSystemProvider, URI, UriUtils } from 'langium';
import type { Connection } from 'vscode-languageserver';
import { type FileEntry, type FileParams, readDirectoryRequest, readFileRequest } from '../protocol.js';

/** The files that the editor can read. An editor that does not answer has none. */
export class EditorFileSystem implements FileSystemProvider {
  constructor(private readonly connection: Connection) {}

  readFile(uri: URI): Promise<string> {
    return this.connection.sendRequest<string>(readFileRequest, { uri: uri.toString() } satisfies FileParams);
  }

  async readDirectory(uri: URI): Promise<FileSystemNode[]> {
    const entries = await this.connection.sendRequest<FileEntry[]>(readDirectoryRequest, {
      uri: uri.toString(),
    } satisfies FileParams);
    return entries.map((entry) => ({ ...entry, uri: URI.parse(entry.uri) }));
  }

  async stat(uri: URI): Promise<FileSystemNode> {
    const entries = await this.readDirectory(UriUtils.dirname(uri));
    const found = entries.find((entry) => UriUtils.equals(entry.uri, uri));
    if (!found) throw new Error(`There is no ${uri.toString()}.`);
    return found;
  }

  exists(uri: URI): Promise<boolean> {
    return this.stat(uri).then(
      () => true,
      () => false,
    );
  }

  readBinary(): Promise<Uint8Array> {
    return Promise.reject(notHere());
  }

  statSync(): FileSystemNode {
    throw notHere();
  }

  existsSync(): boolean {
    throw notHere();
  }

  readBinarySync(): Uint8Array {
    throw notHere();
  }

  readFileSync(): string {
    throw notHere();
  }

  readDirectorySync(): FileSystemNode[] {
    throw notHere();
  }
}

function notHere(): Error {
  return new Error('An editor answers for its files later, and in text.');
}

/** Files of this machine by `local`, all others by `editor`. */
export function bySchemes(local: FileSystemProvider, editor: FileSystemProvider): FileSystemProvider {
  const of = (uri: URI) => (uri.scheme === 'file' ? local : editor);
  return {
    stat: (uri) => of(uri).stat(uri),
    statSync: (uri) => of(uri).statSync(uri),
    exists: (uri) => of(uri).exists(uri),
    existsSync: (uri) => of(uri).existsSync(uri),
    readBinary: (uri) => of(uri).readBinary(uri),
    readBinarySync: (uri) => of(uri).readBinarySync(uri),
    readFile: (uri) => of(uri).readFile(uri),
    readFileSync: (uri) => of(uri).readFileSync(uri),
    readDirectory: (uri) => of(uri).readDirectory(uri),
    readDirectorySync: (uri) => of(uri).readDirectorySync(uri),
  };
}

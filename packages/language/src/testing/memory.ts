import { type FileSystemNode, type FileSystemProvider, URI, UriUtils } from 'langium';

/** Files in memory, by URI; for tests. */
export class MemoryFiles implements FileSystemProvider {
  constructor(readonly files: Map<string, string>) {}

  stat(uri: URI): Promise<FileSystemNode> {
    return Promise.resolve({
      uri,
      isFile: this.files.has(uri.toString()),
      isDirectory: !this.files.has(uri.toString()),
    });
  }

  exists(uri: URI): Promise<boolean> {
    return Promise.resolve(this.files.has(uri.toString()));
  }

  readFile(uri: URI): Promise<string> {
    const text = this.files.get(uri.toString());
    return text === undefined ? Promise.reject(new Error(`no ${uri.toString()}`)) : Promise.resolve(text);
  }

  readDirectory(folder: URI): Promise<FileSystemNode[]> {
    const uris = [...this.files.keys()].map((uri) => URI.parse(uri));
    const inside = uris.filter((uri) => UriUtils.dirname(uri).toString() === folder.toString().replace(/\/$/, ''));
    return Promise.resolve(inside.map((uri) => ({ uri, isFile: true, isDirectory: false })));
  }

  readBinary(): Promise<Uint8Array> {
    throw new Error('not in tests');
  }
  statSync(): FileSystemNode {
    throw new Error('not in tests');
  }
  existsSync(): boolean {
    throw new Error('not in tests');
  }
  readBinarySync(): Uint8Array {
    throw new Error('not in tests');
  }
  readFileSync(): string {
    throw new Error('not in tests');
  }
  readDirectorySync(): FileSystemNode[] {
    throw new Error('not in tests');
  }
}

/** Files by their names in one folder. */
export function memoryFiles(files: Readonly<Record<string, string>>): MemoryFiles {
  return new MemoryFiles(new Map(Object.entries(files).map(([name, text]) => [uriOf(name).toString(), text])));
}

export function uriOf(name: string): URI {
  return URI.parse(`file:///hall/${name}`);
}

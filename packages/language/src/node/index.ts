import { open, stat } from 'node:fs/promises';
import type { FileSystemProvider, URI } from 'langium';
import { NodeFileSystem } from 'langium/node';
import { READ_BYTES } from '../bounds.js';

/** The files of this machine, for `analyse`: ordinary files alone, no pipes or devices, and of each as much as may be read. */
export function nodeFileSystem(): FileSystemProvider {
  const files = NodeFileSystem.fileSystemProvider();
  return Object.assign(Object.create(files) as FileSystemProvider, {
    readFile: async ({ fsPath }: URI): Promise<string> => {
      if (!(await stat(fsPath)).isFile()) throw new Error(`${fsPath} is no ordinary file`);
      return readStart(fsPath);
    },
  });
}

/**
 * The text of a file; of one that is larger than a booth file may be, its beginning, which is still too large. What gives no end, as a
 * device, is read no further either.
 */
export async function readStart(file: string): Promise<string> {
  const handle = await open(file);
  try {
    const chunks: Buffer[] = [];
    let length = 0;
    while (length <= READ_BYTES) {
      const { buffer, bytesRead } = await handle.read({ buffer: Buffer.alloc(1 << 16) });
      if (bytesRead === 0) break;
      chunks.push(buffer.subarray(0, bytesRead));
      length += bytesRead;
    }
    return Buffer.concat(chunks).toString('utf8');
  } finally {
    await handle.close();
  }
}

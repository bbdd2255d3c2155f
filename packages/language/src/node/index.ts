import type { FileSystemProvider } from 'langium';
import { NodeFileSystem } from 'langium/node';

/** The files of this machine, for `analyse`. */
export function nodeFileSystem(): FileSystemProvider {
  return NodeFileSystem.fileSystemProvider();
}

import { open, realpath, stat } from 'node:fs/promises';
import path from 'node:path';
import { isReport } from '@boothwright/report';
import { UsageError } from './status.js';
import { writeWhole } from './whole-file.js';

export interface WriteOptions {
  /** Replace a file that this product did not make. */
  readonly force: boolean;
  /** The booth file that the report is about: never replaced. */
  readonly source: string;
}

/**
 * Writes a report whole or not at all. An existing file is replaced only if it is a report of ours, or by force.
 * @throws UsageError, one sentence, if the place cannot be written or must not be.
 */
export async function writeReport(
  target: string,
  content: string | Uint8Array,
  { force, source }: WriteOptions,
): Promise<void> {
  try {
    await refuse(target, force, source);
    await writeWhole(target, content);
  } catch (error) {
    throw error instanceof UsageError ? error : new UsageError(refusal(target, error));
  }
}

async function refuse(target: string, force: boolean, source: string): Promise<void> {
  const folder = path.dirname(target);
  if (!(await stat(folder)).isDirectory()) throw new UsageError(`${folder} is not a folder.`);
  const existing = await stat(target).catch((error: unknown) => {
    if (codeOf(error) === 'ENOENT') return undefined;
    throw error;
  });
  if (!existing) return;
  if (existing.isDirectory()) {
    throw new UsageError(`${target} is a folder: name a file, such as ${path.join(target, 'report.html')}.`);
  }
  if (!existing.isFile()) throw new UsageError(`${target} is not an ordinary file.`);
  if ((await realpath(target)) === (await realpath(source))) {
    throw new UsageError(`${target} is the booth file itself: name another file for the report.`);
  }
  if (!force && !isReport(await firstKilobyte(target))) {
    throw new UsageError(`${target} exists and boothwright did not make it: name another file, or add --force.`);
  }
}

async function firstKilobyte(file: string): Promise<string> {
  const handle = await open(file);
  try {
    const { buffer, bytesRead } = await handle.read({ buffer: Buffer.alloc(1024) });
    return buffer.toString('utf8', 0, bytesRead);
  } finally {
    await handle.close();
  }
}

/** What the file system said, in words. */
export function refusal(target: string, error: unknown): string {
  const folder = path.dirname(target);
  switch (codeOf(error)) {
    case 'ENOENT':
      return `the folder ${folder} does not exist: make it first, or name another.`;
    case 'ENOTDIR':
      return `${folder} is not a folder.`;
    case 'ELOOP':
      return `${target} is a link that leads back to itself: name another file.`;
    case 'ENAMETOOLONG':
      return `${target} is too long a name: choose a shorter one.`;
    case 'EACCES':
    case 'EPERM':
    case 'EROFS':
      return `${target} may not be written: choose a folder that is yours.`;
    case 'ENOSPC':
    case 'EDQUOT':
    case 'EFBIG':
      return `there is no room left to write ${target}.`;
    default:
      return `${target} could not be written: ${error instanceof Error ? error.message : String(error)}`;
  }
}

function codeOf(error: unknown): string | undefined {
  return error instanceof Error && 'code' in error ? String(error.code) : undefined;
}

import { FileSystemError, l10n, type Uri, window, workspace } from 'vscode';

/**
 * Writes a file, whole or not at all. Asks first if the file exists and `isOurs` does not know its text.
 * Returns false if the person declines.
 */
export async function writeSafely(
  target: Uri,
  content: string | Uint8Array,
  isOurs: (existing: string) => boolean,
): Promise<boolean> {
  const existing = await read(target);
  if (existing !== undefined && !isOurs(existing) && !(await mayReplace(target))) return false;
  const draft = target.with({ path: `${target.path}.${Date.now().toString(36)}.tmp` });
  try {
    const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
    await workspace.fs.writeFile(draft, bytes);
    await workspace.fs.rename(draft, target, { overwrite: true });
  } catch (error) {
    await workspace.fs.delete(draft).then(undefined, () => undefined);
    throw error;
  }
  return true;
}

async function read(file: Uri): Promise<string | undefined> {
  try {
    return new TextDecoder().decode(await workspace.fs.readFile(file));
  } catch (error) {
    if (error instanceof FileSystemError && error.code === 'FileNotFound') return undefined;
    throw error;
  }
}

async function mayReplace(file: Uri): Promise<boolean> {
  const replace = l10n.t('Replace');
  const detail = l10n.t('Boothwright did not write this file. What it holds will be lost.');
  return (
    (await window.showWarningMessage(l10n.t('Replace {0}?', nameOf(file)), { modal: true, detail }, replace)) ===
    replace
  );
}

/** The last part of a file's path, with its ending. */
export function nameOf({ path }: Uri): string {
  return path.slice(path.lastIndexOf('/') + 1);
}

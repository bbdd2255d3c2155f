import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Origin } from '@boothwright/fit';

/** A stretch of a file; lines and columns count from 1, columns in UTF-16 units, the end is exclusive. */
export interface Place {
  readonly file: string;
  readonly start: { readonly line: number; readonly column: number };
  readonly end: { readonly line: number; readonly column: number };
}

export function placeOf({ uri, start, end }: Origin): Place {
  return {
    file: fileOf(uri),
    start: { line: start.line + 1, column: start.character + 1 },
    end: { line: end.line + 1, column: end.character + 1 },
  };
}

/** `file:line:column`, as editors and terminals make clickable. */
export function linkTo(origin: Origin): string {
  const { file, start } = placeOf(origin);
  return `${file}:${start.line}:${start.column}`;
}

/** The path from where the command runs, or the URI if it is no file's. */
function fileOf(uri: string): string {
  if (!uri.startsWith('file:')) return uri;
  return path.relative(process.cwd(), fileURLToPath(uri));
}

import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { Lacking } from '../editor/harness/lacking.js';

/** Makes sure that Poppler's command-line tools are there: they read a PDF independently of what wrote it. Installs Debian's if this process may. */
export function findPoppler(): void {
  if (existsSync('/usr/bin/pdftotext') || onPath()) return;
  if (process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get'))
    throw new Lacking('The tests of the PDF need Poppler: install it (Debian: apt-get install poppler-utils).');
  const apt = (...args: string[]) =>
    execFileSync('apt-get', ['-o', 'DPkg::Lock::Timeout=300', '-qq', ...args], {
      stdio: ['ignore', 'ignore', 'inherit'],
    });
  apt('update');
  apt('install', '-y', '--no-install-recommends', 'poppler-utils');
}

function onPath(): boolean {
  try {
    execFileSync('pdftotext', ['-v'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
}

/** What pdftotext makes of a PDF. */
export function textOf(file: string, ...options: string[]): string {
  return execFileSync('pdftotext', ['-enc', 'UTF-8', ...options, file, '-'], { encoding: 'utf8' });
}

/** What pdfinfo says, by heading; it must have nothing to complain of. */
export function infoOf(file: string): Readonly<Record<string, string>> {
  const text = execFileSync('pdfinfo', [file], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
  return Object.fromEntries(
    text.split('\n').map((line) => [line.split(':')[0]!, line.slice(line.indexOf(':') + 1).trim()]),
  );
}

export interface Picture {
  readonly width: number;
  readonly height: number;
  /** A byte for each pixel, row by row; 255 is white. */
  readonly grey: Uint8Array;
}

/** The pages as grey pictures, which are left in a folder. */
export function picturesOf(file: string, folder: string, dotsPerInch: number): Picture[] {
  execFileSync('pdftoppm', ['-gray', '-r', `${dotsPerInch}`, file, path.join(folder, 'page')]);
  return readdirSync(folder)
    .filter((name) => name.endsWith('.pgm'))
    .sort()
    .map((name) => {
      const bytes = readFileSync(path.join(folder, name));
      const header = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.toString('latin1', 0, 40))!;
      return { width: Number(header[1]), height: Number(header[2]), grey: bytes.subarray(header[0].length) };
    });
}

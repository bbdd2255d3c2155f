import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { Lacking } from '../editor/harness/lacking.js';

const packages = ['neovim', 'emacs-nox', 'elpa-eglot'];

/** Makes sure that Neovim, and Emacs with eglot, are there; installs Debian's if this process may. */
export function ensureEditors(): void {
  if (areThere()) return;
  const sentence = `The tests of other editors need Neovim, and Emacs with eglot: install them (Debian: apt-get install ${packages.join(' ')}).`;
  if (process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) throw new Lacking(sentence);
  console.log('Installing Neovim and Emacs with apt-get …');
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const stdio = ['ignore', 'ignore', 'inherit'] as ['ignore', 'ignore', 'inherit'];
  execFileSync('apt-get', ['update', '-qq'], { stdio, env });
  execFileSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...packages], { stdio, env });
  if (!areThere()) throw new Lacking(sentence);
}

function areThere(): boolean {
  return (
    runs('nvim', ['--version']) &&
    runs('emacs', ['--batch', '-q', '--eval', "(progn (package-initialize) (require 'eglot))"])
  );
}

function runs(command: string, args: readonly string[]): boolean {
  try {
    execFileSync(command, args, { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
}

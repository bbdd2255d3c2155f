import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { Lacking } from './lacking.js';

const candidates = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** A Chromium to drive; installs Debian's if this process may. */
export function findChromium(): string {
  const named = process.env.CHROMIUM_EXECUTABLE;
  if (named && !existsSync(named)) throw new Lacking(`CHROMIUM_EXECUTABLE names ${named}, which does not exist.`);
  const found = named ?? candidates.find((file) => existsSync(file));
  if (found) return found;
  if (process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) return installChromium();
  throw new Lacking(
    'The editor tests need Chromium: install it (Debian: apt-get install chromium), or name one in CHROMIUM_EXECUTABLE.',
  );
}

function installChromium(): string {
  console.log('Installing Chromium with apt-get …');
  execFileSync('apt-get', ['update', '-qq'], { stdio: ['ignore', 'ignore', 'inherit'] });
  execFileSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], {
    stdio: ['ignore', 'ignore', 'inherit'],
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  });
  return '/usr/bin/chromium';
}

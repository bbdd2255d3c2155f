// Fails if something is known against a library that ships: one of which a bundle holds a part, however npm came to install it.
//   npm run audit [-- --answer FILE]     FILE holds what `npm audit --json` said; without it npm asks its registry
// Ends with 0 if nothing is known, 1 if something is, and 2 if the registry does not answer: then nothing was looked at.
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { shippedFolders } from './shipped.mjs';

const root = path.resolve(import.meta.dirname, '..');
const shipped = new Set(await shippedFolders());
const known = answer()?.vulnerabilities;
if (known === undefined) {
  console.error(
    `audit: the registry does not answer, so nothing was looked at. ${shipped.size} libraries ship; packages/extension/LICENCES.md lists them.`,
  );
  process.exit(2);
}
const found = Object.values(known).filter(({ nodes }) => nodes.some((folder) => shipped.has(folder)));
for (const { name, severity, range, via } of found)
  console.error(`audit: ${name} ${range} ships, ${severity}: ${via.map((one) => one.title ?? one).join('; ')}`);
if (found.length === 0) console.log(`audit: nothing is known against the ${shipped.size} libraries that ship.`);
process.exitCode = found.length === 0 ? 0 : 1;

/** What npm said; undefined if that is no answer. */
function answer() {
  const given = process.argv.indexOf('--answer');
  const text =
    given > 0
      ? readFileSync(process.argv[given + 1], 'utf8')
      : spawnSync('npm', ['audit', '--json'], { cwd: root, encoding: 'utf8' }).stdout;
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

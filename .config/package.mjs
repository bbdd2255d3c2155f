// Builds the extension for production and packs it: boothwright.vsix, the file that a user installs.
//   node .config/package.mjs [OUT.vsix]
import { spawnSync } from 'node:child_process';
import { statSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';

const root = path.resolve(import.meta.dirname, '..');
const out = path.resolve(process.argv[2] ?? path.join(root, 'boothwright.vsix'));
const limit = 1.6e6;
const vsce = path.join(path.dirname(createRequire(import.meta.url).resolve('@vscode/vsce/package.json')), 'vsce');

run('.config/build.mjs', '--production', '--extension-only');
run(vsce, 'package', '--no-dependencies', '--allow-missing-repository', '--no-rewrite-relative-links', '--out', out);

const size = statSync(out).size;
console.log(`${path.relative(process.cwd(), out)}: ${(size / 1e6).toFixed(2)} MB`);
if (size > limit) {
  console.error(`The package is larger than ${limit / 1e6} MB. Look for a dependency that crept into a bundle.`);
  process.exitCode = 1;
}

function run(...args) {
  const { status } = spawnSync(process.execPath, args, { cwd: root, stdio: 'inherit' });
  if (status !== 0) process.exit(1);
}

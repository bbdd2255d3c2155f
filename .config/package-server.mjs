// Packs the language server for editors other than VS Code: a package that needs nothing but Node, for `npm install --global FILE`.
//   node .config/package-server.mjs [FOLDER]
import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';

const root = path.resolve(import.meta.dirname, '..');
const target = path.resolve(process.argv[2] ?? root);
const { version, license, engines } = JSON.parse(readFileSync(path.join(root, 'package.json'), 'utf8'));
const name = 'boothwright-language-server';
const bundle = `${name}.cjs`;

execFileSync(process.execPath, ['.config/build.mjs', '--production', '--server-only'], { cwd: root, stdio: 'inherit' });
const folder = mkdtempSync(path.join(tmpdir(), `${name}-`));
mkdirSync(path.join(folder, 'dist'));
cpSync(path.join(root, 'packages/language/dist', bundle), path.join(folder, 'dist', bundle));
for (const file of ['LICENSE', 'packages/extension/LICENCES.md'])
  cpSync(path.join(root, file), path.join(folder, path.basename(file)));
cpSync(path.join(root, 'packages/extension/l10n'), path.join(folder, 'l10n'), { recursive: true });
const manifest = {
  name,
  version,
  description: 'The language server for booth files: checks, hovers, fixes, completion and formatting in any editor.',
  license,
  engines: { node: engines.node },
  bin: { [name]: `dist/${bundle}` },
  files: ['dist', 'l10n', 'LICENCES.md'],
};
writeFileSync(path.join(folder, 'package.json'), `${JSON.stringify(manifest, null, 2)}\n`);
mkdirSync(target, { recursive: true });
const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
execFileSync(npm, ['pack', '--silent', '--pack-destination', target], {
  cwd: folder,
  shell: process.platform === 'win32',
});
rmSync(folder, { recursive: true });
console.log(path.join(target, `${name}-${version}.tgz`));

// Changes the checks one small piece at a time and counts the changes that no test notices (mutation testing, by Stryker).
//   npm run mutate -- [GROUP…]     a folder of packages/fit/src/checks, or 'shared' for the files beside them; all if none is named
// Stryker comes from npm, once, into dist/mutate: it is large, and nothing else needs it. Ends with a table, and fails if any group is below 80 %.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';

const LEAST_SHARE = 80;
const wanted = { '@stryker-mutator/core': '9.6.1', '@stryker-mutator/vitest-runner': '9.6.1' };
const root = path.resolve(import.meta.dirname, '..');
const dist = path.join(root, 'dist/mutate');
const checks = path.join(root, 'packages/fit/src/checks');

const all = [...readdirSync(checks, { withFileTypes: true }).flatMap((one) => (one.isDirectory() ? [one.name] : []))];
const groups = process.argv.slice(2).length ? process.argv.slice(2) : [...all, 'shared'];
install();
const counts = groups.map((group) => ({ group, ...mutate(group) }));
print(counts);
if (counts.some((group) => !group.ended || share(group) < LEAST_SHARE)) process.exitCode = 1;

function install() {
  if (Object.keys(wanted).every((name) => existsSync(path.join(dist, 'node_modules', name)))) return;
  mkdirSync(dist, { recursive: true });
  writeFileSync(path.join(dist, 'package.json'), JSON.stringify({ private: true, dependencies: wanted }));
  // Vitest, which the runner asks for as a peer, is the project's own.
  const quiet = ['--ignore-scripts', '--no-audit', '--no-fund', '--no-package-lock', '--legacy-peer-deps'];
  const { status } = spawnSync('npm', ['install', ...quiet], { cwd: dist, stdio: ['ignore', 'ignore', 'inherit'] });
  if (status !== 0) throw new Error('Stryker could not be installed, so nothing was measured.');
}

function mutate(group) {
  const stryker = path.join(dist, 'node_modules/@stryker-mutator/core/bin/stryker.js');
  const { status } = spawnSync(
    process.execPath,
    [stryker, 'run', path.join(import.meta.dirname, 'stryker.config.mjs')],
    {
      cwd: root,
      stdio: 'inherit',
      env: { ...process.env, MUTATE_GROUP: group },
    },
  );
  const report = path.join(dist, `${group}.json`);
  if (status !== 0 || !existsSync(report)) return { ended: false, killed: 0, survived: 0 };
  const statuses = Object.values(JSON.parse(readFileSync(report, 'utf8')).files).flatMap(({ mutants }) =>
    mutants.map((mutant) => mutant.status),
  );
  const count = (...names) => statuses.filter((one) => names.includes(one)).length;
  return { ended: true, killed: count('Killed', 'Timeout'), survived: count('Survived', 'NoCoverage') };
}

function sum(rows) {
  const of = (key) => rows.reduce((total, row) => total + row[key], 0);
  return { killed: of('killed'), survived: of('survived') };
}

function share({ killed, survived }) {
  return (100 * killed) / (killed + survived || 1);
}

function print(rows) {
  const line = ({ group, killed, survived }) =>
    `${group.padEnd(12)}${String(killed + survived).padStart(8)}${String(killed).padStart(8)}${share({ killed, survived }).toFixed(1).padStart(8)} %`;
  console.log(`\n${'group'.padEnd(12)}${'changes'.padStart(8)}${'noticed'.padStart(8)}${'share'.padStart(8)}`);
  for (const row of rows) console.log(row.ended ? line(row) : `${row.group.padEnd(12)} did not end`);
  if (rows.length > 1) console.log(line({ group: 'all', ...sum(rows) }));
}

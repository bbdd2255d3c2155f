// Builds, checks the example booth with the command line, and writes its fit report.
import { spawnSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import path from 'node:path';

const root = path.resolve(import.meta.dirname, '..');
const example = 'examples/larkfield-hall-first-plan.booth';
const report = 'dist/larkfield-hall-first-plan.html';
const foundThings = 1;

const run = (...args) => spawnSync(process.execPath, args, { cwd: root, stdio: 'inherit' }).status ?? 2;
const stopUnless = (status, most) => {
  if (status > most) process.exit(status);
};

stopUnless(run('.config/build.mjs'), 0);
console.log(`\n$ boothwright check ${example}\n`);
stopUnless(run('packages/cli/dist/boothwright.cjs', 'check', example), foundThings);
mkdirSync(path.join(root, path.dirname(report)), { recursive: true });
stopUnless(run('packages/cli/dist/boothwright.cjs', 'report', example, '-o', report), foundThings);
console.log(`\nThe fit report: ${path.join(root, report)}. Open it in a browser.`);
console.log('To plan a booth of your own, open this folder in VS Code and press F5.');

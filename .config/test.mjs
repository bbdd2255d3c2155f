// Runs the tests and then the editor suite, and closes with one line: 'N passed, N failed'.
//   node .config/test.mjs [--unit | --editor]
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { createRequire } from 'node:module';

const root = path.resolve(import.meta.dirname, '..');
const vitest = path.join(path.dirname(createRequire(import.meta.url).resolve('vitest/package.json')), 'vitest.mjs');
const suites = [
  { flag: '--unit', config: '.config/vitest.config.ts', more: ['--coverage'] },
  { flag: '--editor', config: '.config/vitest.editor.config.ts' },
];
const wanted = suites.filter(({ flag }) => process.argv.includes(flag));
const scratch = mkdtempSync(path.join(tmpdir(), 'boothwright-test-'));

let passed = 0;
let failed = 0;
for (const { flag, config, more = [] } of wanted.length ? wanted : suites) {
  const results = path.join(scratch, `results${flag}.json`);
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${results}`];
  const { status } = spawnSync(process.execPath, [vitest, 'run', '--config', config, ...reporters, ...more], {
    cwd: root,
    stdio: 'inherit',
  });
  const counts = read(results);
  passed += counts.passed;
  failed += counts.failed;
  // A suite that ended badly without a failed test (a file that does not load, an editor that cannot be had) counts as one.
  if (status !== 0 && counts.failed === 0) failed += 1;
}
rmSync(scratch, { recursive: true, force: true });
console.log(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 || passed === 0 ? 1 : 0;

function read(file) {
  try {
    const { numPassedTests, numFailedTests, testResults } = JSON.parse(readFileSync(file, 'utf8'));
    const unloaded = testResults.filter(
      ({ status, assertionResults }) => status === 'failed' && !assertionResults.length,
    ).length;
    return { passed: numPassedTests, failed: numFailedTests + unloaded };
  } catch {
    return { passed: 0, failed: 0 };
  }
}

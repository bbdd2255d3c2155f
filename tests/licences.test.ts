import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';

const root = path.resolve(import.meta.dirname, '..');
const read = (file: string) => readFileSync(path.join(root, file), 'utf8');

test('the list of licences is of what the bundles hold now', { timeout: 120_000 }, () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'boothwright-licences-'));
  const out = path.join(folder, 'LICENCES.md');
  execFileSync(process.execPath, ['.config/generate-licences.mjs', out], { cwd: root });
  const made = readFileSync(out, 'utf8');
  rmSync(folder, { recursive: true });
  expect(made).toBe(read('packages/extension/LICENCES.md'));
  expect(made).toMatch(/^\| langium\s+\|/m);
});

test('it ships with the extension and with the language server', () => {
  expect(read('.vscodeignore').split('\n')).toContain('!packages/extension/LICENCES.md');
  expect(read('.config/package-server.mjs')).toContain('packages/extension/LICENCES.md');
});

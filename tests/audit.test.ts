import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';

const root = path.resolve(import.meta.dirname, '..');
const folder = mkdtempSync(path.join(tmpdir(), 'boothwright-audit-'));
afterAll(() => rmSync(folder, { recursive: true }));

const known = (name: string) => ({
  [name]: {
    name,
    severity: 'high',
    range: '<9',
    via: [{ title: 'Invented for a test' }],
    nodes: [`node_modules/${name}`],
  },
});

/** What the audit makes of an answer of the registry; nothing is sent. */
function auditOf(answer: object): { status: number | null; out: string } {
  const file = path.join(folder, 'answer.json');
  writeFileSync(file, JSON.stringify(answer));
  const script = ['.config/audit.mjs', '--answer', file];
  const { status, stdout, stderr } = spawnSync(process.execPath, script, { cwd: root, encoding: 'utf8' });
  return { status, out: stdout + stderr };
}

test.each<[string, object, number, RegExp]>([
  [
    'a library that ships',
    { vulnerabilities: known('langium') },
    1,
    /^audit: langium <9 ships, high: Invented for a test\n$/,
  ],
  [
    'one that only builds',
    { vulnerabilities: known('esbuild') },
    0,
    /^audit: nothing is known against the \d\d+ libraries/,
  ],
  ['nothing', { vulnerabilities: {} }, 0, /^audit: nothing is known/],
  ['a registry that does not answer', { error: { summary: '', detail: '' } }, 2, /nothing was looked at/],
])('the audit, of %s', { timeout: 120_000 }, (_, answer, status, words) => {
  const outcome = auditOf(answer);
  expect(outcome.out).toMatch(words);
  expect(outcome.status).toBe(status);
});

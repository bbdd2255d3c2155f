import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const root = new URL('../../', import.meta.url);
const table = readFileSync(new URL('tests/editor-features.md', root), 'utf8');
const named = [...new Set([...table.matchAll(/`([^`]+\.test\.tsx?)`/g)].map(([, file]) => file!))];

describe('each test that the table of features names is there, and tests something', () => {
  test.each(named)('%s', (file) => {
    const place = new URL(file, root);
    expect(existsSync(place)).toBe(true);
    expect(readFileSync(place, 'utf8')).toMatch(/\b(test|it)(\.each)?\(/);
  });
});

test('the table names every test of the language server and its features', () => {
  const folder = 'packages/language/src/lsp/';
  const there = readdirSync(new URL(folder, root)).filter((file) => file.endsWith('.test.ts'));
  expect(there.map((file) => folder + file).filter((file) => !named.includes(file))).toEqual([]);
});

test('each feature has a unit test', () => {
  const rows = table.split('\n').filter((line) => /^\| [a-z]/.test(line) && !line.startsWith('| feature'));
  expect(rows.length).toBeGreaterThan(15);
  for (const row of rows) expect(row.split('|')[2]).toMatch(/\.test\.tsx?`/);
});

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const root = new URL('../../', import.meta.url);
const table = readFileSync(new URL('tests/editor-features.md', root), 'utf8');
const lines = [...table.matchAll(/^\| ([^|]*) \| `([^`]+)` \| ([^|]+) \|$/gm)].map(([, feature, file, title]) => ({
  feature: feature!.trim(),
  file: file!,
  title: title!,
}));
const named = new Set(lines.map(({ file }) => file));

describe('each test that the table of features names is there', () => {
  test.each(lines)('$file: $title', ({ file, title }) => {
    const place = new URL(file, root);
    expect(existsSync(place)).toBe(true);
    expect(titlesIn(readFileSync(place, 'utf8'), file)).toContain(title);
  });
});

test('every line of the table is read', () => {
  const written = table.split('\n').filter((line) => line.startsWith('|') && line.includes('`'));
  expect(lines).toHaveLength(written.length);
  expect(lines[0]!.feature).not.toBe('');
  expect(new Set(lines.map(({ feature }) => feature)).size).toBeGreaterThan(35);
});

test.each(['packages/language/src/lsp/', 'tests/editor/'])('the table names every file of tests in %s', (folder) => {
  const there = readdirSync(new URL(folder, root)).filter((file) => file.endsWith('.test.ts'));
  expect(there.map((file) => folder + file).filter((file) => !named.has(file) && !besides.has(file))).toEqual([]);
});

test('and every folder of fixtures', () => {
  const folders = readdirSync(new URL('tests/fixtures/editor/', root));
  expect(folders.filter((folder) => ![...named].some((file) => file.includes(`/editor/${folder}/`)))).toEqual([]);
});

/** Tests of the insides of a feature that the table holds by another. */
const besides = new Set(
  ['completion', 'hints', 'lenses', 'selection', 'snippets', 'symbols', 'worth']
    .map((name) => `packages/language/src/lsp/${name}.test.ts`)
    .concat('tests/editor/examples.test.ts'),
);

/** The titles of tests and groups of them, as the source spells them; of a file of fixtures, its headings. */
function titlesIn(source: string, file: string): string[] {
  if (file.endsWith('.md')) return [...source.matchAll(/^## (.+)$/gm)].map(([, title]) => title!);
  const opening = /\b(?:test|it|describe)(?:\.each\((?:[^()]|\([^()]*\))*\))?\(\s*(['"`])((?:\\.|(?!\1).)*)\1/g;
  const plain = [...source.matchAll(opening)].map(([, , title]) => title!);
  const each = [...source.matchAll(/\]\)\(\s*(['"`])((?:\\.|(?!\1).)*)\1/g)].map(([, , title]) => title!);
  return [...plain, ...each];
}

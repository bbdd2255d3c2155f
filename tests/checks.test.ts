import { readdir, readFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { checks, type Check, type Source } from '@boothwright/fit';
import { describe, expect, it } from 'vitest';

const here = path.dirname(fileURLToPath(import.meta.url));
const fit = path.join(here, '../packages/fit/src');
const table = path.join(here, 'checks.md');

interface TestFile {
  /** From `packages/fit/src`. */
  readonly name: string;
  readonly text: string;
}

/** The test beside a check, then every other that names it; an id of one word may be any word. */
function testsOf({ id, group }: Check, files: readonly TestFile[]): readonly TestFile[] {
  const beside = `checks/${group}/${id}.test.ts`;
  const own = files.filter(({ name }) => name === beside);
  const others = id.includes('-') ? files.filter(({ name, text }) => name !== beside && text.includes(`'${id}'`)) : [];
  return [...own, ...others];
}

const commonWords = new Set(
  'Part Table Rev Standards University City Document Government Computer Workstations House American Society State Fund Online Information Document Approved Conti'.split(
    ' ',
  ),
);

/** The words by which a source is known: 'Panero' and 'Zelnik', 'NUREG-0700', 'IBC', '403.5.1'. None for bounds of our own. */
function wordsOf({ name, read }: Source): readonly string[] {
  if (read === 'own bound') return [];
  const words = name.match(/[A-Z][A-Za-z]*(?:[/-][A-Z0-9][A-Za-z0-9]*)*|\d{3,}\.\d+(?:\.\d+)*|trade/g) ?? [];
  return words.filter((word) => word.length >= 3 && !commonWords.has(word));
}

/** Which sources a test names, beside the values that it takes from them. */
function namedIn(sources: readonly Source[], { text }: TestFile): readonly string[] {
  return sources.filter((source) => wordsOf(source).some((word) => text.includes(word))).map(({ name }) => name);
}

/** 'T3', 'W34': examples that published sources print or that follow from a printed rule, with their outcomes. */
function workedExamplesIn({ text }: TestFile): readonly string[] {
  const labels = [...new Set(text.match(/\b[TW]\d{1,2}\b/g) ?? [])];
  return labels.sort((a, b) => a.localeCompare(b, 'en', { numeric: true }));
}

async function testFiles(): Promise<readonly TestFile[]> {
  const names = (await readdir(fit, { recursive: true })).filter((name) => /\.test\.tsx?$/.test(name)).sort();
  return Promise.all(
    names.map(async (name) => ({
      name: name.split(path.sep).join('/'),
      text: await readFile(path.join(fit, name), 'utf8'),
    })),
  );
}

function written(files: readonly TestFile[]): string {
  const cell = (lines: readonly string[]) => lines.join('<br>').replaceAll('|', '\\|') || '–';
  const rows = checks.map((check) => {
    const tests = testsOf(check, files);
    const named = new Set(tests.flatMap((file) => namedIn(check.sources, file)));
    return [
      check.id,
      cell(check.sources.map(({ name, read }) => `${name} (${read})`)),
      cell(tests.map(({ name }) => `\`${name}\``)),
      cell([...named]),
      tests.slice(0, 1).flatMap(workedExamplesIn).join(', ') || '–',
    ];
  });
  const text = [
    '# Checks, sources, and the tests that hold outside values',
    'Made by `checks.test.ts` from the catalogue and the test files below `packages/fit/src`; `vitest run tests/checks.test.ts -u` writes it anew. ' +
      'The last two columns say where a test takes values from outside: the sources that it names beside them, and the worked examples, which ' +
      '`testing/worked-examples*.test.ts` lists. A check with neither rests on its printed limit, its own bounds, or cases computed by hand.',
    [
      '<!-- prettier-ignore -->',
      '| Check | Sources, and how they were read | Tests | Sources named there | Worked examples there |',
      '| --- | --- | --- | --- | --- |',
      ...rows.map((row) => `| ${row.join(' | ')} |`),
    ].join('\n'),
  ].join('\n\n');
  return `${text}\n`;
}

describe('the table of checks', async () => {
  const files = await testFiles();

  it('says what the catalogue and the tests say', async () => {
    await expect(written(files)).toMatchFileSnapshot(table);
  });

  it.each(checks.map((check) => [check.id, check] as const))('%s has a test beside it', (_, check) => {
    expect(testsOf(check, files)[0]?.name).toBe(`checks/${check.group}/${check.id}.test.ts`);
  });
});

import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { checks, type Check } from '@boothwright/fit';
import { describe, expect, it } from 'vitest';
import { type OutsideValues, outsideValuesIn } from './outside-values.js';

const here = path.dirname(fileURLToPath(import.meta.url));
const fit = path.join(here, '../packages/fit/src');
const table = path.join(here, 'checks.md');

/** From `packages/fit/src`. */
const testOf = ({ id, group }: Check) => `checks/${group}/${id}.test.ts`;

function outsideValuesOf(check: Check): OutsideValues[] {
  const file = path.join(fit, testOf(check));
  return existsSync(file) ? outsideValuesIn(testOf(check), readFileSync(file, 'utf8')) : [];
}

function written(): string {
  const cell = (lines: readonly string[]) => lines.join('<br>').replaceAll('|', '\\|');
  const rows = checks.map((check) => {
    const held = outsideValuesOf(check).map(({ source, values }) => `**${source}**: ${values.join('; ')}`);
    const none = check.unpublished === undefined ? [] : [`no published figure: ${check.unpublished}`];
    return [
      check.id,
      cell(check.sources.map(({ name, read }) => `${name} (${read})`)),
      cell([...none, ...held]),
      `\`${testOf(check)}\``,
    ];
  });
  const text = [
    '# Checks, sources, and the outside values that tests hold',
    'Made by `checks.test.ts` from the catalogue and the tests below `packages/fit/src`; `vitest run tests/checks.test.ts -u` writes it anew. ' +
      'An outside value is one that nobody here made up. Each is the title of a test, or of a row of its table, so it is held. T1 to T27 and W1 ' +
      'to W38 are worked examples, which `testing/worked-examples*.test.ts` lists.',
    [
      '<!-- prettier-ignore -->',
      '| Check | Sources, and how they were read | Outside values, and where they are published | Test |',
      '| --- | --- | --- | --- |',
      ...rows.map((row) => `| ${row.join(' | ')} |`),
    ].join('\n'),
  ].join('\n\n');
  return `${text}\n`;
}

describe('the table of checks', () => {
  it('says what the catalogue and the tests say', async () => {
    await expect(written()).toMatchFileSnapshot(table);
  });

  it.each(checks.map((check) => [check.id, check] as const))('%s has a test beside it', (_, check) => {
    expect(existsSync(path.join(fit, testOf(check)))).toBe(true);
  });

  it.each(checks.map((check) => [check.id, check] as const))(
    '%s is held to two published values, or says why there is none',
    (_, check) => {
      const count = outsideValuesOf(check).flatMap(({ values }) => values).length;
      if (check.unpublished === undefined) expect(count).toBeGreaterThanOrEqual(2);
      else expect(count).toBe(0);
    },
  );

  it('lists no value that is not held', () => {
    const values = (text: string) => outsideValuesIn('a.test.ts', text);
    const said = "outside('A', '1 in', '2 in')";
    const listed = [{ source: 'A', values: ['1 in', '2 in'] }];
    expect(values(`it(${said}, () => {})`)).toEqual(listed);
    expect(values(`it.each([[${said}, 1], ['no', 2]] as const)('%s', f)`)).toEqual(listed);
    expect(values(`const a = 'A'; it(outside(a, '1 in', '2 in'), f)`)).toEqual(listed);
    for (const text of [`const a = ${said};`, `const rows = [[${said}, 1]];`, `f(${said})`])
      expect(() => values(text), text).toThrow('a.test.ts:1: outside(…) stands where no test');
    expect(() => values('it(outside(f(), "1 in"), f)')).toThrow('plain texts');
  });
});

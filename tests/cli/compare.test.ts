import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import schema from '@boothwright/cli/schema/comparison-1.schema.json' with { type: 'json' };
import { Ajv2020 } from 'ajv/dist/2020.js';
import { beforeAll, describe, expect, it } from 'vitest';
import { commandLine } from './boothwright.js';
import { accepted, dragging, faulty, furniture, good } from './booths.js';

const { run, put, folder } = commandLine();
const examples = fileURLToPath(new URL('../../examples/', import.meta.url));
const example = (name: string) => path.join(examples, `${name}.booth`);
const validate = new Ajv2020({ strict: false }).compile(schema);

interface Printed {
  layouts: { open: Record<string, number>; accepted: number }[];
  changes: Record<
    'gains' | 'losses' | 'dropped' | 'added',
    { check: string; outcomes: ({ verdict: string } | null)[] }[]
  >[];
  walkways: { name: string; clear: (number | null)[] }[];
}

async function compared(...files: string[]): Promise<Printed> {
  const { status, out } = await run('compare', ...files, '--format', 'json');
  expect(status).toBe(0);
  const printed: unknown = JSON.parse(out);
  expect(validate(printed), JSON.stringify(validate.errors)).toBe(true);
  return printed as Printed;
}

beforeAll(async () => {
  await put('dragging.booth', dragging);
  await put('good.booth', good);
});

describe('compare', () => {
  it.each([
    ['larkfield-hall-first-plan', 'larkfield-hall'],
    ['oakmere-annex-worst', 'oakmere-annex-mended'],
  ])('agrees with what check says of %s and %s', async (first, second) => {
    const { layouts, changes, walkways } = await compared(example(first), example(second));
    for (const [index, name] of [first, second].entries()) {
      const { out } = await run('check', example(name), '--format', 'json');
      const checked = JSON.parse(out) as {
        findings: { verdict: string; accepted: string | null }[];
        walkways: { name: string; clear: number | null }[];
      };
      const open = checked.findings.filter((finding) => finding.accepted === null);
      expect(layouts[index]!.open.fail).toBe(open.filter(({ verdict }) => verdict === 'fail').length);
      expect(layouts[index]!.accepted).toBe(checked.findings.length - open.length);
      for (const { name: way, clear } of checked.walkways) {
        expect(walkways.find((one) => one.name === way)!.clear[index]).toBe(clear);
      }
    }
    expect(changes[0]!.gains.length).toBeGreaterThan(changes[0]!.losses.length);
    const { out } = await run('compare', example(first), example(second));
    expect(out).toContain(`Gains (${changes[0]!.gains.length})`);
  });

  it('says in words what a layout gains, and that it loses nothing', async () => {
    const { status, out, err } = await run('compare', 'dragging.booth', 'good.booth');
    expect([status, err]).toEqual([0, '']);
    expect(out).toContain(
      'Larkfield Hall (good.booth) against Larkfield Hall (dragging.booth)\nGains (1)\n  - Skirt and floor (skirt Front): fails, then passes\nLoses nothing.',
    );
  });

  it('takes more than two, each against the first', async () => {
    await put('accepted.booth', accepted);
    const { changes } = await compared('good.booth', 'dragging.booth', 'accepted.booth');
    expect(changes.map(({ losses }) => losses.map(({ check }) => check))).toEqual([['skirt-drop'], ['skirt-drop']]);
  });

  it('writes a page, Markdown or JSON, and replaces only its own', async () => {
    for (const [name, start] of [
      ['a.html', /^<!doctype html>/],
      ['a.md', /^<!-- Boothwright 0\.1\.0 -->\n\n# Layouts side by side/],
      ['a.json', /^\{\n {2}"schema": "boothwright-comparison-1"/],
    ] as const) {
      for (const _ of ['once', 'again']) {
        expect((await run('compare', 'dragging.booth', 'good.booth', '-o', name)).out).toBe(`Wrote ${name}\n`);
      }
      const text = await readFile(path.join(folder(), name), 'utf8');
      expect(text).toMatch(start);
      expect(text).not.toMatch(/<script|https?:/);
    }
    await put('theirs.html', '<p>theirs');
    expect((await run('compare', 'dragging.booth', 'good.booth', '-o', 'theirs.html')).err).toContain(
      'did not make it',
    );
    expect((await run('compare', 'dragging.booth', 'good.booth', '-o', 'good.booth')).status).toBe(2);
  });

  it('leaves names out of every form when asked, and says on the first page which it does', async () => {
    const [first, second] = [example('larkfield-hall-first-plan'), example('larkfield-hall')];
    for (const [name, said] of [
      ['names.html', 'Names are left out'],
      ['names.md', 'Names are left out'],
      ['names.json', 'Person A'],
    ] as const) {
      expect((await run('compare', first, second, '-o', name, '--names', 'letters')).status).toBe(0);
      const text = await readFile(path.join(folder(), name), 'utf8');
      expect(text).toContain(said);
      expect(text).not.toMatch(/Noor|Tobias|Priya/);
    }
    expect((await run('compare', first, second, '--names', 'letters')).out).not.toMatch(/Noor|Tobias|Priya/);
    expect((await run('compare', first, second, '-o', 'full.html')).status).toBe(0);
    expect(await readFile(path.join(folder(), 'full.html'), 'utf8')).toContain(
      'Operators are named as in the booth file.',
    );
    expect((await run('compare', first, second, '--names', 'none')).err).toContain(
      "--names takes full or letters, not 'none'",
    );
  });

  it.each([
    [['good.booth'], /name two booth files or more/],
    [['good.booth', 'furniture.booth'], /furniture\.booth holds no booth to compare/],
    [['good.booth', 'missing.booth'], /there is no such file/],
    [['good.booth', 'faulty.booth'], /^faulty\.booth:3:\d+: error/],
    [['good.booth', 'dragging.booth', '-o', 'a.txt'], /ends in none of \.html, \.md and \.json/],
  ])('says what is wrong: %j', async (args, complaint) => {
    await put('furniture.booth', furniture);
    await put('faulty.booth', faulty);
    const { status, out, err } = await run('compare', ...args);
    expect(err).toMatch(complaint);
    expect([status, out]).toEqual([2, '']);
  });
});

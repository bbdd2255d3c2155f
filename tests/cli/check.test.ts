import { mkdir } from 'node:fs/promises';
import path from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import schema from '../../packages/cli/schema/assessment-1.schema.json' with { type: 'json' };
import { commandLine } from './boothwright.js';
import { accepted, dragging, faulty, furniture, good, seated, second, skirted } from './booths.js';

const { run, runWith, put, folder } = commandLine();
const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(schema);

interface Printed {
  readonly understood: boolean;
  readonly booth: string | null;
  readonly findings: readonly Record<string, unknown>[];
  readonly workstations: readonly { readonly name: string; readonly served: readonly Record<string, unknown>[] }[];
  readonly walkways: readonly { readonly name: string; readonly clear: number | null }[];
  readonly problems: readonly Record<string, unknown>[];
}

/** The printed object, which must keep to the schema. */
function parse(out: string): Printed {
  const printed: unknown = JSON.parse(out);
  expect(validate(printed), JSON.stringify(validate.errors)).toBe(true);
  return printed as Printed;
}

describe('check', () => {
  it('ends with 0 when nothing failed', async () => {
    const { status, out, err } = await run('check', await put('good.booth', good));
    expect(err).toBe('');
    expect(out).toMatch(/^Larkfield Hall good\.booth$/m);
    expect(out).toMatch(/^0 failed, \d+ marginal, \d+ cannot be said, [1-9]\d* passed\.$/m);
    expect(status).toBe(0);
  });

  it('ends with 1 when something failed, and says where and why', async () => {
    const { status, out } = await run('check', await put('dragging.booth', dragging));
    const column = dragging.split('\n')[2]!.indexOf('41in') + 1;
    expect(out).toContain(`dragging.booth:3:${column}  FAIL  skirt-drop, skirt Front\n`);
    expect(out).toMatch(/^1 failed/m);
    expect(status).toBe(1);
  });

  it('ends with 0 when what failed is accepted, and repeats the reason', async () => {
    const { status, out } = await run('check', await put('accepted.booth', accepted));
    expect(out).toContain('FAIL, accepted  skirt-drop');
    expect(out).toContain('Because: hemmed on site');
    expect(out).toMatch(/^0 failed.*1 accepted\.$/m);
    expect(status).toBe(0);
  });

  it('ends with 2 when the text is not understood, points at the fault, and checks the rest', async () => {
    const { status, out, err } = await run('check', await put('faulty.booth', `${faulty}${second}`));
    const column = faulty.split('\n')[2]!.indexOf('39') + 1;
    expect(err).toMatch(new RegExp(`^faulty\\.booth:3:${column}: error: .{10,}\\n$`));
    expect(out).toMatch(/^Larkfield Hall faulty\.booth\n\nfaulty\.booth was not fully understood: what has errors/);
    expect(out).toMatch(/ FAIL {2}skirt-drop, skirt Side\n/);
    expect(out).not.toMatch(/FAIL.*skirt Front/);
    expect(status).toBe(2);
  });

  it('says that all was understood only if it was', async () => {
    expect((await run('check', await put('good.booth', good))).out).not.toContain('not fully understood');
  });

  it.each([
    ['missing.booth', /^missing\.booth: error: there is no such file/],
    ['.', /^\.: error: this is a folder/],
  ])('ends with 2 for %s', async (file, complaint) => {
    const { status, out, err } = await run('check', file);
    expect(err).toMatch(complaint);
    expect(out).toBe('');
    expect(status).toBe(2);
  });

  it('takes the worst status of several files, and judges those it can', async () => {
    const files = [await put('good.booth', good), await put('dragging.booth', dragging)];
    expect((await run('check', ...files)).status).toBe(1);
    const { status, out, err } = await run('check', ...files, await put('faulty.booth', faulty));
    expect(status).toBe(2);
    expect(err).toContain('faulty.booth:3:');
    expect(out).toMatch(/^1 failed/m);
    expect(out.match(/ failed, /g)).toHaveLength(1);
    expect(out.match(/not fully understood/g)).toHaveLength(1);
  });

  it('points into the file that says it, also through an import', async () => {
    await mkdir(path.join(folder(), 'shared'), { recursive: true });
    await put('shared/furniture.booth', furniture);
    const text = `import "shared/furniture.booth"\n${skirted('41in')
      .replace(/^desk.*$/m, '')
      .replace('Left', 'Shared')}`;
    const { err, out, status } = await run('check', await put('importing.booth', text), '--format', 'json');
    expect(err).toBe('');
    expect(status).toBe(1);
    expect(parse(out).findings.find(({ check }) => check === 'skirt-drop')).toMatchObject({
      verdict: 'fail',
      range: { file: 'importing.booth', start: { line: 4 } },
    });
    await put('shared/furniture.booth', furniture.replace('40in', '40'));
    const broken = await run('check', 'importing.booth');
    expect(broken.err).toMatch(/^shared.furniture\.booth:1:\d+: error/m);
    expect(broken.status).toBe(2);
  });

  it('has nothing to say of a file that holds no booth', async () => {
    const { status, out } = await run('check', await put('furniture.booth', furniture));
    expect(out).toMatch(/^furniture\.booth holds no booth/);
    expect(status).toBe(0);
  });

  it('counts what passes, and writes it out when asked', async () => {
    const file = await put('good.booth', good);
    expect((await run('check', file)).out).not.toContain('PASS');
    expect((await run('check', file, '--passes')).out).toMatch(/PASS {2}skirt-drop/);
  });

  it('keeps prose within 80 columns', async () => {
    const { out } = await run('check', await put('seated.booth', seated), '--passes');
    const longest = Math.max(...out.split('\n').map((line) => line.length));
    expect(longest).toBeGreaterThan(60);
    expect(longest).toBeLessThanOrEqual(80);
  });

  it('colours only when a terminal reads, or when told to, and never against NO_COLOR', async () => {
    const file = await put('dragging.booth', dragging);
    const escape = '\u001b[';
    expect((await run('check', file)).out).not.toContain(escape);
    expect((await runWith({ CI: '1' }, 'check', file)).out).not.toContain(escape);
    expect((await runWith({ FORCE_COLOR: '1' }, 'check', file)).out).toContain(escape);
    expect((await runWith({ FORCE_COLOR: '1', NO_COLOR: '1' }, 'check', file)).out).not.toContain(escape);
  });
});

describe('check --format json', () => {
  it('prints one object for one file, whatever the status', async () => {
    const failed = await run('check', await put('dragging.booth', dragging), '--format', 'json');
    expect(failed.status).toBe(1);
    expect(failed.err).toBe('');
    const finding = parse(failed.out).findings.find(({ check }) => check === 'skirt-drop');
    expect(finding).toMatchObject({
      verdict: 'fail',
      subject: 'Front',
      subjectKind: 'skirt',
      measured: -25.4,
      unit: 'mm',
    });

    expect(parse(failed.out).understood).toBe(true);

    const misunderstood = await run('check', await put('faulty.booth', `${faulty}${second}`), '--format=json');
    expect(misunderstood.status).toBe(2);
    expect(misunderstood.err).toBe('');
    const half = parse(misunderstood.out);
    expect(half.findings).toContainEqual(
      expect.objectContaining({ check: 'skirt-drop', subject: 'Side', verdict: 'fail' }),
    );
    expect(half).toMatchObject({
      understood: false,
      booth: 'Larkfield Hall',
      problems: [{ severity: 'error', code: 'no-unit', range: { file: 'faulty.booth', start: { line: 3 } } }],
    });

    const missing = await run('check', 'missing.booth', '--format', 'json');
    expect(missing.status).toBe(2);
    expect(parse(missing.out)).toMatchObject({
      understood: false,
      booth: null,
      findings: [],
      problems: [{ range: null }],
    });
  });

  it('tells of workstations and walkways', async () => {
    const { out } = await run('check', await put('seated.booth', seated), '--format', 'json');
    const { booth, findings, workstations, walkways } = parse(out);
    expect(booth).toBe('Larkfield Hall');
    expect(workstations.map(({ name }) => name)).toEqual(['Sound']);
    expect(workstations[0]!.served.map(({ who, posture }) => `${String(who)} ${String(posture)}`).sort()).toEqual([
      'Noor sit',
      'Noor stand',
      'Tobias sit',
      'Tobias stand',
    ]);
    // 72 in behind the desk, less 19 in for an occupied seat.
    expect(walkways).toEqual([{ name: 'Behind', clear: 1346.2 }]);
    expect(findings.find(({ check }) => check === 'walkway-width')).toMatchObject({
      verdict: 'pass',
      measured: 1346.2,
    });
  });

  it('prints an array for several files', async () => {
    const { out } = await run(
      'check',
      await put('good.booth', good),
      await put('faulty.booth', faulty),
      '--format',
      'json',
    );
    const objects = JSON.parse(out) as unknown[];
    expect(objects).toHaveLength(2);
    for (const object of objects) expect(validate(object), JSON.stringify(validate.errors)).toBe(true);
  });

  it('gives the same bytes twice', async () => {
    const file = await put('seated.booth', seated);
    const [first, second] = [
      await run('check', file, '--format', 'json'),
      await run('check', file, '--format', 'json'),
    ];
    expect(first.out).toBe(second.out);
  });
});

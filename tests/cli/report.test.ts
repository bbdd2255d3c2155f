import { mkdir, readFile, readdir } from 'node:fs/promises';
import path from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { commandLine } from './boothwright.js';
import { dragging, faulty, furniture, seated } from './booths.js';

const { run, put, folder } = commandLine();
const read = (name: string) => readFile(path.join(folder(), name), 'utf8');

beforeEach(async () => {
  await put('hall.booth', dragging);
});

describe('report', () => {
  it('writes one page that names the booth, the finding, the version and the day', async () => {
    const { status, out, err } = await run('report', 'hall.booth', '-o', 'hall.html');
    expect([status, out, err]).toEqual([0, 'Wrote hall.html\n', '']);
    const html = await read('hall.html');
    expect(html).toMatch(/^<!doctype html>/);
    expect(html).toContain('<h1>Larkfield Hall: fit report</h1>');
    expect(html).toContain('Not yet.');
    expect(html).toContain(`${new Date().getFullYear()} · made with Boothwright 0.1.0`);
    expect(html).not.toMatch(/<script|https?:/);
  });

  it('shows every message that check prints', async () => {
    await put('seated.booth', seated);
    const { out } = await run('check', 'seated.booth', '--format', 'json');
    await run('report', 'seated.booth', '--output', 'seated.html');
    const html = await read('seated.html');
    const { findings } = JSON.parse(out) as { findings: { message: string }[] };
    expect(findings.length).toBeGreaterThan(5);
    for (const { message } of findings)
      expect(html).toContain(message.replaceAll('&', '&amp;').replaceAll('"', '&quot;'));
  });

  it('shows letters in place of names when asked', async () => {
    await put('seated.booth', seated);
    await run('report', 'seated.booth', '-o', 'letters.html', '--names', 'letters');
    const html = await read('letters.html');
    expect(html).toContain('Person A');
    expect(html).not.toMatch(/Noor|Tobias/);
  });

  it('takes the format from the ending of the file, or as it is told', async () => {
    await put('seated.booth', seated);
    const starts = {
      html: /^<!doctype html>/,
      markdown: /^<!-- Boothwright 0\.1\.0 -->\n\n# Larkfield Hall/,
      json: /^\{\n {2}"schema"/,
    };
    for (const [name, format] of [
      ['a.html', 'html'],
      ['a.md', 'markdown'],
      ['a.Markdown', 'markdown'],
      ['a.json', 'json'],
      ['a.txt', 'html'],
    ] as const) {
      expect((await run('report', 'seated.booth', '-o', name)).status).toBe(0);
      expect(await read(name)).toMatch(starts[format]);
    }
    expect((await run('report', 'seated.booth', '-o', 'a.txt', '--format', 'markdown')).status).toBe(0);
    expect(await read('a.txt')).toMatch(starts.markdown);
    expect((await run('report', 'seated.booth', '-o', 'a.json', '--format', 'html')).status).toBe(0);
    expect(await read('a.json')).toMatch(starts.html);
  });

  it('writes a PDF on the paper of the units, or as it is told', async () => {
    await put('seated.booth', seated);
    await put('metric.booth', seated.replace('show in', 'show mm'));
    const sizeOf = async (name: string) => /MediaBox \[([^\]]+)/.exec(await read(name))![1];
    expect((await run('report', 'seated.booth', '-o', 'a.pdf')).status).toBe(0);
    expect(await read('a.pdf')).toMatch(/^%PDF-/);
    expect(await sizeOf('a.pdf')).toBe('0 0 612 792');
    expect((await run('report', 'metric.booth', '-o', 'a.pdf')).status).toBe(0);
    expect(await sizeOf('a.pdf')).toBe('0 0 595.28 841.89');
    expect((await run('report', 'metric.booth', '-o', 'b', '--format', 'pdf', '--paper', 'letter')).status).toBe(0);
    expect(await sizeOf('b')).toBe('0 0 612 792');
    await put('minutes.pdf', '%PDF-1.7\nminutes');
    expect((await run('report', 'seated.booth', '-o', 'minutes.pdf')).err).toContain('did not make it');
    expect((await run('report', 'seated.booth', '-o', 'a.html', '--paper', 'a4')).err).toBe(
      'boothwright: --paper is for a PDF: add --format pdf, or leave it out.\n',
    );
  });

  it('writes as JSON what check prints, with letters if asked', async () => {
    await put('seated.booth', seated);
    await run('report', 'seated.booth', '-o', 'same.json');
    expect(await read('same.json')).toBe((await run('check', 'seated.booth', '--format', 'json')).out);
    await run('report', 'seated.booth', '-o', 'same.json', '--names', 'letters');
    const lettered = JSON.parse(await read('same.json')) as { findings: { operator: string | null }[] };
    expect(new Set(lettered.findings.flatMap(({ operator }) => operator ?? []))).toEqual(
      new Set(['Person A', 'Person B']),
    );
    expect(await read('same.json')).not.toMatch(/Noor|Tobias/);
  });

  it('advises in the report what advise prints', async () => {
    await put('seated.booth', seated);
    const { out } = await run('advise', 'seated.booth', '--format', 'json');
    const { workstations } = JSON.parse(out) as { workstations: { plans: { title: string }[] }[] };
    const [plan] = workstations[0]!.plans;
    await run('report', 'seated.booth', '-o', 'advised.html');
    await run('report', 'seated.booth', '-o', 'advised.md');
    expect(await read('advised.html')).toContain(plan!.title);
    expect(await read('advised.md')).toContain(`**${plan!.title}**`);
  });

  it('replaces its own report, and no other file without --force', async () => {
    await run('report', 'hall.booth', '-o', 'again.html');
    expect((await run('report', 'hall.booth', '-o', 'again.html')).status).toBe(0);

    await put('minutes.html', '<!doctype html><title>Minutes</title>');
    const refused = await run('report', 'hall.booth', '-o', 'minutes.html');
    expect(refused.status).toBe(2);
    expect(refused.err).toBe(
      'boothwright: minutes.html exists and boothwright did not make it: name another file, or add --force.\n',
    );
    expect(await read('minutes.html')).toContain('Minutes');

    expect((await run('report', 'hall.booth', '-o', 'minutes.html', '--force')).status).toBe(0);
    expect(await read('minutes.html')).toContain('Larkfield Hall');
  });

  it('never replaces the booth file', async () => {
    const { status, err } = await run('report', 'hall.booth', '-o', './hall.booth', '--force');
    expect(err).toContain('is the booth file itself');
    expect(status).toBe(2);
    expect(await read('hall.booth')).toBe(dragging);
  });

  it.each([
    ['reports', /^boothwright: reports is a folder: name a file, such as reports.report\.html\.\n$/],
    ['missing/hall.html', /^boothwright: the folder missing does not exist: make it first, or name another\.\n$/],
    ['hall.booth/hall.html', /^boothwright: hall\.booth is not a folder\.\n$/],
  ])('says in a sentence that %s cannot be written', async (target, complaint) => {
    await mkdir(path.join(folder(), 'reports'), { recursive: true });
    const { status, out, err } = await run('report', 'hall.booth', '-o', target);
    expect(err).toMatch(complaint);
    expect([status, out]).toEqual([2, '']);
  });

  it('writes nothing for a file that it cannot understand, or that holds no booth', async () => {
    await put('faulty.booth', faulty);
    await put('furniture.booth', furniture);
    const misunderstood = await run('report', 'faulty.booth', '-o', 'none.html');
    expect(misunderstood.err).toMatch(/^faulty\.booth:3:\d+: error/);
    expect(misunderstood.status).toBe(2);
    const empty = await run('report', 'furniture.booth', '-o', 'none.html');
    expect(empty.err).toContain('holds no booth');
    expect(empty.status).toBe(2);
    expect(await readdir(folder())).not.toContain('none.html');
  });
});

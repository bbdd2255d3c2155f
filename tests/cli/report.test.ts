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
    expect(html).toContain('<h1>Larkfield Hall</h1>');
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

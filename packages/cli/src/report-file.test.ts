import { mkdir, mkdtemp, readFile, readdir, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { refusal, writeReport } from './report-file.js';

const ours =
  '<!doctype html>\n<html lang="en"><head><meta charset="utf-8"/><meta name="generator" content="Boothwright 0.1.0"/>';
let folder: string;
let source: string;

beforeEach(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'boothwright-'));
  source = path.join(folder, 'hall.booth');
  await writeFile(source, 'booth "Larkfield Hall" {}\n');
});

afterEach(() => rm(folder, { recursive: true }));

function write(name: string, force = false) {
  return writeReport(path.join(folder, name), ours, { force, source });
}

describe('writing a report', () => {
  it('makes a new file and leaves nothing beside it', async () => {
    await write('out.html');
    expect(await readFile(path.join(folder, 'out.html'), 'utf8')).toBe(ours);
    expect((await readdir(folder)).sort()).toEqual(['hall.booth', 'out.html']);
  });

  it('replaces an earlier report of ours', async () => {
    await writeFile(path.join(folder, 'out.html'), `${ours}<p>earlier`);
    await write('out.html');
    expect(await readFile(path.join(folder, 'out.html'), 'utf8')).toBe(ours);
  });

  it.each(['', '<!doctype html><title>Minutes</title>', `${' '.repeat(2000)}${ours}`])(
    'keeps a file it did not make, unless forced',
    async (text) => {
      const target = path.join(folder, 'out.html');
      await writeFile(target, text);
      await expect(write('out.html')).rejects.toThrow(/out\.html exists and boothwright did not make it/);
      expect(await readFile(target, 'utf8')).toBe(text);
      await write('out.html', true);
      expect(await readFile(target, 'utf8')).toBe(ours);
    },
  );

  it('never replaces the booth file, even by force or through a link', async () => {
    await symlink(source, path.join(folder, 'link.html'));
    await expect(write('hall.booth', true)).rejects.toThrow(/is the booth file itself/);
    await expect(write('link.html', true)).rejects.toThrow(/is the booth file itself/);
    expect(await readFile(source, 'utf8')).toContain('Larkfield Hall');
  });

  it('says in one sentence what is wrong with the place', async () => {
    await mkdir(path.join(folder, 'reports'));
    await expect(write('reports')).rejects.toThrow(/reports is a folder: name a file, such as .*report\.html\.$/);
    await expect(write('missing/out.html')).rejects.toThrow(/the folder .*missing does not exist/);
    await expect(write('hall.booth/out.html')).rejects.toThrow(/hall\.booth is not a folder\.$/);
  });

  it.each(['EACCES', 'EPERM', 'EROFS'])('says that a place may not be written (%s)', (code) => {
    const error = Object.assign(new Error('refused'), { code });
    expect(refusal('/halls/out.html', error)).toBe(
      '/halls/out.html may not be written: choose a folder that is yours.',
    );
  });
});

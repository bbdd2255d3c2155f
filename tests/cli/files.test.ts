import { execFileSync, spawn } from 'node:child_process';
import { chmod, mkdir, readdir, readFile, readlink, rm, stat, symlink, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { commandLine } from './boothwright.js';
import { dragging, seated } from './booths.js';

const { run, put, folder, bundle } = commandLine();
const at = (name: string) => path.join(folder(), name);
/** Root may write anywhere, unless it lays down its privileges; everybody has none. */
const unprivileged = process.getuid?.() === 0 ? 'setpriv --bounding-set=-all --inh-caps=-all' : '';

beforeEach(async () => {
  await rm(at('place'), { recursive: true, force: true });
  await mkdir(at('place'));
  await put('hall.booth', dragging);
  await put('seated.booth', seated);
});

/** A line of the shell in the folder, with the command line as `$BOOTHWRIGHT`. */
function shell(line: string): { status: number | null; out: string } {
  const env = { PATH: process.env.PATH, BOOTHWRIGHT: `${process.execPath} ${bundle()}` };
  try {
    return {
      status: 0,
      out: execFileSync('sh', ['-c', `{ ${line}; } 2>&1`], { cwd: folder(), env, encoding: 'utf8' }),
    };
  } catch (error) {
    const { status, stdout } = error as { status: number | null; stdout: string };
    return { status, out: stdout };
  }
}

describe('a report on a disk with no room', () => {
  /** Runs the command where no file may grow beyond some blocks of half a kilobyte. */
  const limited = (command: string) => spawnWithoutFileSizeSignal(`ulimit -f 20; exec $BOOTHWRIGHT ${command}`);

  it('is refused in a sentence, and an earlier one stays as it was', async () => {
    await run('report', 'hall.booth', '-o', 'place/out.html');
    const before = await readFile(at('place/out.html'), 'utf8');
    const { status, out } = await limited('report seated.booth -o place/out.html');
    expect([status, out]).toEqual([2, 'boothwright: there is no room left to write place/out.html.\n']);
    expect(await readFile(at('place/out.html'), 'utf8')).toBe(before);
    expect(await readdir(at('place'))).toEqual(['out.html']);
  });

  it('leaves nothing where there was nothing', async () => {
    const { status } = await limited('report seated.booth -o place/out.html');
    expect(status).toBe(2);
    expect(await readdir(at('place'))).toEqual([]);
  });
});

/** The limit on the size of a file ends a process, unless its parent ignores that signal: Python can, and `sh` here cannot. */
function spawnWithoutFileSizeSignal(line: string): Promise<{ status: number | null; out: string }> {
  const python = `
import os, signal, subprocess, sys
signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
sys.exit(subprocess.run(['sh', '-c', sys.argv[1]], stderr=subprocess.STDOUT, restore_signals=False).returncode)`;
  return new Promise((resolve, reject) => {
    const child = spawn('python3', ['-c', python, line], {
      cwd: folder(),
      env: { PATH: process.env.PATH, BOOTHWRIGHT: `${process.execPath} ${bundle()}` },
    });
    let out = '';
    child.stdout.setEncoding('utf8').on('data', (text: string) => (out += text));
    child.on('error', reject).on('close', (status) => resolve({ status, out }));
  });
}

describe('a report at a place that cannot be', () => {
  it('says that a folder may not be written', async () => {
    await chmod(at('place'), 0o555);
    expect(shell(`${unprivileged} $BOOTHWRIGHT report hall.booth -o place/out.html`)).toEqual({
      status: 2,
      out: 'boothwright: place/out.html may not be written: choose a folder that is yours.\n',
    });
    expect(await readdir(at('place'))).toEqual([]);
  });

  it('says that a folder is one, that another is gone, that a device is no file', async () => {
    const refused = async (target: string) => {
      const { status, err } = await run('report', 'hall.booth', '-o', target, '--force');
      expect(status).toBe(2);
      expect(err.trimEnd().split('\n')).toHaveLength(1);
      return err;
    };
    expect(await refused('place')).toContain('place is a folder');
    expect(await refused('gone/out.html')).toContain('the folder gone does not exist');
    expect(await refused('/dev/null')).toContain('not an ordinary file');
    expect(await refused('hall.booth')).toContain('is the booth file itself');
    expect(await refused(`${'long'.repeat(100)}.html`)).toContain('too long a name');
    await symlink('turning.html', at('place/turning.html'));
    expect(await refused('place/turning.html')).toContain('leads back to itself');
    expect(await readdir(at('place'))).toEqual(['turning.html']);
  });

  it('goes through a link to our own report, and keeps the link', async () => {
    await run('report', 'hall.booth', '-o', 'place/real.html');
    await symlink('real.html', at('place/link.html'));
    expect((await run('report', 'seated.booth', '-o', 'place/link.html')).status).toBe(0);
    expect(await readlink(at('place/link.html'))).toBe('real.html');
    expect(await readFile(at('place/real.html'), 'utf8')).toContain('Noor');
  });

  it('goes through no link to a file of others, unless forced', async () => {
    await writeFile(at('place/minutes.html'), 'minutes');
    await symlink('minutes.html', at('place/link.html'));
    const { status, err } = await run('report', 'hall.booth', '-o', 'place/link.html');
    expect([status, err]).toEqual([2, expect.stringContaining('boothwright did not make it')]);
    expect(await readFile(at('place/minutes.html'), 'utf8')).toBe('minutes');
  });
});

describe('a report that is interrupted', () => {
  const whole = (html: string) => html.startsWith('<!doctype html>') && html.trimEnd().endsWith('</html>');
  /** Loaded before the program: it stops there for ever. */
  const held = {
    'with half of the new one on the disk': `
      const files = require('node:fs/promises');
      const { open } = files;
      files.open = async (...how) => {
        const handle = await open(...how);
        const write = handle.writeFile.bind(handle);
        handle.writeFile = async (content) => {
          await write(content.slice(0, content.length / 2));
          await new Promise(() => setInterval(() => undefined, 1000));
        };
        return handle;
      };`,
    'just before the new one takes its place': `
      require('node:fs/promises').rename = () => new Promise(() => setInterval(() => undefined, 1000));`,
  };

  it.each(
    Object.keys(held).flatMap((when) =>
      (['SIGINT', 'SIGTERM', 'SIGKILL'] as const).map((signal) => [when, signal] as const),
    ),
  )(
    '%s, by %s, leaves the old file',
    async (when, signal) => {
      await run('report', 'hall.booth', '-o', 'place/out.html');
      const old = await readFile(at('place/out.html'), 'utf8');
      await writeFile(at('hold.cjs'), held[when as keyof typeof held]);
      const child = spawn(
        process.execPath,
        ['--require', at('hold.cjs'), bundle(), 'report', 'seated.booth', '-o', 'place/out.html'],
        { cwd: folder(), env: { PATH: process.env.PATH }, stdio: 'ignore' },
      );
      const ended = new Promise<void>((resolve) => child.on('close', () => resolve()));
      const drafts = async () => (await readdir(at('place'))).filter((name) => name !== 'out.html');
      const sizeOfDraft = async () =>
        Promise.all((await drafts()).map(async (name) => (await stat(at(`place/${name}`))).size));
      await until(async () => (await sizeOfDraft()).some((size) => size > 1000), 0);
      child.kill(signal);
      await ended;
      expect(await readFile(at('place/out.html'), 'utf8')).toBe(old);
      expect(await drafts()).toHaveLength(signal === 'SIGKILL' ? 1 : 0);
      // A draft that nobody could take away is in nobody's way.
      expect((await run('report', 'seated.booth', '-o', 'place/out.html')).status).toBe(0);
      expect(whole(await readFile(at('place/out.html'), 'utf8'))).toBe(true);
      expect(await readFile(at('place/out.html'), 'utf8')).not.toBe(old);
    },
    60_000,
  );

  it.each(['SIGINT', 'SIGTERM', 'SIGKILL'] as const)(
    '%s leaves the old file or the new one',
    async (signal) => {
      await run('report', 'hall.booth', '-o', 'place/out.html');
      const env = { PATH: process.env.PATH };
      for (let delay = 0; delay < 8; delay++) {
        const child = spawn(process.execPath, [bundle(), 'report', 'seated.booth', '-o', 'place/out.html'], {
          cwd: folder(),
          env,
        });
        const ended = new Promise<void>((resolve) => child.on('close', () => resolve()));
        // Most of the time goes into starting up: the last of these meet the writing itself.
        await until(
          async () => delay < 4 || (await readdir(at('place'))).length > 1 || child.exitCode !== null,
          20 * delay,
        );
        child.kill(signal);
        await ended;
        expect(whole(await readFile(at('place/out.html'), 'utf8'))).toBe(true);
        if (signal !== 'SIGKILL') expect(await readdir(at('place'))).toEqual(['out.html']);
      }
    },
    240_000,
  );
});

async function until(holds: () => Promise<boolean>, atLeast: number): Promise<void> {
  await new Promise((resolve) => setTimeout(resolve, atLeast));
  while (!(await holds())) await new Promise((resolve) => setTimeout(resolve, 1));
}

describe('output that nobody takes', () => {
  it('closes early without a word, and the work is done all the same', () => {
    const { out } = shell('$BOOTHWRIGHT explain --all | head -n 1');
    expect(out.split('\n')).toHaveLength(2);
    expect(shell('$BOOTHWRIGHT explain --all | true')).toEqual({ status: 0, out: '' });
    expect(shell('{ $BOOTHWRIGHT check hall.booth; echo "status $?" >&2; } | true').out).toBe('status 1\n');
  });

  it('has no room: one sentence and status 2', () => {
    const { status, out } = shell('$BOOTHWRIGHT check hall.booth > /dev/full');
    expect([status, out]).toEqual([2, 'boothwright: what was found could not be written: there is no room left.\n']);
  });
});

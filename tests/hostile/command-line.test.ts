import { execFileSync } from 'node:child_process';
import { mkdir, symlink, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { commandLine } from '../cli/boothwright.js';
import { hostile } from './texts.js';

const { run, put, folder, bundle } = commandLine();
/** Seconds and megabytes that a hostile file may cost. Far more than it does: a busy machine must not fail it. */
const [TIME, MEMORY] = [120, 1000];

/** Runs `check` with no more memory than that. */
function check(file: string) {
  const script = `exec "${process.execPath}" --max-old-space-size=${MEMORY} "${bundle()}" check "${file}"`;
  try {
    const out = execFileSync('sh', ['-c', `${script} 2>&1`], {
      cwd: folder(),
      timeout: TIME * 1000,
      maxBuffer: 1e8,
      encoding: 'utf8',
    });
    return { status: 0, out };
  } catch (error) {
    const { status, stdout } = error as { status: number | null; stdout: string };
    return { status, out: stdout };
  }
}

describe('check answers', () => {
  test.each(hostile)('$name', async ({ text, says }) => {
    const { status, out } = check(await put('hostile.booth', text));
    expect(out).not.toContain('fault of boothwright');
    expect(out).not.toContain('by a fault of their own');
    if (says === undefined) expect([0, 1]).toContain(status);
    else {
      expect(out).toMatch(says);
      expect(out).toMatch(/^hostile\.booth:\d+:\d+: error: /);
      expect(status).toBe(2);
    }
    expect(out.length).toBeLessThan(1e6);
    // What a terminal obeys never reaches it.
    expect(out).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f\u202a-\u202e\u2066-\u2069]/);
  });
});

describe('imports', () => {
  const hall = 'booth "Hall" { }\n';

  test('of a thousand files: as many as may be, and a word about the rest', async () => {
    await mkdir(path.join(folder(), 'many'));
    await put('many/main.booth', Array.from({ length: 1000 }, (_, n) => `import "f${n}.booth"\n`).join('') + hall);
    for (let n = 0; n < 1000; n++) await put(`many/f${n}.booth`, `desk D${n} { width 60in }\n`);
    const { status, out } = check('many/main.booth');
    expect(status).toBe(2);
    expect(out).toMatch(/^many\/main\.booth:200:8: error: `f199\.booth` is left out: a booth may come from 200 files/);
    expect(out.split('\n').filter((line) => line.includes('is left out: a booth'))).toHaveLength(801);
  });

  test('in a circle of a thousand files', async () => {
    await mkdir(path.join(folder(), 'circle'));
    for (let n = 0; n < 1000; n++)
      await put(`circle/f${n}.booth`, `import "f${(n + 1) % 1000}.booth"\n${n === 0 ? hall : ''}`);
    const { status, out } = check('circle/f0.booth');
    expect(status).toBe(2);
    expect(out).toContain('is left out');
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThan(300);
  });

  test.each([
    ['/etc/hosts.booth', /Write the path from this file/],
    ['file:///etc/hosts.booth', /not a web address/],
    ['https://example.org/x.booth', /not a web address/],
    ['//server/share/x.booth', /Write the path from this file/],
    ['\\\\\\\\server\\\\x.booth', /Write the path with \//],
    ['C:/x.booth', /Write the path from this file/],
    ['../../../../../../../../../../etc/hosts.booth', /no readable file/],
    ['a\u202ehtoob.booth', /turns the order/],
  ])('%s', async (target, says) => {
    const { status, out } = await run('check', await put('leaves.booth', `import "${target}"\n${hall}`)).then(
      ({ status, out, err }) => ({ status, out: out + err }),
    );
    expect(out).toMatch(says);
    expect(status).toBe(2);
  });

  test('of what is no ordinary file: a device behind a link, a pipe, a folder', async () => {
    await symlink('/dev/zero', path.join(folder(), 'endless.booth'));
    execFileSync('mkfifo', [path.join(folder(), 'pipe.booth')]);
    await mkdir(path.join(folder(), 'folder.booth'));
    await put('odd.booth', `import "endless.booth"\nimport "pipe.booth"\nimport "folder.booth"\n${hall}`);
    const { status, out } = check('odd.booth');
    expect(status).toBe(2);
    expect(out.match(/There is no readable file/g)).toHaveLength(3);
  });

  test('through a link that turns back on itself', async () => {
    await symlink('round.booth', path.join(folder(), 'round.booth'));
    const { status, out } = check(await put('loop.booth', `import "round.booth"\n${hall}`));
    expect([status, out]).toEqual([2, expect.stringContaining('no readable file `round.booth`')]);
  });
});

test('a device that has no end is read no further than a booth file goes', async () => {
  await symlink('/dev/zero', path.join(folder(), 'zero.booth'));
  const { status, out } = check('zero.booth');
  expect([status, out]).toEqual([2, expect.stringContaining('too large')]);
});

test.each([
  ['UTF-16', Buffer.from('booth "Hall" { }', 'utf16le')],
  ['no text at all', Buffer.from(Array.from({ length: 100_000 }, (_, n) => (n * 7919) % 256))],
])('%s is told by its first faults', async (_, bytes) => {
  await writeFile(path.join(folder(), 'bytes.booth'), bytes);
  const { status, out } = check('bytes.booth');
  expect(status).toBe(2);
  expect(out).toMatch(/^bytes\.booth:1:\d+: error: /);
  expect(out.split('\n').length).toBeLessThan(1100);
});

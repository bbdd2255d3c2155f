import { readdirSync, readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Editor, openEditor } from './harness/editor.js';

const soon = { timeout: 60_000 };
let editor: Editor;

beforeAll(async () => {
  editor = await openEditor('recovery', { 'hall.booth': 'desk Left { width 60in  depth 27in }\n' });
  await editor.open('hall.booth');
});

afterAll(() => editor.close());

test('a server that is killed while a person types comes back by itself, and nothing typed is lost', async ({
  skip,
}) => {
  skip(process.platform !== 'linux', 'the processes are found in /proc');
  await expect.poll(() => servers().length, soon).toBe(1);
  let typed = 'desk Left { width 60in  depth 27in ';
  await editor.goTo(1, typed.length + 1);
  for (const word of ['height 40 ', 'top 1in ']) {
    const [half, rest] = [word.slice(0, 4), word.slice(4)];
    await editor.type(half);
    const [pid] = servers();
    process.kill(pid!, 'SIGKILL');
    await editor.type(rest);
    typed += word;
    await expect.poll(() => servers().filter((each) => each !== pid), soon).toHaveLength(1);
    expect((await editor.lines())[0]?.text).toBe(`${typed}}`);
    await expect.poll(errors, soon).toEqual(['40']);
  }
  await editor.screenshot('after-two-kills');
});

test('while a check lasts the language status shows that it goes on, and then what it found', async ({ skip }) => {
  skip(process.platform !== 'linux', 'the processes are found in /proc');
  const turning = editor.page.locator('.hover-language-status .codicon-loading');
  await expect.poll(() => editor.status(), soon).toContain('1 error in the text');
  expect(await turning.count()).toBe(0);
  const [pid] = servers();
  process.kill(pid!, 'SIGSTOP');
  try {
    await editor.goTo(1, 'desk Left { width 60in  depth 27in height 40'.length + 1);
    await editor.type('in');
    await expect.poll(async () => [await editor.status(), await turning.count()], soon).toEqual([expect.anything(), 1]);
    await editor.screenshot('checking');
  } finally {
    process.kill(pid!, 'SIGCONT');
  }
  await expect.poll(() => editor.status(), soon).toContain('No booth in this file');
  await expect.poll(() => turning.count(), soon).toBe(0);
});

async function errors(): Promise<string[]> {
  return (await editor.squiggles()).filter(({ severity }) => severity === 'error').map(({ text }) => text);
}

/** The language servers that run under this test, by their process ids. */
function servers(): number[] {
  return readdirSync('/proc')
    .filter((name) => /^\d+$/.test(name))
    .map(Number)
    .filter((pid) => read(pid, 'cmdline').includes('dist/server.cjs') && isUnder(pid, process.pid));
}

function isUnder(pid: number, ancestor: number): boolean {
  for (let each = pid; each > 1; each = Number(/^PPid:\s+(\d+)/m.exec(read(each, 'status'))?.[1] ?? 0))
    if (each === ancestor) return true;
  return false;
}

function read(pid: number, file: string): string {
  try {
    return readFileSync(`/proc/${pid}/${file}`, 'utf8');
  } catch {
    return '';
  }
}

import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { checks } from '@boothwright/fit';
import { readingMeanings, strengthMeanings } from '@boothwright/report';
import { describe, expect, it } from 'vitest';
import { commandLine } from './boothwright.js';

const { run, bundle } = commandLine();

describe('explain', () => {
  it('says all that is known of a check', async () => {
    const { status, out } = await run('explain', '--all');
    expect(status).toBe(0);
    const parts = new Map(
      checks.map((check, index) => [check, out.slice(startOf(index, out), startOf(index + 1, out))]),
    );
    for (const [{ title, question, computes, limits, sources, strength, caution, example }, part] of parts) {
      const words = part.replace(/\s+/g, ' ');
      const said = [
        title,
        question,
        computes,
        limits,
        strengthMeanings[strength],
        ...sources.flatMap(({ name, says, read }) => [`${name} (${readingMeanings[read]})`, says]),
        caution ?? '',
      ];
      for (const text of said) expect(words).toContain(text.replace(/\s+/g, ' ').trim());
      for (const line of [...example.fires.split('\n'), ...example.passes.split('\n')]) expect(part).toContain(line);
    }
  });

  it('says the same of one as among all', async () => {
    const [one, all] = [await run('explain', 'skirt-drop'), await run('explain', '--all')];
    expect(one.out).toMatch(/skirt-drop, check of the group skirt\n/);
    expect(all.out).toContain(one.out);
    expect(one.status).toBe(0);
  });

  it('says of a fault of the text what it means and how it is mended', async () => {
    const { status, out } = await run('explain', 'no-unit');
    expect(status).toBe(0);
    expect(out).toContain('A number without its unit  no-unit, fault of the text\n');
    for (const line of ['desk Left { width 60 }', 'desk Left { width 60in }']) expect(out).toContain(`    ${line}\n`);
  });

  it('names the nearest check for one it does not know', async () => {
    expect(await run('explain', 'feet-suported')).toEqual({
      status: 2,
      out: '',
      err: "boothwright: there is no check 'feet-suported'. Did you mean 'feet-supported'?\n",
    });
  });

  it('does not mind a reader that closes early', async () => {
    const script = 'set -o pipefail; "$0" "$1" explain --all | head -n 1';
    const { stdout, stderr } = await promisify(execFile)('bash', ['-c', script, process.execPath, bundle()]);
    expect(stdout.split('\n')).toHaveLength(2);
    expect(stderr).toBe('');
  });
});

/** Where the explanation of a check begins; the end of the text after the last one. */
function startOf(index: number, out: string): number {
  const check = checks[index];
  return check ? out.indexOf(`${check.title}  ${check.id}, check of the group ${check.group}`) : out.length;
}

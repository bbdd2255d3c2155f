import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { boothOf } from './documents.js';
import { median } from './numbers.js';

/** `check` of so many files in one process, against one file: microseconds a line, with and without starting up. */
export function measureMany(cli: string, files: number, lines: number): { one: number; many: number; start: number } {
  const folder = mkdtempSync(path.join(tmpdir(), 'boothwright-bench-'));
  try {
    const names = Array.from({ length: files }, (_, n) => path.join(folder, `hall-${n}.booth`));
    names.forEach((name, n) => writeFileSync(name, boothOf(lines).replace('Bench', `Hall ${n}`)));
    const count = boothOf(lines).split('\n').length;
    const run = (...args: string[]) => {
      const before = performance.now();
      const { status, stderr } = spawnSync(process.execPath, [cli, ...args], { encoding: 'utf8', maxBuffer: 2 ** 30 });
      if (status !== 0 && status !== 1) throw new Error(`check ended with ${status}: ${stderr}`);
      return performance.now() - before;
    };
    const start: number[] = [];
    const one: number[] = [];
    const many: number[] = [];
    for (let n = 0; n < 3; n++) {
      start.push((run('explain', 'overlap') * 1000) / count);
      one.push((run('check', names[n % files]!) * 1000) / count);
      many.push((run('check', ...names) * 1000) / count / files);
    }
    return { start: median(start), one: median(one), many: median(many) };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

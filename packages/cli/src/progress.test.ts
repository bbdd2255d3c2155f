import { describe, expect, test } from 'vitest';
import { Progress } from './progress.js';

/** Tells of each file at these times, in milliseconds, and returns the lines that were written. */
function linesAt(times: readonly number[]): string[] {
  const lines: string[] = [];
  let now = 0;
  const progress = new Progress({ line: (text) => lines.push(text) }, times.length, () => now);
  times.forEach((time, index) => {
    now = time;
    progress.tell(index);
  });
  progress.end();
  return lines;
}

describe('progress', () => {
  test('is not told of a run that is over within a second', () => {
    expect(linesAt([0, 400, 999])).toEqual([]);
  });

  test('is told from the second second on, and the line goes away', () => {
    expect(linesAt([0, 1000, 1200])).toEqual(['Checked 1 of 3 files …', 'Checked 2 of 3 files …', '']);
  });

  test('does not flicker', () => {
    expect(linesAt([1000, 1050, 1099, 1100])).toEqual(['Checked 0 of 4 files …', 'Checked 3 of 4 files …', '']);
  });

  test.each([
    ['is told where somebody looks on', true, ['Checked 1 of 2 files …', '']],
    ['is not told where nobody does, on no stream at all', false, []],
  ])('%s', (_, isSeen, told) => {
    const written: string[] = [];
    const write = (text: string) => void written.push(text);
    let now = 0;
    const terminal = { out: write, err: write, ...(isSeen && { line: write }) };
    const progress = new Progress(terminal, 2, () => now);
    now = 5000;
    progress.tell(1);
    progress.end();
    expect(written).toEqual(told);
  });
});

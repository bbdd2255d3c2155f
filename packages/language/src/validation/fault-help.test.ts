import { describe, expect, test } from 'vitest';
import { analyseFiles } from '../testing/analysis.js';
import { faultHelp } from './fault-help.js';
import { issueCodes, type IssueCode } from './issue.js';

async function codesOf(text: string): Promise<unknown[]> {
  const { diagnostics } = await analyseFiles({ 'hall.booth': text, 'furniture.booth': 'desk Long { width 60in }' });
  return diagnostics.filter(({ kind }) => kind === 'text').map(({ code }) => code);
}

const withExample = issueCodes.filter((code) => faultHelp[code].example);

describe('the help for a code of the text', () => {
  test.each(withExample)('%s shows a text that has the fault, and one that has none', async (code: IssueCode) => {
    const { wrong, right } = faultHelp[code].example!;
    expect(await codesOf(wrong)).toContain(code);
    expect(await codesOf(right)).toEqual([]);
  });

  test('lacks an example only where no text causes the fault', () => {
    expect(issueCodes.filter((code) => !withExample.includes(code))).toEqual(['checks-stopped']);
  });

  test('has a title of its own for each code', () => {
    const titles = issueCodes.map((code) => faultHelp[code].title);
    expect(new Set(titles).size).toBe(issueCodes.length);
  });
});

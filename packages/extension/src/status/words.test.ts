import { describe, expect, test } from 'vitest';
import { tellVerdict } from './words.js';

const counts = { fail: 2, marginal: 1, unknown: 0, pass: 38, accepted: 0 };
const checked = { uri: 'file:///hall.booth', version: 1, faults: 0, counts, took: 12.4 };

/** As the editor does where there is no translation. */
const l10n = {
  t: (message: string, ...args: (string | number)[]) =>
    message.replace(/\{(\d+)\}/g, (_, index: string) => String(args[Number(index)])),
};
const tell = (verdict: Parameters<typeof tellVerdict>[0], lastGood?: Parameters<typeof tellVerdict>[1]) =>
  tellVerdict(verdict, lastGood, l10n);

describe('the language status tells', () => {
  test('the verdict in words, what is zero left out, and how long it took', () => {
    expect(tell(checked)).toEqual({
      text: '2 fail, 1 marginal, 38 pass',
      detail: 'Checked in 12 ms.',
      severity: 'warning',
    });
  });

  test.each([
    [{ ...counts, fail: 0 }, '1 marginal, 38 pass', 'information'],
    [{ ...counts, unknown: 3, accepted: 1 }, '2 fail, 1 marginal, 3 cannot say, 38 pass, 1 accepted', 'warning'],
    [{ fail: 0, marginal: 0, unknown: 0, pass: 0, accepted: 0 }, 'Nothing to check yet', 'information'],
  ])('each verdict by its name (%#)', (each, text, severity) => {
    expect(tell({ ...checked, counts: each })).toMatchObject({ text, severity });
  });

  test.each([
    [0.3, 'less than 1 ms'],
    [999, '999 ms'],
    [1240, '1.2 s'],
  ])('%d ms as %s', (took, told) => {
    expect(tell({ ...checked, took }).detail).toBe(`Checked in ${told}.`);
  });

  test('that the text has errors, and what was so before them', () => {
    const broken = { ...checked, faults: 1, counts: { ...counts, pass: 3 } };
    expect(tell(broken, counts)).toEqual({
      text: '1 error in the text',
      detail: 'Before: 2 fail, 1 marginal, 38 pass.',
      severity: 'error',
    });
    expect(tell(broken).detail).toBe('Correct it to see what fits.');
    expect(tell({ ...broken, faults: 2 })).toEqual({
      text: '2 errors in the text',
      detail: 'Correct them to see what fits.',
      severity: 'error',
    });
  });

  test('that a file of pieces is no booth', () => {
    const { text } = tell({ uri: checked.uri, version: 1, faults: 0 });
    expect(text).toBe('No booth in this file');
  });
});

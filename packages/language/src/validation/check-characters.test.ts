import { describe, expect, it } from 'vitest';
import { analyseText, silent } from '../testing/analysis.js';

/** Of all characters of one unit but halves of others, those that a pattern names. */
const charactersOf = (pattern: RegExp) =>
  Array.from({ length: 0xd800 }, (_, code) => String.fromCharCode(code)).filter((one) => pattern.test(one));

const faultsOf = async (text: string) => (await analyseText(text, silent)).diagnostics;

describe('characters that are not seen', () => {
  it.each([
    ['control characters', charactersOf(/(?![\t\n\r])\p{Cc}/u), 62, /^A control character that is not seen \(U\+/],
    ['turns of direction', charactersOf(/[\u202a-\u202e\u2066-\u2069]/), 9, /turns the order/],
  ])('%s: each is a fault where it stands', async (_, characters, many, says) => {
    expect(characters).toHaveLength(many);
    for (const one of characters) {
      const faults = await faultsOf(`booth "Larkfield${one} Hall" { }`);
      const name = one.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0');
      expect(faults, name).toMatchObject([
        { code: 'hidden-character', start: { character: 16 }, end: { character: 17 } },
      ]);
      expect(faults[0]!.message).toMatch(says);
      expect(faults[0]!.message).toContain(`(U+${name})`);
    }
  });

  it('white space of every kind parts words as a space does, or is one of them', async () => {
    const spaces = charactersOf(/\p{White_Space}/u);
    expect(spaces).toHaveLength(25);
    for (const space of spaces) {
      const hidden = /\p{Cc}/u.test(space) && !'\t\n\r'.includes(space);
      const text = `desk${space}Left${space}{${space}width${space}60in${space}}${space}place Left at 1ft, 1ft`;
      const codes = (await faultsOf(text)).map(({ code }) => code);
      if (hidden) expect(codes, JSON.stringify(space)).toContain('hidden-character');
      else expect(codes, JSON.stringify(space)).toEqual([]);
    }
  });
});

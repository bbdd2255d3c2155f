import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type * as Words from './say.js';

let words: typeof Words;

/** A process that has said nothing yet. */
beforeEach(async () => {
  vi.resetModules();
  words = await import('./say.js');
});
afterEach(() => vi.resetModules());

describe('without a translation', () => {
  it('the English sentence is filled in, its code as it is', () => {
    expect(words.say`Add \`${'height'}\` to ${'desk Left'}: ${2} are missing.`).toBe(
      'Add `height` to desk Left: 2 are missing.',
    );
    expect(words.said('Seat depth')).toBe('Seat depth');
    expect(words.lowered('Seat depth')).toBe('seat depth');
  });
});

describe('with a translation', () => {
  beforeEach(() => words.speak({ '{0} is {1} from {2}.': 'Von {2} bis {0}: {1}.', 'Seat depth': 'Sitztiefe' }));

  it('the sentence may put what varies in another order', () => {
    expect(words.say`${'A'} is ${'1 m'} from ${'B'}.`).toBe('Von B bis A: 1 m.');
  });

  it('what varies is not read as a sentence or a place', () => {
    expect(words.say`${'{1}'} is ${'$&'} from ${'Seat depth'}.`).toBe('Von Seat depth bis {1}: $&.');
  });

  it('labels keep their capitals, and a sentence that is not there is English', () => {
    expect(words.lowered(words.said('Seat depth'))).toBe('Sitztiefe');
    expect(words.say`Nothing of ${'this'}.`).toBe('Nothing of this.');
    expect(words.said('toString')).toBe('toString');
  });

  it('English can be asked for, also if the computation fails', () => {
    expect(words.inEnglish(() => words.said('Seat depth'))).toBe('Seat depth');
    expect(() =>
      words.inEnglish(() => {
        throw new Error('broken');
      }),
    ).toThrow('broken');
    expect(words.said('Seat depth')).toBe('Sitztiefe');
  });

  it('the language cannot change once something was said', () => {
    expect(words.say`A word.`).toBe('A word.');
    expect(() => words.speak({})).toThrow('before anything is said');
  });
});

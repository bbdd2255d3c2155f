import { describe, expect, test } from 'vitest';
import { write } from './write.js';

/** What happens while an edit is asked for. */
type Turn = 'nothing' | 'a key' | 'no answer' | 'broken' | 'refused';

/** Writes into a text of which each question finds another turn, the last one ever after: what was asked of, and what was made. */
async function written(...turns: readonly Turn[]) {
  let version = 1;
  const asked: number[] = [];
  const made: string[] = [];
  const now = () => turns[Math.min(asked.length, turns.length) - 1]!;
  const isWritten = await write<string>({
    versions: () => `hall.booth ${version}`,
    ask: async () => {
      asked.push(version);
      const edit = `of version ${version}`;
      await Promise.resolve();
      if (now() === 'a key') version++;
      return now() === 'broken' ? null : now() === 'no answer' ? undefined : edit;
    },
    apply: async (edit) => {
      await Promise.resolve();
      if (now() === 'refused') return false;
      made.push(edit);
      return true;
    },
  });
  return { asked, made, isWritten };
}

describe('a number that was moved in a drawing', () => {
  test.each<[string, Turn[], Awaited<ReturnType<typeof written>>]>([
    ['is written', ['nothing'], { asked: [1], made: ['of version 1'], isWritten: true }],
    [
      'is asked for again where a key was pressed meanwhile, and the edit of the older text is not made',
      ['a key', 'a key', 'nothing'],
      { asked: [1, 2, 3], made: ['of version 3'], isWritten: true },
    ],
    [
      'is asked for again where nobody answers, or the editor refuses',
      ['no answer', 'refused', 'nothing'],
      { asked: [1, 1, 1], made: ['of version 1'], isWritten: true },
    ],
    ['is not written into a text that cannot be read', ['broken'], { asked: [1], made: [], isWritten: false }],
    ['nor where the text has become such', ['a key', 'broken'], { asked: [1, 2], made: [], isWritten: false }],
    [
      'is given up in a text that never rests',
      ['a key'],
      { asked: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10], made: [], isWritten: false },
    ],
  ])('%s', async (_, turns, outcome) => {
    expect(await written(...turns)).toEqual(outcome);
  });
});

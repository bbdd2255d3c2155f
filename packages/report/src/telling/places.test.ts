import { expect, test } from 'vitest';
import { byPerson } from './places.js';

const at = (workstation: string, text: string, who = 'Noor', posture: 'sit' | 'stand' = 'sit') => ({
  who,
  posture,
  workstation,
  text,
});

test.each([
  ['alone', [at('Sound', 'low')], ['Noor, sitting: low']],
  ['alike at two workstations, once', [at('Sound', 'low'), at('Words', 'low')], ['Noor, sitting: low']],
  [
    'unlike at two workstations, of each',
    [at('Sound', 'low'), at('Words', 'high')],
    ['Noor, sitting, at Sound: low', 'Noor, sitting, at Words: high'],
  ],
  [
    'alike at two of three, of both together',
    [at('Sound', 'low'), at('Words', 'high'), at('Video', 'low')],
    ['Noor, sitting, at Sound and Video: low', 'Noor, sitting, at Words: high'],
  ],
  [
    'in two postures, of each without its workstation',
    [at('Sound', 'low'), at('Sound', 'high', 'Noor', 'stand')],
    ['Noor, sitting: low', 'Noor, standing: high'],
  ],
  [
    'of two people, of each',
    [at('Sound', 'low'), at('Words', 'low', 'Tobias')],
    ['Noor, sitting: low', 'Tobias, sitting: low'],
  ],
] as const)('what is told of a person %s', (_, places, told) => {
  expect(byPerson(places).map(({ person, text }) => `${person}: ${text}`)).toEqual(told);
});

import { describe, expect, it } from 'vitest';
import { finding } from '../testing/larkfield.js';
import { unitsOf } from '../words.js';
import { tellPasses } from './passes.js';

const seat = { kind: 'seat', name: 'Tall' } as const;
const room = (operator: string, margin: number, rest = {}) =>
  finding('thigh-room', seat, { operator, posture: 'sit', margin, unit: 'mm', ...rest });

describe('what passes', () => {
  it.each([
    [
      'the least to spare',
      [room('Noor', 50.8), room('Priya', 25.4)],
      'all 2',
      '1 in to spare: seat Tall, Priya, sitting',
    ],
    [
      'the smallest share before the least to spare',
      [room('Noor', 50.8, { share: 0.9 }), room('Priya', 25.4, { share: 1 })],
      'all 2',
      '2 in to spare, suits 90%: seat Tall, Noor, sitting',
    ],
    [
      'only what passes, of all that is open',
      [
        room('Noor', 50.8),
        room('Priya', -9, { verdict: 'fail' }),
        room('Lin', -9, { verdict: 'fail', accepted: 'so' }),
      ],
      '1 of 2',
      '2 in to spare: seat Tall, Noor, sitting',
    ],
    ['the thing, where nothing is measured', [finding('thigh-room', seat)], 'all 1', 'seat Tall'],
    [
      'an angle as an angle',
      [finding('thigh-room', seat, { margin: 4.5, unit: 'deg' })],
      'all 1',
      '5° to spare: seat Tall',
    ],
  ])('is told by %s', (_, findings, passing, tightest) => {
    expect(tellPasses(findings, unitsOf('in'))).toEqual([{ title: 'Thigh room', passing, tightest }]);
  });

  it('leaves out a check that nothing passes', () => {
    expect(tellPasses([room('Noor', -9, { verdict: 'fail' })], unitsOf('in'))).toEqual([]);
  });
});

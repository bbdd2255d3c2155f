import fc from 'fast-check';
import { expect, it } from 'vitest';
import { pieceKey, pieceOfKey, type PieceRef } from './piece.js';

const refs = fc.record<PieceRef>(
  {
    kind: fc.constantFrom('room', 'desk', 'screen', 'control'),
    name: fc.string(),
    workstation: fc.string(),
  },
  { requiredKeys: ['kind'] },
);

it('a key gives back the piece that it was made of', () => {
  fc.assert(
    fc.property(refs, (ref) => {
      expect(pieceOfKey(pieceKey(ref))).toEqual(ref);
    }),
  );
});

it('two pieces have one key only if they are the same', () => {
  fc.assert(
    fc.property(refs, refs, (one, other) => {
      const same = one.kind === other.kind && one.name === other.name && one.workstation === other.workstation;
      expect(pieceKey(one) === pieceKey(other)).toBe(same);
    }),
  );
  expect(pieceKey({ kind: 'desk', name: '' })).not.toBe(pieceKey({ kind: 'desk' }));
});

import { assess, type Booth, type PieceRef } from '@boothwright/fit';
import { describe, expect, test } from 'vitest';
import { said } from '../testing/given.js';
import { larkfieldBooth } from '../testing/larkfield-booth.js';
import { decidedBy } from './decided.js';

const [station, ...others] = larkfieldBooth.workstations;
const [screen] = station!.screens;
const origin = station!.origin;
const [walkway] = larkfieldBooth.walkways;
const turned: Booth = {
  ...larkfieldBooth,
  walkways: [
    {
      ...walkway!,
      between: [
        { kind: 'landmark', name: 'back-wall', origin },
        { kind: 'piece', name: 'Left', origin },
      ],
    },
  ],
  workstations: [{ ...station!, screens: [{ ...screen!, at: undefined, turn: said(20) }] }, ...others],
};
const at = station!.name;

describe('a piece that no number of its own places says what does', () => {
  test.each<[string, PieceRef, RegExp]>([
    [
      'a seat',
      { kind: 'seat', name: station!.seat!.name },
      new RegExp(`where its person is: at in workstation .*${at}`),
    ],
    ['a person', { kind: 'operator', name: station!.people[0]!.name }, new RegExp(`at in workstation .*${at}`)],
    [
      'a turned screen',
      { kind: 'screen', name: screen!.monitor.name, workstation: at },
      /^Its angle .* turn in monitor/,
    ],
    [
      'a walkway',
      { kind: 'walkway', name: turned.walkways[0]!.name },
      /^It lies between the back wall and Left: where they are decides it\.$/,
    ],
    ['the room', { kind: 'room' }, /width and depth in room/],
  ])('%s', (_, piece, says) => expect(decidedBy(assess(turned), piece)).toMatch(says));

  test.each<[string, PieceRef]>([
    ['a desk', { kind: 'desk', name: turned.desks[0]!.name }],
    ['a screen that is not turned', { kind: 'screen', name: screen!.monitor.name, workstation: 'nowhere' }],
    ['a seat that nobody uses', { kind: 'seat', name: 'nothing' }],
  ])('%s says nothing', (_, piece) => expect(decidedBy(assess(turned), piece)).toBe(''));
});

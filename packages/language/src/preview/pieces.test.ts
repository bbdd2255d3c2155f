import { EmptyFileSystem } from 'langium';
import { parseHelper } from 'langium/test';
import { describe, expect, test } from 'vitest';
import { createBoothServices } from '../module.js';
import { piecesAt, sourceOf } from './pieces.js';

const { booth: services } = createBoothServices(EmptyFileSystem);
const parse = parseHelper(services);

const hall = `booth "Hall" { show in }
room { width 30ft  depth 44ft  stage { edge 30ft }  door Main { on back-wall  at 3ft  width 36in } }
operator Noor { stature 5'3" }
desk Left { width 60in  depth 30in  height 40in  tray { drop 3in } }
desk Right { width 60in  depth 30in  height 40in }
stool Tall { seat 30in }
monitor Cues { diagonal 22in }
place Left, Right in a row at 10ft, 6ft
workstation Sound { desk Left  stool Tall  operators Noor  monitor Cues { setback 20in  bottom 5in above desk } }
workstation Words { desk Right  stool Tall  operators Noor  monitor Cues { setback 20in  bottom 5in above desk }  control Keys { setback 2in } }
walkway Behind { between booth and back-wall  serves 40 }
`;

async function read(text: string) {
  const document = await parse(text, { validation: true });
  return { document, booth: services.Assessments.of(document)!.booth };
}

/** What the place before `<|>` speaks of. */
async function at(before: string, after: string) {
  const offset = hall.indexOf(before + after) + before.length;
  expect(offset).toBeGreaterThanOrEqual(before.length);
  const { document, booth } = await read(hall);
  return piecesAt(document, document.textDocument.positionAt(offset), booth);
}

describe('a place in the text speaks of', () => {
  test.each([
    ['a desk at its keyword', 'des', 'k Left', [{ kind: 'desk', name: 'Left' }]],
    ['a desk in its values', 'desk Right { width 6', '0in', [{ kind: 'desk', name: 'Right' }]],
    ['a desk in a part of it', 'tray { dro', 'p 3in', [{ kind: 'desk', name: 'Left' }]],
    ['what is named there', 'Sound { desk Le', 'ft', [{ kind: 'desk', name: 'Left' }]],
    ['the workstation around', 'workstation Sou', 'nd', [{ kind: 'workstation', name: 'Sound' }]],
    ['a seat, whatever it is called', 'stool Ta', 'll { seat', [{ kind: 'seat', name: 'Tall' }]],
    ['a person', 'operator No', 'or', [{ kind: 'operator', name: 'Noor' }]],
    [
      'one screen at a workstation',
      'Tall  operators Noor  monitor Cu',
      'es { setback',
      [{ kind: 'screen', name: 'Cues', workstation: 'Sound' }],
    ],
    [
      'all screens of a monitor',
      'monitor Cu',
      'es { diagonal',
      [
        { kind: 'screen', name: 'Cues', workstation: 'Sound' },
        { kind: 'screen', name: 'Cues', workstation: 'Words' },
      ],
    ],
    ['a control', 'control Ke', 'ys', [{ kind: 'control', name: 'Keys', workstation: 'Words' }]],
    [
      'all that is placed',
      'in a row at 1',
      '0ft',
      [
        { kind: 'desk', name: 'Left' },
        { kind: 'desk', name: 'Right' },
      ],
    ],
    ['one of those that are placed', 'place Left, Rig', 'ht', [{ kind: 'desk', name: 'Right' }]],
    ['the stage', 'stage { ed', 'ge', [{ kind: 'stage' }]],
    ['the room', 'room { wi', 'dth', [{ kind: 'room' }]],
    ['nothing that is drawn', 'booth "Ha', 'll"', []],
  ])('%s', async (_, before, after, pieces) => {
    expect(await at(before, after)).toEqual(pieces);
  });
});

describe('a piece leads to its declaration', () => {
  test.each([
    [{ kind: 'desk', name: 'Right' }, 'Right'],
    [{ kind: 'seat', name: 'Tall' }, 'Tall'],
    [{ kind: 'screen', name: 'Cues', workstation: 'Words' }, 'Cues'],
    [{ kind: 'control', name: 'Keys', workstation: 'Words' }, 'Keys'],
    [{ kind: 'door', name: 'Main' }, 'Main'],
    [{ kind: 'stage' }, 'stage'],
    [{ kind: 'room' }, 'room'],
    [{ kind: 'walkway', name: 'Behind' }, 'Behind'],
  ] as const)('%o', async (piece, word) => {
    const { document, booth } = await read(hall);
    const { start, end } = sourceOf(piece, booth)!;
    expect(document.textDocument.getText({ start, end })).toBe(word);
    expect(piecesAt(document, start, booth)).toContainEqual(piece);
  });

  test('unless the booth has no such thing', async () => {
    const { booth } = await read(hall);
    expect(sourceOf({ kind: 'rack', name: 'Power' }, booth)).toBeUndefined();
    expect(sourceOf({ kind: 'control', name: 'Keys', workstation: 'Sound' }, booth)).toBeUndefined();
  });
});

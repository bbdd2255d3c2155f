import { EmptyFileSystem, TextDocument } from 'langium';
import { parseHelper } from 'langium/test';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { INCH } from '@boothwright/fit';
import { createBoothServices } from '../module.js';
import { editsFor, offeredHandles } from './set.js';
import type { Setting } from './protocol.js';

const { booth: services, shared } = createBoothServices(EmptyFileSystem);
const { LangiumDocuments } = shared.workspace;
const parse = parseHelper(services);

const hall = `booth "Hall" { show in }
room {
  width 30ft  depth 44ft
  column Pillar { at 3m, 2m  width 30cm  depth 30cm }
  stage { edge 36ft }
  seating { first 5ft }
  door Main { on back-wall  at 3ft  width 36in }
}
operator Noor { stature 5'3" }
desk Left { width 60in  depth 30in  height 40in }
desk Right { width 60in  depth 30in  height 1000mm..1100mm }
stool Tall { seat 28in..33in  foot-ring 15in below seat }
monitor Cues { diagonal 22in }
monitor Prompts { diagonal 17in }
rack Power { units 8  width 20in  depth 18in  under Left at 2in }
place Left, Right in a row at 10ft, 62in
workstation Sound {
  desk Left   stool Tall
  operators Noor
  control Faders { setback 2in } // as on the old desk
  monitor Cues { setback 20in  bottom 5in above desk }
}
workstation Words {
  desk Right   monitor Cues { setback 20in   bottom 5in above desk   turn 20deg right }
  monitor Prompts { setback 20in   top 400mm..500mm above desk }
}
`;

async function read(text = hall) {
  const document = await parse(text, { validation: true });
  const { assessment } = services.Assessments.of(document)!;
  return { document, assessment, handles: offeredHandles(assessment, LangiumDocuments) };
}

/** The lines that change, as they are then. */
async function changed(settings: readonly Setting[]): Promise<string[]> {
  const { document, assessment } = await read();
  const edits = editsFor(settings, assessment, LangiumDocuments);
  const after = TextDocument.applyEdits(document.textDocument, [...edits!]).split('\n');
  const before = new Set(hall.split('\n'));
  return after.filter((line) => !before.has(line));
}

describe('a number is written', () => {
  test.each([
    ['a height, in its unit and to a quarter inch', [['height 0 desk Left Sound', 41.3 * INCH]], ['height 41 1/4in']],
    ['an end of a range', [['height 1 desk Right Words', 1122]], ['height 1000mm..1120mm']],
    [
      'both ends of a range',
      [
        ['seat 0 seat Tall Sound', 27 * INCH],
        ['seat 1 seat Tall Sound', 32 * INCH],
      ],
      ['seat 27in..32in'],
    ],
    ['a drop', [['foot-ring 0 seat Tall Sound', 14 * INCH]], ['foot-ring 14in below seat']],
    ['the height of a screen', [['bottom 0 screen Cues Sound', 6.6 * INCH]], ['bottom 6 1/2in above desk']],
    [
      'the reach of an arm',
      [
        ['top 0 screen Prompts Words', 300],
        ['top 1 screen Prompts Words', 512],
      ],
      ['top 300mm..510mm above desk'],
    ],
    [
      'a place, both lengths in one',
      [
        ['x desk Left', 121 * INCH],
        ['y desk Left', 63.1 * INCH],
      ],
      ['at 121in, 63in'],
    ],
    ['one length of a place', [['y desk Left', 63 * INCH]], ['at 10ft, 63in']],
    ['a place in metric units, to 5 mm', [['x column Pillar', 3012]], ['at 3.01m, 2m']],
    ['a setback', [['setback control Faders Sound', 3 * INCH]], ['control Faders { setback 3in }']],
  ])('%s', async (_, settings, wanted) => {
    const lines = await changed(settings.map(([handle, value]) => ({ handle, value }) as Setting));
    expect(lines).toHaveLength(1);
    for (const part of wanted) expect(lines[0]).toContain(part);
  });

  test.each([
    [
      'in a block of one line',
      'at control Faders Sound',
      '  control Faders { setback 2in   at 20in } // as on the old desk',
    ],
    ['in a screen', 'at screen Cues Sound', '  monitor Cues { setback 20in  bottom 5in above desk   at 20in }'],
    ['in a block of several lines', 'at workstation Sound Sound', '  at 20in'],
  ])('that the file did not say, %s', async (_, handle, line) => {
    expect(await changed([{ handle, value: 20 * INCH }])).toEqual([line]);
  });

  test('no farther than its bounds', async () => {
    expect(await changed([{ handle: 'y desk Left', value: -400 }])).toEqual([
      'place Left, Right in a row at 10ft, 0in',
    ]);
  });
});

test('nothing is written for a number that the booth does not have', async () => {
  const { assessment } = await read();
  expect(editsFor([{ handle: 'x desk None', value: 1 }], assessment, LangiumDocuments)).toBeUndefined();
  expect(editsFor([{ handle: 'x desk Left', value: NaN }], assessment, LangiumDocuments)).toBeUndefined();
});

describe('handles', () => {
  test('move a row as one', async () => {
    const { handles } = await read();
    const moved = handles.find(({ id }) => id === 'x desk Left')!;
    expect(moved.pieces.map(({ name }) => name)).toEqual(['Left', 'Right']);
    expect(handles.map(({ id }) => id)).not.toContain('x desk Right');
  });

  test('leave alone what an angle decides', async () => {
    const { handles } = await read();
    const words = handles.filter(({ id }) => id.endsWith('screen Cues Words')).map(({ id }) => id);
    expect(words).toContain('setback screen Cues Words');
    expect(words).not.toContain('at screen Cues Words');
  });

  test('step as their numbers are written', async () => {
    const { handles } = await read();
    const step = (id: string) => handles.find((handle) => handle.id === id)!.step;
    expect(step('height 0 desk Left Sound')).toBe(INCH / 4);
    expect(step('height 0 desk Right Words')).toBe(5);
    expect(step('x column Pillar')).toBe(5);
  });

  test('each set what they say, and nothing else', async () => {
    const { document, assessment, handles } = await read();
    const ids = fc.constantFrom(...handles);
    await fc.assert(
      fc.asyncProperty(ids, fc.integer({ min: -40, max: 40 }), async (handle, steps) => {
        const value = Math.min(handle.max, Math.max(handle.min, handle.value + steps * handle.step));
        const edits = editsFor([{ handle: handle.id, value }], assessment, LangiumDocuments)!;
        expect(edits).toHaveLength(1);
        const after = await read(TextDocument.applyEdits(document.textDocument, [...edits]));
        const set = after.handles.find(({ id }) => id === handle.id);
        expect(Math.abs(set!.value - value)).toBeLessThanOrEqual(handle.step / 2 + 0.01);
        expect(after.document.parseResult.parserErrors).toEqual([]);
      }),
      { numRuns: 40 },
    );
  }, 60_000);
});

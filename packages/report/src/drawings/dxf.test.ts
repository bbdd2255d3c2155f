import DxfParser, { type ICircleEntity, type IEntity, type ILwpolylineEntity, type ITextEntity } from 'dxf-parser';
import fc from 'fast-check';
import { assess } from '@boothwright/fit';
import { describe, expect, it } from 'vitest';
import { larkfieldBooth } from '../testing/larkfield-booth.js';
import { isReport } from '../index.js';
import { boothPlan } from './booth-plan.js';
import type { Point } from './drawing.js';
import { drawingDxf } from './dxf.js';

const assessment = assess(larkfieldBooth);
const drawing = boothPlan(assessment, 1000)!;
const text = drawingDxf(drawing, 'Boothwright 0.1.0');

/** Read by a parser that knows nothing of the writer. */
function read(dxf: string) {
  const parsed = new DxfParser().parseSync(dxf)!;
  const of = <Kind extends IEntity>(type: string, layer: string) =>
    parsed.entities.filter((entity) => entity.type === type && entity.layer === layer) as Kind[];
  const lines = (layer: string) =>
    of<ILwpolylineEntity>('LWPOLYLINE', layer).map(({ vertices, shape }) => ({ vertices, shape }));
  return {
    ...parsed,
    lines,
    circles: (layer: string) => of<ICircleEntity>('CIRCLE', layer),
    texts: (layer: string) => of<ITextEntity>('TEXT', layer),
  };
}

const plain = ({ x, y }: Point) => [Math.round(x * 10) / 10, Math.round(y * 10) / 10];

describe('a plan as DXF', () => {
  const dxf = read(text);

  it('is in millimetres, in layers named for what is on them', () => {
    expect(dxf.header.$INSUNITS).toBe(4);
    const names = Object.keys((dxf.tables.layer as { layers: object }).layers);
    expect(names).toEqual(
      expect.arrayContaining(['ROOM', 'DOORS', 'FURNITURE', 'SCREENS', 'PEOPLE', 'WALKWAYS', 'TROUBLE']),
    );
    for (const { layer } of dxf.entities) expect(names).toContain(layer);
  });

  it('has the places of the assessment', () => {
    const outlines = dxf
      .lines('FURNITURE')
      .filter(({ shape }) => shape)
      .map(({ vertices }) => vertices.map(plain));
    expect(assessment.layout.pieces.length).toBeGreaterThan(1);
    for (const { outline } of assessment.layout.pieces) expect(outlines).toContainEqual(outline.map(plain));
    const rooms = dxf.lines('ROOM').map(({ vertices }) => vertices.map(plain));
    const { width, depth } = assessment.layout.room!;
    expect(rooms).toContainEqual(
      [
        [0, 0],
        [width, 0],
        [width, depth],
        [0, depth],
      ].map(([x, y]) => plain({ x: x!, y: y! })),
    );
    const ways = dxf.lines('WALKWAYS').map(({ vertices }) => vertices.map(plain));
    for (const { across } of assessment.sketch!.plan.walkways) expect(ways).toContainEqual(across.map(plain));
    for (const { screens } of assessment.sketch!.plan.places)
      for (const { face } of screens)
        expect(dxf.lines('SCREENS').map(({ vertices }) => vertices.map(plain))).toContainEqual(face.map(plain));
  });

  it('has every text of the drawing', () => {
    const wanted = drawing.pieces.flatMap(({ shapes }) =>
      shapes.flatMap((shape) => (shape.shape === 'text' ? [shape.text] : [])),
    );
    const found = dxf.entities.flatMap((entity) => (entity.type === 'TEXT' ? [(entity as ITextEntity).text] : []));
    expect(found.map((one) => one.replaceAll('\u00a0', ' ')).sort()).toEqual(
      wanted.map((one) => one.replaceAll('\u00a0', ' ')).sort(),
    );
    expect(wanted.length).toBeGreaterThan(10);
  });

  it('is known again as ours by its first words', () => {
    expect(isReport(text)).toBe(true);
    expect(isReport('999\nAnother program\n')).toBe(false);
  });
});

describe('names from a booth file', () => {
  const shape = (dxf: string) => read(dxf).entities.map(({ type, layer }) => `${type} ${layer}`);
  const nasty = fc.oneof(
    fc.constantFrom(
      '\n0\nLINE\n8\nX\n10\n0',
      '\r\n0\r\nENDSEC\r\n0\r\nEOF',
      '\\U+000A0\\U+000ALINE',
      '%%d%%c%%%',
      '^J^M',
      '\u2028999',
      '\u0000',
    ),
    fc.string({ unit: fc.constantFrom('\n', '\r', '0', '%', '\\', '^', ' ', 'a'), maxLength: 20 }),
  );

  it('stay text', () => {
    const renamed = (name: string) =>
      drawingDxf(
        {
          ...drawing,
          pieces: drawing.pieces.map((piece) => ({
            ...piece,
            name,
            shapes: piece.shapes.map((one) => (one.shape === 'text' ? { ...one, text: name } : one)),
          })),
        },
        'Boothwright 0.1.0',
      );
    const expected = shape(renamed('plain'));
    fc.assert(
      fc.property(nasty, (name) => {
        const dxf = renamed(`${name}x`);
        expect(shape(dxf)).toEqual(expected);
        expect(dxf.split('\n').length).toBe(renamed('plain').split('\n').length);
      }),
      { numRuns: 60 },
    );
  });
});

import { readFile } from 'node:fs/promises';
import path from 'node:path';
import DxfParser from 'dxf-parser';
import { beforeEach, describe, expect, it } from 'vitest';
import { commandLine } from './boothwright.js';
import { dragging, faulty, seated } from './booths.js';

const { run, put, folder } = commandLine();
const read = (name: string) => readFile(path.join(folder(), name), 'utf8');

beforeEach(async () => {
  await put('seated.booth', seated);
});

describe('draw', () => {
  it('writes the plan as DXF at full size, and replaces it', async () => {
    expect(await run('draw', 'seated.booth', '-o', 'plan.dxf')).toEqual({
      status: 0,
      out: 'Wrote plan.dxf\n',
      err: '',
    });
    const { entities } = new DxfParser().parseSync(await read('plan.dxf'))!;
    const desk = entities
      .filter(({ layer, type }) => layer === 'FURNITURE' && type === 'LWPOLYLINE')
      .map((entity) => (entity as unknown as { vertices: { x: number; y: number }[] }).vertices);
    const [left, front] = [14 * 304.8, 6 * 304.8];
    const corners = [
      [left, front],
      [left + 48 * 25.4, front],
      [left + 48 * 25.4, front + 27 * 25.4],
      [left, front + 27 * 25.4],
    ];
    const rounded = (points: readonly (readonly number[])[]) =>
      points.map((point) => point.map((value) => Math.round(value)));
    expect(desk.map((points) => rounded(points.map(({ x, y }) => [x, y])))).toContainEqual(rounded(corners));
    expect((await run('draw', 'seated.booth', '-o', 'plan.dxf')).status).toBe(0);
  });

  it('writes a picture of the room that stands alone, with letters if asked', async () => {
    await run('draw', 'seated.booth', '-o', 'room.svg', '--view', 'room');
    expect(await read('room.svg')).toMatch(
      /^<!-- Boothwright 0\.1\.0 -->\n<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"/,
    );
    await run('draw', 'seated.booth', '-o', 'booth.svg', '--names', 'letters');
    expect(await read('booth.svg')).toContain('Person A');
    expect(await read('booth.svg')).not.toMatch(/Noor|Tobias|<script|https?:(?!\/\/www\.w3\.org)/);
  });

  it('draws a person from the side at full size', async () => {
    const drawn = await run(
      'draw',
      'seated.booth',
      '-o',
      'side.dxf',
      '--view',
      'side',
      '--of',
      'Noor, sitting at Sound',
    );
    expect(drawn).toMatchObject({ status: 0, err: '' });
    const { entities } = new DxfParser().parseSync(await read('side.dxf'))!;
    const furniture = entities
      .filter(({ layer, type }) => layer === 'FURNITURE' && type === 'LWPOLYLINE')
      .flatMap((entity) => (entity as unknown as { vertices: { x: number; y: number }[] }).vertices)
      .map(({ y }) => Math.round(y));
    expect(furniture).toContain(Math.round(40 * 25.4));
    expect(furniture).toContain(Math.round(39 * 25.4));
    await run(
      'draw',
      'seated.booth',
      '-o',
      'side.svg',
      '--view',
      'side',
      '--of',
      'Person A, sitting at Sound',
      '--names',
      'letters',
    );
    expect(await read('side.svg')).toContain('Person A, sitting at Sound');
  });

  it.each([
    [['seated.booth', '-o', 'a.svg', '--of', 'Noor, sitting at Sound'], '--of goes with --view side.'],
    [
      ['seated.booth', '-o', 'a.svg', '--view', 'side', '--of', 'Priya'],
      "say with --of which person to draw: 'Noor, sitting at Sound', 'Tobias, sitting at Sound', 'Noor, standing at Sound' or 'Tobias, standing at Sound'.",
    ],
    [
      ['dragging.booth', '-o', 'a.svg', '--view', 'side'],
      'dragging.booth says too little to draw this: say who works where, at which desk.',
    ],
    [['seated.booth', '-o', 'plan.png'], 'plan.png ends in neither .svg nor .dxf: name it so, or add --format.'],
    [['seated.booth', '-o', 'a', '--format', 'png'], "--format takes svg or dxf, not 'png'."],
    [['seated.booth'], 'say where to draw it, as in: boothwright draw seated.booth -o plan.dxf'],
    [
      ['seated.booth', '-o', 'hall.svg', '--view', 'hall'],
      "seated.booth says too little to draw this: say where the 'stage' of the room is, and who works where.",
    ],
    [['dragging.booth', '-o', 'plan.svg'], "dragging.booth says too little to draw this: 'place' at least one desk."],
  ])('says what to do: %j', async (args, complaint) => {
    await put('dragging.booth', dragging);
    const { status, err } = await run('draw', ...args);
    expect(err).toBe(`boothwright: ${complaint}\n`);
    expect(status).toBe(2);
  });

  it('keeps what it did not make, and draws nothing that it does not understand', async () => {
    await put('theirs.dxf', '0\nSECTION\n');
    expect((await run('draw', 'seated.booth', '-o', 'theirs.dxf')).err).toContain('did not make it');
    await put('faulty.booth', faulty);
    const { status, err } = await run('draw', 'faulty.booth', '-o', 'none.svg');
    expect(err).toMatch(/^faulty\.booth:3:\d+: error/);
    expect(status).toBe(2);
  });
});

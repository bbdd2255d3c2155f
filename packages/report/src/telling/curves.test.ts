import { describe, expect, it } from 'vitest';
import { advise, type Booth } from '@boothwright/fit';
import { larkfieldBooth } from '../testing/larkfield-booth.js';
import { tellCharts } from './curves.js';

describe('curves of share served', () => {
  const booth: Booth = larkfieldBooth;
  const advice = advise(booth);

  it('are told for the desk and the seat of a workstation, each with its figures', () => {
    const charts = tellCharts(advice, 'Sound', booth);
    expect(charts.map(({ title }) => title)).toEqual([
      'Share served at Sound, by height of the desk Right',
      'Share served at Sound, by height of the seat of Tall',
    ]);
    for (const { lines, rows, from, to } of charts) {
      expect(lines.length).toBeGreaterThan(0);
      for (const { points } of lines) {
        expect(points.every(({ height, share }) => height >= from && height <= to && share >= 0 && share <= 1)).toBe(
          true,
        );
      }
      for (const { shares } of rows) expect(shares).toHaveLength(lines.length);
    }
  });

  it('mark what the file says only where it is one height', () => {
    const [desk, seat] = tellCharts(advice, 'Sound', booth);
    expect(desk!.now?.at).toBe(booth.desks.find(({ name }) => name === 'Right')!.height!.value.min);
    expect(seat!.now).toBeUndefined();
  });
});

import { describe, expect, it } from 'vitest';
import type { Booth, Placement, Workstation } from '../booth.js';
import { makeScene } from '../scene/scene.js';
import { aBooth, aDesk, aPlacement, aStation, given } from '../testing/booths.js';
import { rowsOf } from './rows.js';

function at(place: number): Partial<Workstation> {
  return { at: given(place) };
}

/** Desks 1500 wide, one station at each unless said. */
function rows(placements: readonly Placement[], stations: readonly Workstation[], parts: Partial<Booth> = {}) {
  const names = [...new Set(stations.map(({ desk }) => desk!.name))];
  const scene = makeScene(
    aBooth({ desks: names.map((name) => aDesk(name, 740)), workstations: stations, placements, ...parts }),
    [],
  );
  return rowsOf(scene).map((row) =>
    row.map(({ station, along, from, to }) => [station.name, ...[along, from, to].map((each) => Math.round(each))]),
  );
}

describe('rows of stations', () => {
  it('desks end to end are one row, from left to right, however the file orders them', () => {
    const stations = [aStation('B', 'Right', undefined, []), aStation('A', 'Left', undefined, [])];
    expect(rows([aPlacement(['Left', 'Right'], 1000, 2000)], stations)).toEqual([
      [
        ['A', 1750, 1000, 2500],
        ['B', 3250, 2500, 4000],
      ],
    ]);
  });

  it('stations of one desk share it half way between them', () => {
    const stations = [aStation('B', 'Left', undefined, [], at(1100)), aStation('A', 'Left', undefined, [], at(300))];
    expect(rows([], stations)).toEqual([
      [
        ['A', 300, 0, 700],
        ['B', 1100, 700, 1500],
      ],
    ]);
  });

  it('without a place for each, they share it evenly', () => {
    const stations = ['A', 'B', 'C'].map((name) => aStation(name, 'Left', undefined, []));
    expect(rows([], stations)).toEqual([
      [
        ['A', 250, 0, 500],
        ['B', 750, 500, 1000],
        ['C', 1250, 1000, 1500],
      ],
    ]);
  });

  it.each([
    ['a gap that a person does not walk through', [aPlacement(['Left'], 0, 0), aPlacement(['Right'], 2300, 0)], 1],
    ['a gap of 36 in', [aPlacement(['Left'], 0, 0), aPlacement(['Right'], 1500 + 915, 0)], 2],
    ['a little out of line', [aPlacement(['Left'], 0, 0), aPlacement(['Right'], 1500, 250)], 1],
    ['far out of line', [aPlacement(['Left'], 0, 0), aPlacement(['Right'], 1500, 350)], 2],
    ['at an angle', [aPlacement(['Left'], 0, 0), aPlacement(['Right'], 1500, 0, 30)], 2],
    ['back to back', [aPlacement(['Left'], 0, 0), aPlacement(['Right'], 1500, 0, 180)], 2],
    ['turned together', [aPlacement(['Left', 'Right'], 0, 0, 90)], 1],
    ['not placed', [], 2],
  ] as const)('%s: %s', (_, placements, count) => {
    const stations = [aStation('A', 'Left', undefined, []), aStation('B', 'Right', undefined, [])];
    expect(rows(placements, stations)).toHaveLength(count);
  });

  it('a desk that nobody works at, or without a width, is in no row', () => {
    const { width: _, ...bare } = aDesk('Left', 740);
    const stations = [aStation('A', 'Left', undefined, [])];
    expect(rows([], stations, { desks: [bare, aDesk('Right', 740)] })).toEqual([]);
  });
});

import { describe, expect, test } from 'vitest';
import { analyseFiles, silent } from '../testing/analysis.js';

describe('imported files', () => {
  const furniture = `desk Long { width 6ft }  desk Unused { width 3ft }
stool Tall { }  operator Noor { }  operator Stranger { }  walkway Behind { between Long and back-wall }`;

  test('give what is used of their furniture and people, and all the rest', async () => {
    const { booth, files } = await analyseFiles(
      {
        'hall.booth': 'import "shared/furniture.booth"\nworkstation Sound { desk Long  operators Noor }',
        'shared/furniture.booth': furniture,
      },
      silent,
    );
    expect(files).toEqual(['file:///hall/hall.booth', 'file:///hall/shared/furniture.booth']);
    expect(booth!.desks.map(({ name, origin }) => [name, origin.uri])).toEqual([['Long', files[1]]]);
    expect(booth!.operators.map(({ name }) => name)).toEqual(['Noor']);
    expect(booth!.seats).toEqual([]);
    expect(booth!.walkways.map(({ name }) => name)).toEqual(['Behind']);
  });

  test('may import each other without an end', async () => {
    const { booth, diagnostics } = await analyseFiles(
      { 'hall.booth': 'import "a.booth"\nworkstation S { desk A }', 'a.booth': 'import "hall.booth"\ndesk A { }' },
      silent,
    );
    expect(booth!.desks.map(({ name }) => name)).toEqual(['A']);
    expect(diagnostics.map(({ code }) => code)).toEqual(['import-circle', 'import-circle']);
  });

  test('have their own faults, and the set is then not understood', async () => {
    const analysis = await analyseFiles(
      { 'hall.booth': 'import "a.booth"\nworkstation S { desk A }', 'a.booth': 'desk A { width 60 }' },
      silent,
    );
    expect(analysis.understood).toBe(false);
    expect(analysis.diagnostics).toMatchObject([
      { uri: 'file:///hall/a.booth', code: 'no-unit', severity: 'error', kind: 'text' },
    ]);
  });
});

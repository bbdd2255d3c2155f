import { readdirSync, readFileSync } from 'node:fs';
import { analyse, type Computation } from '@boothwright/language';
import { nodeFileSystem } from '@boothwright/language/node';
import { URI } from 'langium';
import { describe, expect, test } from 'vitest';
import { type Mark, marksOf } from './marks.js';

/** The text alone is tested here: the checks themselves have their own tests. */
const silent: Computation = {
  assess: (booth) => ({ booth, findings: [], workstations: [], walkways: [], operators: [], layout: emptyLayout }),
  remediesOf: () => [],
  advise: () => ({ stations: [], measure: [], shopping: [] }),
  adviseStation: () => undefined,
  checks: ['skirt-drop', 'skirt-flame', 'thigh-room', 'walkway-width'],
};
const emptyLayout = { pieces: [], occupied: [], doorSwings: [] };

const folder = new URL('../fixtures/language/', import.meta.url);
const files = (readdirSync(folder, { recursive: true }) as string[]).filter((name) => name.endsWith('.booth')).sort();

describe('the language says of each fixture what its marks say, and no more', () => {
  test.each(files)('%s', async (name) => {
    const uri = URI.parse(new URL(name.replaceAll('\\', '/'), folder).href);
    const text = readFileSync(new URL(name, folder), 'utf8');
    const { diagnostics } = await analyse(uri, { fileSystem: nodeFileSystem(), computation: silent });
    const own = diagnostics.filter((diagnostic) => diagnostic.uri === uri.toString());
    const said = own.map(({ start, end, severity, message }): Mark => {
      return { line: start.line, start: start.character, end: end.character, severity, message };
    });
    expect(said.map(inWords)).toEqual(marksOf(text).map(inWords));
  });
});

function inWords({ line, start, end, severity, message }: Mark): string {
  return `${line + 1}:${start + 1}-${end + 1} ${severity}: ${message}`;
}

import { readdirSync } from 'node:fs';
import { createAnalyser } from '@boothwright/language';
import { nodeFileSystem } from '@boothwright/language/node';
import { URI } from 'langium';
import { expect, test } from 'vitest';

const folder = new URL('../../examples/', import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith('.booth'));
const analyse = createAnalyser({ fileSystem: nodeFileSystem() });

test.each(files)('%s is read without a fault', async (name) => {
  const { diagnostics, booth } = await analyse(URI.parse(new URL(name, folder).href));
  expect(diagnostics.filter(({ kind }) => kind === 'text')).toEqual([]);
  expect(booth === undefined).toBe(name === 'furniture.booth');
});

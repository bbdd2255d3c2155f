import { readdirSync } from 'node:fs';
import type { Assessment } from '@boothwright/fit';
import { createAnalyser } from '@boothwright/language';
import { nodeFileSystem } from '@boothwright/language/node';
import { URI } from 'langium';

const folder = new URL('../../examples/', import.meta.url);
const analyse = createAnalyser({ fileSystem: nodeFileSystem() });

/** The examples that hold a booth, by file name. */
export const examples = readdirSync(folder).filter((name) => name.endsWith('.booth') && name !== 'furniture.booth');

export async function assessExample(name: string): Promise<Assessment> {
  const { assessment } = await analyse(URI.parse(new URL(name, folder).href));
  return assessment!;
}

/** A booth file's text, as if it lay among the examples. */
export async function assessText(text: string): Promise<Assessment> {
  const { assessment } = await analyse({ uri: URI.parse(new URL('given.booth', folder).href), text });
  return assessment!;
}

import { readdirSync } from 'node:fs';
import path from 'node:path';
import { URI } from 'langium';
import { NodeFileSystem } from 'langium/node';
import { render } from 'preact-render-to-string';
import { analyse } from '@boothwright/language';
import { drawings } from '../../packages/report/src/content/drawings.js';
import { BlockList } from '../../packages/report/src/content/html.js';
import { median } from './numbers.js';

/** From an assessment, its sketch not yet made, to the SVG of all its drawings: each example, milliseconds, with the first time apart. */
export async function measureDrawing(folder: string): Promise<{ file: string; first: number; median: number }[]> {
  const rows = [];
  for (const file of readdirSync(folder).filter((name) => name.endsWith('.booth'))) {
    const uri = URI.file(path.join(folder, file));
    const times: number[] = [];
    for (let n = 0; n < 15; n++) {
      const { assessment } = await analyse(uri, { fileSystem: NodeFileSystem.fileSystemProvider() });
      if (!assessment) break;
      const before = performance.now();
      render(<BlockList blocks={drawings(assessment)} />);
      times.push(performance.now() - before);
    }
    if (times.length > 0) rows.push({ file, first: times[0]!, median: median(times) });
  }
  return rows;
}

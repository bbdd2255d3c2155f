import path from 'node:path';
import { build } from 'esbuild';
import { program } from './bundling.mjs';

/** Bundles the search for texts that break a rule; returns where its parts are. */
export async function bundleFuzz(root, folder = path.join(root, 'dist/fuzz')) {
  await build({
    ...program,
    absWorkingDir: root,
    entryPoints: ['tests/fuzz/fuzz.ts', 'tests/fuzz/worker.ts'],
    outdir: folder,
    outExtension: { '.js': '.mjs' },
  });
  return { fuzz: path.join(folder, 'fuzz.mjs'), worker: path.join(folder, 'worker.mjs') };
}

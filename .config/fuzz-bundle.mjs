import path from 'node:path';
import { build } from 'esbuild';

/** Bundles the search for texts that break a rule; returns where its parts are. */
export async function bundleFuzz(root, folder = path.join(root, 'dist/fuzz')) {
  await build({
    absWorkingDir: root,
    entryPoints: ['tests/fuzz/fuzz.ts', 'tests/fuzz/worker.ts'],
    outdir: folder,
    outExtension: { '.js': '.mjs' },
    bundle: true,
    platform: 'node',
    format: 'esm',
    mainFields: ['module', 'main'],
    banner: { js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);" },
    logLevel: 'error',
  });
  return { fuzz: path.join(folder, 'fuzz.mjs'), worker: path.join(folder, 'worker.mjs') };
}

// Memory over ten thousand edits of one file in one session: see tests/bench/memory.ts. Takes some minutes.
import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { build } from 'esbuild';

const root = path.resolve(import.meta.dirname, '..');
const outfile = path.join(root, 'dist/bench/memory.mjs');
await build({
  entryPoints: [path.join(root, 'tests/bench/memory.ts')],
  outfile,
  bundle: true,
  platform: 'node',
  format: 'esm',
  mainFields: ['module', 'main'],
  banner: { js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);" },
  logLevel: 'error',
});
process.exitCode = spawnSync(process.execPath, ['--expose-gc', outfile], { stdio: 'inherit' }).status ?? 1;

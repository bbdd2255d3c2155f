// Speed, measured through the real server over stdio. Prints a table; writes dist/bench.json.
//   BENCH_SIZES=50,500 BENCH_EDITS=20 npm run bench
import { spawnSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '..');
const dist = path.join(root, 'dist/bench');
const bundle = (entry, outfile) =>
  build({
    entryPoints: [path.join(root, entry)],
    outfile: path.join(dist, outfile),
    bundle: true,
    platform: 'node',
    format: 'cjs',
    minify: true,
    mainFields: ['module', 'main'],
    logLevel: 'error',
  });

mkdirSync(dist, { recursive: true });
await bundle('packages/language/src/node/main.ts', 'boothwright.cjs');
await bundle('tests/bench/floor.ts', 'floor.cjs');
await build({
  entryPoints: [path.join(root, 'tests/bench/bench.ts')],
  outfile: path.join(dist, 'bench.mjs'),
  bundle: true,
  platform: 'node',
  format: 'esm',
  banner: { js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);" },
  logLevel: 'error',
});
const files = ['bench.mjs', 'boothwright.cjs', 'floor.cjs'].map((file) => path.join(dist, file));
const { status } = spawnSync(process.execPath, [...files, path.join(root, 'dist/bench.json')], { stdio: 'inherit' });
process.exitCode = status ?? 1;

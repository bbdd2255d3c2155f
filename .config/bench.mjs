// Speed, measured through the real server over stdio. Prints a table; writes dist/bench.json.
//   BENCH_SIZES=50,500 BENCH_EDITS=20 BENCH_FILES=50 BENCH_OTHERS=no npm run bench
//   BENCH_PARTS=preview npm run bench: of start, keys, drawings, preview and many, these alone.
// The servers of other languages come from npm, once, into dist/bench/others; without them it measures our own.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { bundles, toOptions } from './bundles.mjs';
import { bundling, commandLine, program } from './bundling.mjs';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '..');
const dist = path.join(root, 'dist/bench');
const others = path.join(dist, 'others');
const wanted = { 'yaml-language-server': '1.25.0', 'vscode-langservers-extracted': '4.10.0' };
const bundleServer = (entry, name) =>
  build({
    ...bundling,
    entryPoints: [entry],
    outfile: path.join(dist, name),
    platform: 'node',
    format: 'cjs',
    minify: true,
    logLevel: 'error',
  });

mkdirSync(dist, { recursive: true });
await bundleServer('packages/language/src/node/main.ts', 'server.cjs');
await bundleServer('tests/bench/floor.ts', 'floor.cjs');
for (const part of commandLine(dist)) await build({ ...part, minify: true, logLevel: 'error' });
const previewPage = bundles.find(({ entry }) => entry.includes('/webview/'));
await build({ ...toOptions(previewPage), outfile: path.join(dist, 'preview.js'), minify: true });
await build({
  ...program,
  external: ['playwright-core'],
  entryPoints: ['tests/bench/bench.ts'],
  outfile: path.join(dist, 'bench.mjs'),
});

const module = (name) => path.join(others, 'node_modules', name);
const versionOf = (folder) => JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8')).version;
const kinds = [
  { name: 'floor', file: path.join(dist, 'floor.cjs'), languageId: 'booth', answers: 'push', debounce: 0 },
  { name: 'boothwright', file: path.join(dist, 'server.cjs'), languageId: 'booth', answers: 'both', debounce: 0 },
  ...(hasOthers()
    ? [
        { ...bin('yaml-language-server', 'yaml-language-server'), name: 'yaml', answers: 'push', debounce: 200 },
        {
          ...bin('vscode-langservers-extracted', 'vscode-json-language-server'),
          name: 'json',
          answers: 'pull',
          debounce: 0,
        },
      ]
    : []),
];
const versions = Object.fromEntries([
  ['langium', versionOf(path.join(root, 'node_modules/langium'))],
  ...(kinds.length > 2 ? Object.keys(wanted).map((name) => [name, versionOf(module(name))]) : []),
]);

const given = {
  kinds,
  versions,
  cli: path.join(dist, 'boothwright.cjs'),
  examples: path.join(root, 'examples'),
  page: path.join(dist, 'preview.js'),
  output: path.join(root, 'dist/bench.json'),
};
const { status } = spawnSync(process.execPath, [path.join(dist, 'bench.mjs'), JSON.stringify(given)], {
  stdio: 'inherit',
});
process.exitCode = status ?? 1;

function bin(name, command) {
  const { bin: commands } = JSON.parse(readFileSync(path.join(module(name), 'package.json'), 'utf8'));
  return { file: path.join(module(name), commands[command]), languageId: command.includes('yaml') ? 'yaml' : 'json' };
}

/** Installs them where they are missing; false if that fails, or nobody wants them. */
function hasOthers() {
  if (process.env.BENCH_OTHERS === 'no') return false;
  if (Object.keys(wanted).every((name) => existsSync(module(name)))) return true;
  mkdirSync(others, { recursive: true });
  writeFileSync(path.join(others, 'package.json'), JSON.stringify({ private: true, dependencies: wanted }));
  const args = ['install', '--ignore-scripts', '--no-audit', '--no-fund', '--no-package-lock'];
  const done = spawnSync('npm', args, { cwd: others, stdio: ['ignore', 'ignore', 'inherit'] }).status === 0;
  if (!done) console.error('[bench] The YAML and JSON servers could not be installed: measuring without them.');
  return done;
}

// Bundles the extension, the language server and the command line.
//   node .config/build.mjs [--production] [--watch] [--extension-only | --server-only]
import { rm } from 'node:fs/promises';
import path from 'node:path';
import esbuild from 'esbuild';
import { commandLine } from './bundling.mjs';
import { bundles, server, toOptions } from './bundles.mjs';

const root = path.resolve(import.meta.dirname, '..');
const production = process.argv.includes('--production');
const watch = process.argv.includes('--watch');
const extensionOnly = process.argv.includes('--extension-only');
const serverOnly = process.argv.includes('--server-only');

const wanted = serverOnly
  ? [toOptions(server)]
  : extensionOnly
    ? bundles.map(toOptions)
    : [...[...bundles, server].map(toOptions), ...commandLine('packages/cli/dist').map(executable)];
if (production) {
  const folders = new Set(wanted.map(({ outfile }) => path.dirname(outfile)));
  await Promise.all([...folders].map((folder) => rm(folder, { recursive: true, force: true })));
}

const contexts = await Promise.all(
  wanted.map((options) =>
    esbuild.context({
      ...options,
      minify: production,
      sourcemap: production ? false : 'linked',
      legalComments: 'none',
      logLevel: 'warning',
    }),
  ),
);

if (watch) {
  await Promise.all(contexts.map((context) => context.watch()));
  console.log('[watch] build finished, watching for changes');
} else {
  try {
    await Promise.all(contexts.map((context) => context.rebuild()));
  } catch {
    process.exitCode = 1;
  }
  await Promise.all(contexts.map((context) => context.dispose()));
}

function executable(options) {
  return options.outfile.endsWith('boothwright.cjs') ? { ...options, banner: { js: '#!/usr/bin/env node' } } : options;
}

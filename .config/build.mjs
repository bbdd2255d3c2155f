// Bundles the extension, the language server and the command line.
//   node .config/build.mjs [--production] [--watch] [--extension-only | --server-only]
import { rm } from 'node:fs/promises';
import path from 'node:path';
import esbuild from 'esbuild';
import { bundling, commandLine } from './bundling.mjs';

const root = path.resolve(import.meta.dirname, '..');
const production = process.argv.includes('--production');
const watch = process.argv.includes('--watch');
const extensionOnly = process.argv.includes('--extension-only');
const serverOnly = process.argv.includes('--server-only');

const node = { platform: 'node', format: 'cjs', target: 'node20' };
const browser = { platform: 'browser', target: 'es2022', define: { global: 'globalThis' } };

const bundles = [
  {
    ...node,
    entry: 'packages/extension/src/extension.ts',
    out: 'packages/extension/dist/extension.cjs',
    external: ['vscode'],
  },
  {
    ...browser,
    format: 'cjs',
    entry: 'packages/extension/src/extension.web.ts',
    out: 'packages/extension/dist/extension.web.js',
    external: ['vscode'],
  },
  {
    ...browser,
    format: 'cjs',
    entry: 'packages/extension/src/pdf.ts',
    out: 'packages/extension/dist/pdf.js',
    // A worker has no modules, and needs none.
    banner: { js: 'var module = module || {};' },
  },
  { ...node, entry: 'packages/language/src/node/main.ts', out: 'packages/extension/dist/server.cjs' },
  {
    ...browser,
    format: 'iife',
    entry: 'packages/language/src/browser/main.ts',
    out: 'packages/extension/dist/server.web.js',
  },
  {
    ...browser,
    format: 'iife',
    entry: 'packages/extension/src/webview/main.tsx',
    out: 'packages/extension/dist/preview.js',
  },
];
/** The language server as a program of its own, for other editors. */
const server = {
  ...node,
  entry: 'packages/language/src/node/language-server.ts',
  out: 'packages/language/dist/boothwright-language-server.cjs',
  banner: { js: '#!/usr/bin/env node' },
};

const toOptions = ({ entry, out, define, ...options }) => ({
  ...bundling,
  ...options,
  define: { ...bundling.define, ...define },
  entryPoints: [entry],
  outfile: path.join(root, out),
});
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

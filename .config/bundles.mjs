import path from 'node:path';
import { bundling } from './bundling.mjs';

const root = path.resolve(import.meta.dirname, '..');
const node = { platform: 'node', format: 'cjs', target: 'node20' };
const browser = { platform: 'browser', target: 'es2022', define: { global: 'globalThis' } };

/** The extension, and the language server inside it. */
export const bundles = [
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
export const server = {
  ...node,
  entry: 'packages/language/src/node/language-server.ts',
  out: 'packages/language/dist/boothwright-language-server.cjs',
  banner: { js: '#!/usr/bin/env node' },
};

/** For esbuild. */
export const toOptions = ({ entry, out, define, ...options }) => ({
  ...bundling,
  ...options,
  define: { ...bundling.define, ...define },
  entryPoints: [entry],
  outfile: path.join(root, out),
});

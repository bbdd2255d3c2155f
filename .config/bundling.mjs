import path from 'node:path';

/** What every bundle needs, for esbuild. */
export const bundling = {
  absWorkingDir: path.resolve(import.meta.dirname, '..'),
  bundle: true,
  mainFields: ['module', 'main'],
  // The build of pdfkit for Node reads fonts from beside itself; the one for browsers reads no file unless asked for a colour profile.
  alias: { pdfkit: './node_modules/pdfkit/js/pdfkit.browser.mjs', 'brotli/decompress.js': './.config/no-brotli.mjs' },
  define: { 'import.meta.url': '"file:///"' },
};

/** A program that is run where it was built, as a module: it measures, or searches. */
export const program = {
  ...bundling,
  define: {},
  platform: 'node',
  format: 'esm',
  jsx: 'automatic',
  jsxImportSource: 'preact',
  banner: { js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);" },
  logLevel: 'error',
};

/** The command line into a folder, as one file, and beside it what only a PDF needs: no other command waits for it. */
export const commandLine = (outdir) =>
  ['packages/cli/src/main.ts', 'packages/report/src/pdf/index.ts'].map((entry, index) => ({
    ...bundling,
    entryPoints: [entry],
    outfile: path.resolve(bundling.absWorkingDir, outdir, index === 0 ? 'boothwright.cjs' : 'pdf.cjs'),
    platform: 'node',
    format: 'cjs',
    target: 'node20',
    plugins: index === 0 ? [pdfBeside] : [],
  }));

const pdfBeside = {
  name: 'pdf-beside',
  setup: ({ onResolve }) =>
    onResolve({ filter: /^@boothwright\/report\/pdf$/ }, () => ({ path: './pdf.cjs', external: true })),
};

import path from 'node:path';

/** What every bundle needs, for esbuild. */
export const bundling = {
  absWorkingDir: path.resolve(import.meta.dirname, '..'),
  bundle: true,
  mainFields: ['module', 'main'],
  // The build of pdfkit for Node reads fonts from beside itself; the one for browsers reads no file unless asked for a colour profile.
  alias: { pdfkit: './node_modules/pdfkit/js/pdfkit.browser.mjs' },
  define: { 'import.meta.url': '"file:///"' },
};

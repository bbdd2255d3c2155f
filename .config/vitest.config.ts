import path from 'node:path';
import { defineConfig } from 'vitest/config';

/** Everything but the editor suite, which needs an editor: see vitest.editor.config.ts. */
export default defineConfig({
  root: path.resolve(import.meta.dirname, '..'),
  test: {
    include: ['packages/*/src/**/*.test.{ts,tsx}', 'tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/editor/**', '**/node_modules/**', '**/dist/**'],
    passWithNoTests: false,
    testTimeout: 30_000,
    // No test may rest on another one. A failing order is repeated with `--sequence.seed N`; the seed is printed.
    sequence: { shuffle: { files: true, tests: true } },
    // Of the computation alone, and only with `--coverage`, as `npm test` has it.
    coverage: {
      provider: 'v8',
      include: ['packages/fit/src/**'],
      exclude: ['packages/fit/src/**/*.test.ts', 'packages/fit/src/testing/**'],
      reporter: ['text-summary', 'html'],
      reportsDirectory: 'dist/coverage',
      thresholds: { branches: 95 },
    },
  },
});

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
  },
});

import path from 'node:path';
import { defineConfig } from 'vitest/config';

/** The packaged extension in a real editor. One editor at a time: the files run one after another. */
export default defineConfig({
  root: path.resolve(import.meta.dirname, '..'),
  test: {
    include: ['tests/editor/**/*.test.ts'],
    globalSetup: ['tests/editor/harness/setup.ts'],
    setupFiles: ['tests/editor/harness/on-failure.ts'],
    fileParallelism: false,
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});

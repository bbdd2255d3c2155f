import path from 'node:path';
import { defineConfig } from 'vitest/config';

const group = process.env.MUTATE_GROUP ?? 'shared';

/** The tests that changes of one group of checks are held against: see mutate.mjs. */
export default defineConfig({
  root: path.resolve(import.meta.dirname, '..'),
  test: { include: [`packages/fit/src/checks/${group === 'shared' ? '' : `${group}/`}**/*.test.ts`] },
});

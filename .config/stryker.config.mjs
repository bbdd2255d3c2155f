import path from 'node:path';

const group = process.env.MUTATE_GROUP ?? 'seat';
const dist = path.resolve(import.meta.dirname, '../dist/mutate');
const modules = path.join(dist, 'node_modules/@stryker-mutator');
const folder = group === 'shared' ? 'packages/fit/src/checks' : `packages/fit/src/checks/${group}/**`;

/** One group of checks, against the tests of that group: see mutate.mjs. */
export default {
  mutate: [`${folder}/*.ts`, '!**/*.test.ts', '!**/catalogue.ts'],
  testRunner: 'vitest',
  vitest: { configFile: '.config/vitest.mutate.config.ts', related: false },
  plugins: [path.join(modules, 'vitest-runner/dist/src/index.js'), path.join(import.meta.dirname, 'stryker-prose.mjs')],
  ignorers: ['prose'],
  coverageAnalysis: 'perTest',
  ignorePatterns: ['**', '!package.json', '!tsconfig.json', '!.config/*', '!packages/fit/**'],
  tempDirName: 'dist/mutate/sandboxes',
  concurrency: Number(process.env.MUTATE_JOBS ?? 1),
  timeoutMS: 120_000,
  reporters: ['json', 'html', 'progress-append-only'],
  jsonReporter: { fileName: path.join(dist, `${group}.json`) },
  htmlReporter: { fileName: path.join(dist, `${group}.html`) },
  checkers: [],
  allowConsoleColors: false,
};

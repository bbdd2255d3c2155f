import { builtinModules } from 'node:module';
import path from 'node:path';
import tseslint from 'typescript-eslint';

const root = path.resolve(import.meta.dirname, '..');
const packages = ['fit', 'report', 'language', 'cli', 'extension'];
const tests = ['packages/*/src/**/*.test.{ts,tsx}', 'tests/**/*.ts'];

/** What each package may import of ours. DEVELOPERS.md says why. */
const allowed = {
  fit: [],
  report: ['fit'],
  language: ['fit'],
  cli: ['language', 'report', 'fit'],
  extension: ['language', 'report'],
};

const node = {
  regex: `^(node:.*|(${builtinModules.filter((name) => !name.startsWith('_')).join('|')})(/.*)?)$`,
  message: 'This code also runs in a browser worker: Node modules belong in the files that eslint.config.mjs names.',
};

const boundaries = (name) => [
  {
    regex: `^@boothwright/(?!(${[...allowed[name], '$'].join('|')})(/|$))`,
    message: `packages/${name} may import ${allowed[name].length ? allowed[name].join(', ') : 'nothing of ours'}.`,
  },
  {
    regex: `^(\\.\\./)+(packages/)?(${packages.join('|')})/(src|dist)(/|$)`,
    message: 'Import another package by its name.',
  },
];

const restrict = (files, patterns, ignores = []) => ({
  files,
  ignores,
  rules: { 'no-restricted-imports': ['error', { patterns }] },
});

export default tseslint.config(
  {
    ignores: [
      '**/dist/**',
      '**/node_modules/**',
      '.vscode-test/**',
      'coverage/**',
      'tests/**/output/**',
      'packages/*/src/generated/**',
    ],
  },
  {
    files: ['packages/**/*.{ts,tsx}', 'tests/**/*.ts'],
    extends: [tseslint.configs.recommendedTypeChecked],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: root } },
    rules: {
      '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
      '@typescript-eslint/no-deprecated': 'error',
      // The checks and parsers are plain objects whose functions do not use this.
      '@typescript-eslint/unbound-method': 'off',
      '@typescript-eslint/prefer-nullish-coalescing': 'error',
      '@typescript-eslint/prefer-optional-chain': 'error',
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      'no-console': 'error',
      eqeqeq: 'error',
    },
  },
  { files: ['packages/cli/**', ...tests], rules: { 'no-console': 'off' } },
  ...packages.flatMap((name) => [
    restrict([`packages/${name}/src/**/*.{ts,tsx}`], boundaries(name)),
    restrict([`packages/${name}/src/**/*.{ts,tsx}`], name === 'cli' ? boundaries(name) : [...boundaries(name), node], [
      ...tests,
      'packages/language/src/node/**',
      'packages/language/src/testing/editor.ts',
      'packages/extension/src/extension.ts',
    ]),
  ]),
);

import { existsSync } from 'node:fs';
import path from 'node:path';
import { build, type BuildOptions } from 'esbuild';
import { beforeAll, describe, expect, test } from 'vitest';
import { bundles, server, toOptions } from '../.config/bundles.mjs';
import { commandLine } from '../.config/bundling.mjs';

const root = path.resolve(import.meta.dirname, '..');
const options: readonly BuildOptions[] = [...[...bundles, server].map(toOptions), ...commandLine('dist')];

/** What each bundle leaves for its host to provide, and its text. */
let made: readonly {
  readonly name: string;
  readonly outside: readonly string[];
  readonly text: string;
  /** Which libraries, or files of ours, import a module. */
  readonly importers: (module: string) => string[];
}[];

beforeAll(async () => {
  made = await Promise.all(
    options.map(async (one) => {
      const result = await build({ ...one, write: false, metafile: true, minify: true, logLevel: 'error' });
      const [output] = Object.values(result.metafile.outputs);
      const outside = output!.imports
        .filter(({ external }) => external)
        .map(({ path: name }) => name.replace(/^node:/, ''));
      const inputs = Object.entries(result.metafile.inputs);
      const importers = (module: string) =>
        inputs
          .filter(([, { imports }]) =>
            imports.some((each) => each.external && each.path.replace(/^node:/, '') === module),
          )
          .map(([file]) => ownerOf(file));
      return { name: path.basename(one.outfile!), outside, text: result.outputFiles[0]!.text, importers };
    }),
  );
}, 120_000);

describe('what ships', () => {
  test('is all bundles of the build', () => {
    expect(made.map(({ name }) => name)).toContain('server.cjs');
    expect(made.length).toBeGreaterThanOrEqual(7);
    expect(existsSync(path.join(root, '.config/bundles.mjs'))).toBe(true);
  });

  test('has no network but the pipes that an editor gives its server', () => {
    const asked = made.flatMap(({ name, outside }) =>
      outside.filter((each) => /^(https?|http2|dgram|tls|dns|inspector)$/.test(each)).map((each) => `${name}: ${each}`),
    );
    expect(asked).toEqual([]);
  });

  test('evaluates no text as code', () => {
    for (const { name, text } of made)
      expect(text.match(/[^.\w$]eval\(|new Function\(["'`a-z]/g) ?? [], name).toEqual([]);
  });

  test('starts no process: only the libraries of the protocol can, for the server itself', () => {
    const starting = new Set(made.flatMap(({ importers }) => importers('child_process')));
    expect([...starting].sort()).toEqual(['node_modules/vscode-languageclient', 'node_modules/vscode-languageserver']);
  });
});

/** The folder of the library that a file is of, or the file if it is ours. */
function ownerOf(file: string): string {
  return /^(?:.*\/)?node_modules\/(?:@[^/]+\/)?[^/]+/.exec(file)?.[0] ?? file;
}

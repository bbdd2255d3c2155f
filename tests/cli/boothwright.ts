import { spawn } from 'node:child_process';
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { build } from 'esbuild';
import { commandLine as bundles } from '../../.config/bundling.mjs';
import { afterAll, beforeAll, vi } from 'vitest';

export interface Outcome {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}

export interface CommandLine {
  /** Runs the bundled command line in the folder, with nothing of this process's colour settings. */
  readonly run: (...args: string[]) => Promise<Outcome>;
  readonly runWith: (env: Record<string, string>, ...args: string[]) => Promise<Outcome>;
  /** Writes a file into the folder and returns its name. */
  readonly put: (name: string, text: string) => Promise<string>;
  /** The folder that commands run in; known once the tests run. */
  readonly folder: () => string;
  /** The bundle itself. */
  readonly bundle: () => string;
}

/** The real command line, bundled once per test file, and an empty folder to run it in. */
export function commandLine(): CommandLine {
  // Each run starts a process; a busy machine takes its time over that.
  vi.setConfig({ testTimeout: 60_000 });
  let folder = '';
  let bundle = '';
  beforeAll(async () => {
    const temporary = await mkdtemp(path.join(tmpdir(), 'boothwright-cli-'));
    bundle = path.join(temporary, 'boothwright.cjs');
    folder = path.join(temporary, 'halls');
    await Promise.all(bundles(temporary).map((options) => build({ ...options, logLevel: 'error' })));
    await mkdir(folder);
  }, 60_000);
  afterAll(() => rm(path.dirname(bundle), { recursive: true }));

  const runWith = (env: Record<string, string>, ...args: string[]) => start(bundle, folder, env, args);
  return {
    run: (...args) => runWith({}, ...args),
    runWith,
    put: async (name, text) => {
      await writeFile(path.join(folder, name), text);
      return name;
    },
    folder: () => folder,
    bundle: () => bundle,
  };
}

function start(bundle: string, cwd: string, env: Record<string, string>, args: readonly string[]): Promise<Outcome> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [bundle, ...args], { cwd, env: { PATH: process.env.PATH, ...env } });
    let [out, err] = ['', ''];
    child.stdout.setEncoding('utf8').on('data', (text: string) => (out += text));
    child.stderr.setEncoding('utf8').on('data', (text: string) => (err += text));
    child.on('error', reject).on('close', (status) => resolve({ status, out, err }));
  });
}

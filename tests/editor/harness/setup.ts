import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { downloadAndUnzipVSCode, resolveCliArgsFromVSCodeExecutablePath } from '@vscode/test-electron';
import type { TestProject } from 'vitest/node';
import { findChromium } from './chromium.js';
import type { HostPlan } from './host.js';
import { serverArguments, serverEnvironment } from './host-server.js';
import { Lacking } from './lacking.js';
import { cacheFolder, outputFolder, root } from './paths.js';
import { ensureServerBuild } from './server-build.js';

declare module 'vitest' {
  export interface ProvidedContext {
    plan: HostPlan;
  }
}

/** Packs the extension, gets the editor to test it in, and installs the one in the other. */
export default async function setup(project: TestProject): Promise<() => void> {
  rmSync(outputFolder, { recursive: true, force: true });
  mkdirSync(outputFolder, { recursive: true });
  const scratch = mkdtempSync(path.join(tmpdir(), 'boothwright-editor-'));
  const clear = () => rmSync(scratch, { recursive: true, force: true });
  try {
    project.provide('plan', await preparePlan(scratch));
  } catch (error) {
    clear();
    throw error;
  }
  return clear;
}

function preparePlan(scratch: string): HostPlan | Promise<HostPlan> {
  const extensions = path.join(scratch, 'extensions');
  const vsix = path.join(scratch, 'boothwright.vsix');
  execFileSync(process.execPath, ['.config/package.mjs', vsix], { cwd: root, stdio: ['ignore', 'ignore', 'inherit'] });
  return wantsDesktop() ? desktopPlan(extensions, vsix, scratch) : serverPlan(extensions, vsix, scratch);
}

/** The server build is there for 64-bit Linux only; elsewhere, or on demand, the desktop editor is tested. */
function wantsDesktop(): boolean {
  return process.env.VSCODE_EXECUTABLE !== undefined || process.platform !== 'linux' || process.arch !== 'x64';
}

function serverPlan(extensions: string, vsix: string, scratch: string): HostPlan {
  const chromium = findChromium();
  const build = ensureServerBuild();
  const folders = { userData: path.join(scratch, 'install'), extensions };
  execFileSync(build.node, [...serverArguments(build, folders), '--install-extension', vsix], {
    env: serverEnvironment,
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  return { kind: 'server', ...build, chromium, extensions };
}

async function desktopPlan(extensions: string, vsix: string, scratch: string): Promise<HostPlan> {
  if (process.platform === 'linux' && !process.env.DISPLAY && !process.env.WAYLAND_DISPLAY) {
    throw new Lacking('Desktop VS Code needs a display: run the tests under xvfb-run (Debian: apt-get install xvfb).');
  }
  const executable = process.env.VSCODE_EXECUTABLE ?? (await downloadVSCode());
  if (!existsSync(executable)) throw new Lacking(`VSCODE_EXECUTABLE names ${executable}, which does not exist.`);
  const [cli, ...args] = resolveCliArgsFromVSCodeExecutablePath(executable);
  if (!cli) throw new Lacking(`${executable} has no command line beside it: name the editor's own executable.`);
  const folders = ['--extensions-dir', extensions, '--user-data-dir', path.join(scratch, 'install')];
  execFileSync(cli, [...args, ...folders, '--install-extension', vsix], { stdio: ['ignore', 'ignore', 'inherit'] });
  return { kind: 'desktop', executable, extensions };
}

async function downloadVSCode(): Promise<string> {
  try {
    return await downloadAndUnzipVSCode({ cachePath: cacheFolder });
  } catch (error) {
    throw new Lacking('VS Code could not be downloaded: name an installed one in VSCODE_EXECUTABLE.', { cause: error });
  }
}

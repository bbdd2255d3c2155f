import { type ChildProcess, spawn } from 'node:child_process';
import { createServer, type AddressInfo } from 'node:net';
import path from 'node:path';
import { chromium } from 'playwright-core';
import { type Host, type HostFolders, type HostPlan, viewport } from './host.js';

type ServerPlan = Extract<HostPlan, { kind: 'server' }>;

/** The environment of VS Code's server build: no gallery to ask, no settings of this machine. */
export const serverEnvironment = { ...process.env, EXTENSIONS_GALLERY: '{"serviceUrl":""}', NODE_OPTIONS: '' };

export function serverArguments(
  plan: { entry: string },
  folders: Pick<HostFolders, 'userData' | 'extensions'>,
): string[] {
  const { userData, extensions } = folders;
  return [
    plan.entry,
    '--config',
    path.join(userData, 'config.yaml'),
    '--user-data-dir',
    userData,
    '--extensions-dir',
    extensions,
  ];
}

/** VS Code's own server build, seen through headless Chromium. */
export async function startServerHost(plan: ServerPlan, folders: HostFolders): Promise<Host> {
  const port = await freePort();
  const address = `http://127.0.0.1:${port}`;
  const trusting = folders.isRestricted ? [] : ['--disable-workspace-trust'];
  const quiet = ['--disable-telemetry', '--disable-update-check', ...trusting];
  const server = spawn(
    plan.node,
    [...serverArguments(plan, folders), '--auth', 'none', '--bind-addr', `127.0.0.1:${port}`, ...quiet],
    { env: serverEnvironment, detached: true, stdio: 'ignore' },
  );
  const kill = () => endGroup(server);
  process.once('exit', kill);
  const browser = await chromium.launch({ executablePath: plan.chromium, args: chromiumFlags });
  const stop = async () => {
    await browser.close();
    kill();
    process.off('exit', kill);
  };
  try {
    await answering(address, server);
    const page = await browser.newPage({ viewport });
    await page.addInitScript((language) => {
      if (language !== undefined) Object.assign(globalThis, { _VSCODE_NLS_LANGUAGE: language });
    }, folders.language);
    await page.route(
      (url) => url.hostname !== '127.0.0.1',
      (route) => route.abort(),
    );
    await page.goto(`${address}/?folder=${encodeURIComponent(folders.workspace)}`);
    return { page, logs: path.join(folders.userData, 'logs'), stop };
  } catch (error) {
    await stop();
    throw error;
  }
}

const chromiumFlags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const { port } = probe.address() as AddressInfo;
      probe.close(() => resolve(port));
    });
  });
}

async function answering(address: string, server: ChildProcess): Promise<void> {
  for (const end = Date.now() + 30_000; Date.now() < end;) {
    if (server.exitCode !== null) throw new Error(`VS Code's server build ended with status ${server.exitCode}.`);
    const answer = await fetch(`${address}/healthz`).catch(() => undefined);
    if (answer?.ok) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error("VS Code's server build did not answer within 30 seconds.");
}

function endGroup(child: ChildProcess): void {
  if (child.pid === undefined) return;
  try {
    process.kill(-child.pid, 'SIGTERM');
  } catch {
    // It has ended already.
  }
}

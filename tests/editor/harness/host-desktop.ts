import path from 'node:path';
import { _electron } from 'playwright-core';
import { type Host, type HostFolders, type HostPlan, viewport } from './host.js';

type DesktopPlan = Extract<HostPlan, { kind: 'desktop' }>;

/** Desktop VS Code, driven in its own window. */
export async function startDesktopHost(plan: DesktopPlan, folders: HostFolders): Promise<Host> {
  const app = await _electron.launch({
    executablePath: plan.executable,
    args: [
      ...(path.isAbsolute(folders.workspace) ? [folders.workspace] : ['--folder-uri', folders.workspace]),
      `--user-data-dir=${folders.userData}`,
      `--extensions-dir=${folders.extensions}`,
      ...(folders.isRestricted ? [] : ['--disable-workspace-trust']),
      '--disable-updates',
      '--disable-telemetry',
      '--skip-welcome',
      '--skip-release-notes',
      '--no-sandbox',
    ],
    env: withoutElectronSettings(),
    timeout: 60_000,
  });
  const page = await app.firstWindow();
  await page.setViewportSize(viewport);
  return { page, logs: path.join(folders.userData, 'logs'), stop: () => app.close() };
}

/** A terminal inside VS Code sets variables that would turn the new window into a plain Node. */
function withoutElectronSettings(): Record<string, string> {
  const kept = Object.entries(process.env).filter(([name]) => !/^(ELECTRON_|VSCODE_)/.test(name));
  return Object.fromEntries(kept) as Record<string, string>;
}

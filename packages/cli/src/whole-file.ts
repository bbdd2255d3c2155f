import { randomUUID } from 'node:crypto';
import { rmSync } from 'node:fs';
import { open, realpath, rename, stat } from 'node:fs/promises';

/**
 * Writes a file whole or not at all: what stood there stays until all of the new one is on the disk. A link stays a link, and its target is
 * replaced. Nothing is left beside it, also if the program is interrupted.
 */
export async function writeWhole(file: string, content: string | Uint8Array): Promise<void> {
  const target = await realpath(file).catch(() => file);
  const mode = await stat(target).then(
    (existing) => existing.mode,
    () => undefined,
  );
  const draft = `${target}.${randomUUID().slice(0, 8)}.tmp`;
  const interruption = onInterruption(() => rmSync(draft, { force: true }));
  try {
    // Fails if the draft is there already, be it as a link to elsewhere.
    const handle = await open(draft, 'wx', mode);
    try {
      await handle.writeFile(content);
      await handle.sync();
    } finally {
      await handle.close();
    }
    await rename(draft, target);
  } catch (error) {
    rmSync(draft, { force: true });
    throw error;
  } finally {
    interruption.dispose();
  }
}

const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/** Cleans up before one of these signals does what it would do anyway. */
function onInterruption(cleanUp: () => void): { dispose(): void } {
  const stop = (signal: NodeJS.Signals) => {
    cleanUp();
    dispose();
    process.kill(process.pid, signal);
  };
  const dispose = () => signals.forEach((signal) => process.off(signal, stop));
  for (const signal of signals) process.on(signal, stop);
  return { dispose };
}

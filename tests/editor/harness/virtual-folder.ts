import { cpSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const scheme = 'in-memory';

/** A folder that is on no disk: an extension of the tests keeps its files in memory. */
export const virtualFolder = `${scheme}:/booths`;

const manifest = {
  name: 'files-in-memory',
  publisher: 'booth-tests',
  version: '0.0.1',
  engines: { vscode: '^1.90.0' },
  browser: './extension.js',
  activationEvents: [`onFileSystem:${scheme}`],
  contributes: { resourceLabelFormatters: [{ scheme, formatting: { label: '${path}', separator: '/' } }] },
};

/** A folder of extensions: those of `extensions`, and one that shows `files`, by path and text, as `virtualFolder`. */
export function withVirtualFolder(files: Record<string, string>, extensions: string, scratch: string): string {
  const all = path.join(scratch, 'extensions');
  const own = path.join(all, `${manifest.publisher}.${manifest.name}-${manifest.version}`);
  cpSync(extensions, all, { recursive: true });
  // The list of what is installed: without it the editor looks for itself.
  rmSync(path.join(all, 'extensions.json'), { force: true });
  mkdirSync(own);
  writeFileSync(path.join(own, 'package.json'), JSON.stringify(manifest));
  writeFileSync(path.join(own, 'files.json'), JSON.stringify({ scheme, files }));
  cpSync(fileURLToPath(new URL('files-in-memory.cjs', import.meta.url)), path.join(own, 'extension.js'));
  return all;
}

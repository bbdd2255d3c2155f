// Tries many texts the whole way, from their letters to every output, and says which of them break a rule.
//   npm run fuzz -- [--cases 200000] [--seed 1] [--jobs 2] [--from 0] [--show CASE]
import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { bundleFuzz } from './fuzz-bundle.mjs';

const root = path.resolve(import.meta.dirname, '..');
const { fuzz } = await bundleFuzz(root);
const { status } = spawnSync(process.execPath, [fuzz, ...process.argv.slice(2)], { cwd: root, stdio: 'inherit' });
process.exitCode = status ?? 1;

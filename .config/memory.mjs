// Memory over ten thousand edits of one file in one session: see tests/bench/memory.ts. Takes some minutes.
import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { build } from 'esbuild';
import { program } from './bundling.mjs';

const outfile = path.resolve(import.meta.dirname, '../dist/bench/memory.mjs');
await build({ ...program, entryPoints: ['tests/bench/memory.ts'], outfile });
process.exitCode = spawnSync(process.execPath, ['--expose-gc', outfile], { stdio: 'inherit' }).status ?? 1;

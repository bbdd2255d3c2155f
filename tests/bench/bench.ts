import { writeFileSync } from 'node:fs';
import os from 'node:os';
import { measureDrawing } from './drawing.js';
import { measureKeys, measureStart, type KeyRow } from './keys.js';
import { measureMany } from './many.js';
import { measurePreview, type PreviewRow } from './preview.js';
import { printResult, type Result } from './print.js';
import type { Kind } from './server.js';

interface Given {
  readonly kinds: readonly Kind[];
  readonly versions: Readonly<Record<string, string>>;
  readonly cli: string;
  readonly examples: string;
  /** The script of the preview's page. */
  readonly page: string;
  readonly output: string;
}

const { kinds, versions, cli, examples, page, output } = JSON.parse(process.argv[2]!) as Given;
const sizes = process.env.BENCH_SIZES?.split(',').map(Number) ?? [50, 500, 5000, 20_000];
const edits = Number(process.env.BENCH_EDITS ?? 100);
const files = Number(process.env.BENCH_FILES ?? 200);
const parts = process.env.BENCH_PARTS?.split(',');

const tell = (what: string) => console.error(`[bench] ${what}`);

/** What a part measures; nothing if only others are wanted. */
async function part<Measured>(
  name: string,
  measure: () => Measured | Promise<Measured>,
): Promise<Measured | undefined> {
  if (parts && !parts.includes(name)) return undefined;
  tell(name);
  return measure();
}

const start = (await part('start', () => measureStart(kinds, 50, 5))) ?? new Map<string, number>();
const keys: KeyRow[] = [];
for (const lines of sizes) keys.push(...((await part('keys', () => measureKeys(kinds, lines, edits))) ?? []));
const drawings = (await part('drawings', () => measureDrawing(examples))) ?? [];
const own = kinds.find(({ name }) => name === 'boothwright')!;
const previews =
  (await part('preview', () =>
    measurePreview(own, examples, page).catch((error: unknown): PreviewRow[] => {
      tell(`the preview is left out: ${String(error)}`);
      return [];
    }),
  )) ?? [];
const many = await part('many', () => measureMany(cli, files, 50));

const result: Result = {
  machine: {
    cpu: os.cpus()[0]?.model ?? 'unknown',
    cores: os.cpus().length,
    memoryGB: Math.round(os.totalmem() / 2 ** 30),
    load: os.loadavg()[0]!,
    node: process.version,
    os: `${os.type()} ${os.release()}`,
  },
  versions,
  edits,
  files,
  start: Object.fromEntries(start),
  keys,
  drawings,
  previews,
  ...(many && { many }),
};
printResult(result);
writeFileSync(output, JSON.stringify(result, null, 2));
console.log(`\nAlso in ${output}.`);

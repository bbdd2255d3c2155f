import { writeFileSync } from 'node:fs';
import os from 'node:os';
import { boothOf } from './documents.js';
import { Server } from './server.js';

/** What is measured of one server at one size. Milliseconds, megabytes. */
interface Row {
  readonly server: string;
  readonly lines: number;
  readonly start: number;
  readonly open: number;
  readonly median: number;
  readonly p95: number;
  readonly burst: number;
  readonly hover: number;
  readonly completion: number;
  readonly memory: number;
}

const [ours, floor, output] = process.argv.slice(2) as [string, string, string];
const sizes = process.env.BENCH_SIZES?.split(',').map(Number) ?? [50, 500, 5000, 20_000];
const edits = Number(process.env.BENCH_EDITS ?? 100);

const rows: Row[] = [];
for (const lines of sizes) {
  rows.push(await measure('floor', floor, lines));
  rows.push(await measure('boothwright', ours, lines));
}
print(rows);
const machine = {
  cpu: os.cpus()[0]?.model,
  cores: os.cpus().length,
  memoryGB: Math.round(os.totalmem() / 2 ** 30),
  node: process.version,
};
writeFileSync(output, JSON.stringify({ machine, edits, exponent: exponentOf(rows), rows }, null, 2));
console.log(`\nAlso in ${output}.`);

async function measure(name: string, file: string, lines: number): Promise<Row> {
  const text = boothOf(lines);
  const began = performance.now();
  const server = await Server.start(file);
  const started = performance.now();
  await server.open(text);
  const opened = performance.now();

  const all = text.split('\n');
  const middle = all.findIndex((line, index) => index >= all.length / 2 && line.startsWith('  stature '));
  const at = all[middle]!.search(/\d/);
  const times: number[] = [];
  for (let n = 0; n < edits; n++) {
    const before = performance.now();
    await server.edit(middle, at, String(5 + (n % 2)), 1);
    times.push(performance.now() - before);
  }
  const burst = await burstOf(server, middle, all[middle]!.length);
  const hover = await timesOf(20, () => server.request('textDocument/hover', middle - 1, 11));
  const completion = await timesOf(20, () => server.request('textDocument/completion', middle, 2));
  const memory = server.memory();
  await server.stop();
  return {
    server: name,
    lines: all.length,
    start: started - began,
    open: opened - started,
    median: quantile(times, 0.5),
    p95: quantile(times, 0.95),
    burst,
    hover: quantile(hover, 0.5),
    completion: quantile(completion, 0.5),
    memory,
  };
}

/** From the last of ten keys, 40 ms apart, to diagnostics; a comment is typed at the end of a line. */
async function burstOf(server: Server, line: number, length: number): Promise<number> {
  const keys = ' // notes!';
  for (const [index, key] of [...keys].entries()) {
    if (index === keys.length - 1) break;
    await server.change(line, length + index, key);
    await new Promise((resolve) => setTimeout(resolve, 40));
  }
  const before = performance.now();
  await server.edit(line, length + keys.length - 1, '!');
  return performance.now() - before;
}

async function timesOf(count: number, run: () => Promise<unknown>): Promise<number[]> {
  const times: number[] = [];
  for (let n = 0; n < count; n++) {
    const before = performance.now();
    await run();
    times.push(performance.now() - before);
  }
  return times;
}

function quantile(values: readonly number[], p: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(p * sorted.length))]!;
}

/** Slope of log time over log lines between the two largest sizes: 1 is linear. */
function exponentOf(rows: readonly Row[]): number {
  const own = rows.filter(({ server }) => server === 'boothwright');
  if (own.length < 2) return NaN;
  const [a, b] = own.slice(-2) as [Row, Row];
  return Math.log(b.median / a.median) / Math.log(b.lines / a.lines);
}

function print(rows: readonly Row[]): void {
  const own = rows.filter(({ server }) => server === 'boothwright');
  console.log('Keystroke to findings, against a bare server on the same grammar (ratio of medians):');
  for (const row of own) {
    const bare = rows.find(({ server, lines }) => server === 'floor' && lines === row.lines)!;
    console.log(`  ${String(row.lines).padStart(6)} lines: ${(row.median / bare.median).toFixed(2)}`);
  }
  console.log(`Growth between the two largest sizes: lines to the power of ${exponentOf(rows).toFixed(2)}\n`);
  const columns = ['start', 'open', 'median', 'p95', 'burst', 'hover', 'completion', 'memory'] as const;
  console.log(`${'server'.padEnd(12)} ${'lines'.padStart(6)} ${columns.map((name) => name.padStart(10)).join(' ')}`);
  for (const row of rows) {
    const cells = columns.map((name) => row[name].toFixed(1).padStart(10));
    console.log(`${row.server.padEnd(12)} ${String(row.lines).padStart(6)} ${cells.join(' ')}`);
  }
  console.log(
    `\nMilliseconds (memory: MB), ${edits} edits a size; ${os.cpus()[0]?.model}, ${os.cpus().length} cores, Node ${process.version}.`,
  );
}

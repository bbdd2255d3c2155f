import type { KeyRow } from './keys.js';
import { exponentOf } from './numbers.js';
import type { PreviewRow } from './preview.js';

export interface Result {
  readonly machine: {
    readonly cpu: string;
    readonly cores: number;
    readonly memoryGB: number;
    readonly load: number;
    readonly node: string;
    readonly os: string;
  };
  readonly versions: Readonly<Record<string, string>>;
  readonly edits: number;
  readonly files: number;
  /** From the process's start to the first findings, by server, milliseconds. */
  readonly start: Readonly<Record<string, number>>;
  readonly keys: readonly KeyRow[];
  readonly drawings: readonly { readonly file: string; readonly first: number; readonly median: number }[];
  /** Nothing where there was no browser. */
  readonly previews: readonly PreviewRow[];
  /** Microseconds a line. */
  readonly many?: { readonly start: number; readonly one: number; readonly many: number };
}

/** What is wanted, one line each with its ratio, then all that was measured. */
export function printResult(result: Result): void {
  console.log('What is wanted                                                               measured    wanted');
  for (const { what, value, most } of wishesOf(result)) {
    const isMet = value <= most;
    console.log(`${isMet ? ' ' : '!'} ${what.padEnd(72)} ${number(value)}  ${number(most)}${isMet ? '' : '  not met'}`);
  }
  if (result.keys.length > 0) printKeys(result.keys);
  if (Object.keys(result.start).length > 0)
    console.log('\nFrom the start of the process to the first findings of 50 lines, milliseconds');
  for (const [server, time] of Object.entries(result.start)) console.log(`  ${server.padEnd(12)} ${number(time)}`);
  if (result.drawings.length > 0)
    console.log('\nAll drawings of an example for a report, milliseconds: the first time, and the median of 15');
  for (const { file, first, median } of result.drawings)
    console.log(`  ${file.padEnd(32)} ${number(first)} ${number(median)}`);
  if (result.previews.length > 0) printPreviews(result.previews);
  const { machine, versions, edits, files, many } = result;
  if (many)
    console.log(
      `\ncheck, microseconds a line: ${files} files ${number(many.many)}, one file ${number(many.one)}, of which starting up ${number(many.start)}`,
    );
  console.log(
    `\n${machine.cpu}, ${machine.cores} cores, ${machine.memoryGB} GB, load ${machine.load.toFixed(1)}; ${machine.os}; Node ${machine.node}; ${edits} edits a size.`,
  );
  console.log(
    Object.entries(versions)
      .map(([name, version]) => `${name} ${version}`)
      .join(', '),
  );
  for (const { server, debounce } of result.keys.filter(({ lines }) => lines === result.keys[0]!.lines))
    if (debounce > 0) console.log(`${server} waits ${debounce} ms after a change; that is taken out above.`);
}

function printKeys(keys: readonly KeyRow[]): void {
  console.log('\nMilliseconds from a key to its findings, debounce taken out; memory in MB');
  console.log('faults: what is wrong with the text, which is all that the YAML and JSON servers look for\n');
  const columns = [
    'open',
    'faults',
    'median',
    'p95',
    'cpu',
    'burst',
    'hover',
    'completion',
    'values',
    'memory',
    'diagnostics',
  ] as const;
  console.log(`${'server'.padEnd(12)} ${'lines'.padStart(6)} ${columns.map((name) => name.padStart(11)).join(' ')}`);
  for (const row of keys) {
    const cells = columns.map((name) => number(without(row)[name], 11));
    console.log(`${row.server.padEnd(12)} ${String(row.ownLines).padStart(6)} ${cells.join(' ')}`);
  }
}

function printPreviews(previews: readonly PreviewRow[]): void {
  console.log('\nThe preview after the findings of a changed height, milliseconds; sent to the page, kB');
  const parts = ['first', 'answer', 'page', 'whole', 'cpu', 'size'] as const;
  console.log(`  ${''.padEnd(32)} ${parts.map((name) => name.padStart(9)).join(' ')}`);
  for (const row of previews)
    console.log(`  ${row.file.padEnd(32)} ${parts.map((part) => number(row[part])).join(' ')}`);
}

function without(row: KeyRow): KeyRow {
  const { debounce } = row;
  return { ...row, median: row.median - debounce, p95: row.p95 - debounce, burst: row.burst - debounce };
}

function wishesOf({ keys, start, previews, many }: Result): { what: string; value: number; most: number }[] {
  const rows = keys.map(without);
  const at = (server: string, lines: number) => rows.find((row) => row.server === server && row.lines === lines);
  const sizes = [...new Set(keys.map(({ lines }) => lines))];
  const ratio = (what: string, value: number | undefined, to: number | undefined, most: number) =>
    value === undefined || to === undefined ? [] : [{ what, value: value / to, most }];
  const own = at('boothwright', 500);
  const floor = at('floor', 500);
  return [
    ...sizes.flatMap((lines) =>
      ratio(
        `key to the faults of the text, ${lines} lines: to the YAML server`,
        at('boothwright', lines)?.faults,
        at('yaml', lines)?.median,
        1,
      ),
    ),
    ...ratio(
      'key to the faults of the text, 500 lines: to the JSON server when asked',
      own?.faults,
      at('json', 500)?.median,
      2,
    ),
    ...sizes.flatMap((lines) =>
      ratio(
        `key to all findings, ${lines} lines: to the YAML server`,
        at('boothwright', lines)?.median,
        at('yaml', lines)?.median,
        1,
      ),
    ),
    ...sizes.flatMap((lines) =>
      ratio(
        `key to all findings, ${lines} lines: to the bare server`,
        at('boothwright', lines)?.median,
        at('floor', lines)?.median,
        lines === 500 ? 1.3 : Infinity,
      ),
    ),
    ...ratio(
      'key to all findings, 500 lines: to the JSON server when asked',
      own?.median,
      at('json', 500)?.median,
      Infinity,
    ),
    ...(own && floor
      ? [{ what: '500 lines: 95th percentile, ms', value: own.p95, most: Math.max(16, 1.3 * floor.p95) }]
      : []),
    {
      what: 'growth: time goes with lines to the power of',
      value: exponentOf(
        rows.filter(({ server }) => server === 'boothwright').map(({ lines, median }) => ({ lines, time: median })),
      ),
      most: 1.1,
    },
    ...(own ? [{ what: '500 lines: after a burst, to one edit', value: own.burst / own.median, most: 1.5 }] : []),
    ...(own ? [{ what: '500 lines: hover, ms', value: own.hover, most: 10 }] : []),
    ...(own ? [{ what: '500 lines: completion, ms', value: own.completion, most: 10 }] : []),
    ...(own ? [{ what: '500 lines: completion of a value at a new place, ms', value: own.values, most: 10 }] : []),
    ...ratio('cold start: to the bare server', start.boothwright, start.floor, 1.3),
    ...(previews.length > 0
      ? [
          {
            what: 'the preview of an example after its findings, ms, the slowest',
            value: Math.max(...previews.map(({ whole }) => whole)),
            most: 16,
          },
        ]
      : []),
    ...ratio('check: a line of many files, to a line of one', many?.many, many?.one, 1),
    ...ratio('the same, starting up left out', many?.many, many && many.one - many.start, 1),
  ].filter(({ value }) => !Number.isNaN(value));
}

function number(value: number, width = 9): string {
  if (!Number.isFinite(value)) return '–'.padStart(width);
  return (value < 10 ? value.toFixed(2) : value.toFixed(1)).padStart(width);
}

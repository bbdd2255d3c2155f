export function quantile(values: readonly number[], p: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(p * sorted.length))] ?? NaN;
}

export function median(values: readonly number[]): number {
  return quantile(values, 0.5);
}

/** Slope of log time over log lines, fitted over all sizes from 500 lines up: 1 is linear. */
export function exponentOf(points: readonly { readonly lines: number; readonly time: number }[]): number {
  const logs = points
    .filter(({ lines }) => lines >= 400)
    .map(({ lines, time }) => [Math.log(lines), Math.log(time)] as const);
  if (logs.length < 2) return NaN;
  const x = logs.reduce((sum, [each]) => sum + each, 0) / logs.length;
  const y = logs.reduce((sum, [, each]) => sum + each, 0) / logs.length;
  const across = logs.reduce((sum, [a]) => sum + (a - x) ** 2, 0);
  return logs.reduce((sum, [a, b]) => sum + (a - x) * (b - y), 0) / across;
}

export async function timeOf(run: () => Promise<unknown>): Promise<number> {
  const before = performance.now();
  await run();
  return performance.now() - before;
}

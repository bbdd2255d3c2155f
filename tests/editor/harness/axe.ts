import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults, RunOptions } from 'axe-core';
import type { Frame } from 'playwright-core';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const standards = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** How many rules a page meets, and what it is objected to, with the places. */
export async function examine(frame: Frame): Promise<{ passes: number; objections: string[] }> {
  await frame.evaluate(axe);
  const options: RunOptions = { runOnly: { type: 'tag', values: standards }, resultTypes: ['violations'] };
  const { passes, violations } = await frame.evaluate(
    (given) => (globalThis as unknown as { axe: { run(options: unknown): Promise<AxeResults> } }).axe.run(given),
    options,
  );
  const objections = violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(' · ')}`,
  );
  return { passes: passes.length, objections };
}

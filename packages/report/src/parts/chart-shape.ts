import type { ChartTold } from '../telling/curves.js';

/** A chart's size, and the room around its plot, in its own units. */
export const CHART = { width: 480, height: 190, left: 40, right: 12, top: 22, bottom: 26 } as const;

/** Lines differ by dash as well as by colour; more lines than these begin again. */
export const dashes = [undefined, '7 3', '2 3', '10 3 2 3', '14 4', '4 2'];
export const COLOURS = 4;

/** As many tick labels as fit side by side. */
export function labelledTicks({ ticks }: ChartTold): ChartTold['ticks'] {
  const longest = Math.max(...ticks.map(({ label }) => label.length));
  const fit = Math.max(2, Math.floor((CHART.width - CHART.left) / (longest * 7 + 10)));
  const every = Math.ceil(ticks.length / fit);
  return ticks.filter((_, index) => index % every === 0);
}

import { percent } from '../words.js';
import type { ChartTold, LineTold } from '../telling/curves.js';
import { CHART, COLOURS, dashes, labelledTicks } from './chart-shape.js';

/** One chart: share served against a height. Each line is also said in words; its figures stand in a table of their own. */
export function Chart({ chart, id }: { chart: ChartTold; id: string }) {
  const x = (height: number) =>
    CHART.left + ((height - chart.from) / (chart.to - chart.from)) * (CHART.width - CHART.left - CHART.right);
  const y = (share: number) => CHART.height - CHART.bottom - share * (CHART.height - CHART.top - CHART.bottom);
  return (
    <figure class="chart">
      <figcaption id={`${id}-title`}>{chart.title}</figcaption>
      <svg viewBox={`0 0 ${CHART.width} ${CHART.height}`} role="img" aria-labelledby={`${id}-title ${id}-desc`}>
        <desc id={`${id}-desc`}>{`${chart.lines.map(({ summary }) => summary).join('. ')}.`}</desc>
        <g class="grid">
          {[0, 0.5, 0.9, 1].map((share) => (
            <>
              <line
                x1={CHART.left}
                x2={CHART.width - CHART.right}
                y1={y(share)}
                y2={y(share)}
                class={share === 0 ? 'axis' : ''}
              />
              <text x={CHART.left - 6} y={y(share) + 3.5} text-anchor="end">
                {percent(share)}
              </text>
            </>
          ))}
          {labelledTicks(chart).map(({ at, label }) => (
            <>
              <line x1={x(at)} x2={x(at)} y1={y(0)} y2={y(0) + 4} class="axis" />
              <text x={x(at)} y={CHART.height - 8} text-anchor="middle">
                {label}
              </text>
            </>
          ))}
        </g>
        {chart.now && (
          <g class="now">
            <line x1={x(chart.now.at)} x2={x(chart.now.at)} y1={CHART.top - 6} y2={y(0)} />
            <text x={x(chart.now.at)} y={CHART.top - 10} text-anchor="middle">
              {chart.now.label}
            </text>
          </g>
        )}
        {chart.lines.map((line, index) => (
          <path d={pathOf(line, x, y)} {...strokeOf(index)} />
        ))}
      </svg>
      <ul class="legend">
        {chart.lines.map(({ summary }, index) => (
          <li>
            <svg width="34" height="8" aria-hidden="true">
              <path d="M1 4h32" {...strokeOf(index)} />
            </svg>
            {summary}
          </li>
        ))}
      </ul>
    </figure>
  );
}

function pathOf({ points }: LineTold, x: (height: number) => number, y: (share: number) => number): string {
  const place = (height: number, share: number) => `${x(height).toFixed(1)} ${y(share).toFixed(1)}`;
  return `M${points.map(({ height, share }) => place(height, share)).join('L')}`;
}

function strokeOf(index: number) {
  return { class: `line line-${(index % COLOURS) + 1}`, 'stroke-dasharray': dashes[index % dashes.length] };
}

import { percent } from '../words.js';
import type { ChartTold, LineTold } from '../telling/curves.js';

const WIDTH = 480;
const HEIGHT = 190;
const PLOT = { left: 40, right: 12, top: 22, bottom: 26 } as const;

/** Lines differ by dash as well as by colour; more lines than these begin again. */
const dashes = [undefined, '7 3', '2 3', '10 3 2 3', '14 4', '4 2'];
const COLOURS = 4;

/** One chart: share served against a height. The figures stand in a table below it, for those who cannot see the lines. */
export function Chart({ chart, id }: { chart: ChartTold; id: string }) {
  const x = (height: number) =>
    PLOT.left + ((height - chart.from) / (chart.to - chart.from)) * (WIDTH - PLOT.left - PLOT.right);
  const y = (share: number) => HEIGHT - PLOT.bottom - share * (HEIGHT - PLOT.top - PLOT.bottom);
  return (
    <figure class="chart">
      <figcaption id={`${id}-title`}>{chart.title}</figcaption>
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-labelledby={`${id}-title ${id}-desc`}>
        <desc id={`${id}-desc`}>{`${chart.lines.map(({ summary }) => summary).join('. ')}.`}</desc>
        <g class="grid">
          {[0, 0.5, 0.9, 1].map((share) => (
            <>
              <line
                x1={PLOT.left}
                x2={WIDTH - PLOT.right}
                y1={y(share)}
                y2={y(share)}
                class={share === 0 ? 'axis' : ''}
              />
              <text x={PLOT.left - 6} y={y(share) + 3.5} text-anchor="end">
                {percent(share)}
              </text>
            </>
          ))}
          {labelled(chart).map(({ at, label }) => (
            <>
              <line x1={x(at)} x2={x(at)} y1={y(0)} y2={y(0) + 4} class="axis" />
              <text x={x(at)} y={HEIGHT - 8} text-anchor="middle">
                {label}
              </text>
            </>
          ))}
        </g>
        {chart.now && (
          <g class="now">
            <line x1={x(chart.now.at)} x2={x(chart.now.at)} y1={PLOT.top - 6} y2={y(0)} />
            <text x={x(chart.now.at)} y={PLOT.top - 10} text-anchor="middle">
              {chart.now.label}
            </text>
          </g>
        )}
        {chart.lines.map((line, index) => (
          <path d={pathOf(line, x, y)} {...strokeOf(index)} />
        ))}
      </svg>
      <ul class="legend">
        {chart.lines.map(({ who }, index) => (
          <li>
            <svg width="34" height="8" aria-hidden="true">
              <path d="M1 4h32" {...strokeOf(index)} />
            </svg>
            {who}
          </li>
        ))}
      </ul>
      <FiguresTable chart={chart} id={`${id}-figures`} />
    </figure>
  );
}

function FiguresTable({ chart, id }: { chart: ChartTold; id: string }) {
  return (
    <div class="scroll" tabIndex={0} role="region" aria-labelledby={id}>
      <table class="shares">
        <caption id={id}>{`${chart.title}, in figures`}</caption>
        <thead>
          <tr>
            <th scope="col">Height</th>
            {chart.lines.map(({ who }) => (
              <th scope="col">{who}</th>
            ))}
          </tr>
        </thead>
        <tbody>
          {chart.rows.map(({ height, shares }) => (
            <tr>
              <th scope="row">{height}</th>
              {shares.map((share) => (
                <td>{share}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** As many tick labels as fit side by side. */
function labelled({ ticks }: ChartTold): ChartTold['ticks'] {
  const longest = Math.max(...ticks.map(({ label }) => label.length));
  const fit = Math.max(2, Math.floor((WIDTH - PLOT.left) / (longest * 7 + 10)));
  const every = Math.ceil(ticks.length / fit);
  return ticks.filter((_, index) => index % every === 0);
}

function pathOf({ points }: LineTold, x: (height: number) => number, y: (share: number) => number): string {
  const place = (height: number, share: number) => `${x(height).toFixed(1)} ${y(share).toFixed(1)}`;
  return `M${points.map(({ height, share }) => place(height, share)).join('L')}`;
}

function strokeOf(index: number) {
  return { class: `line line-${(index % COLOURS) + 1}`, 'stroke-dasharray': dashes[index % dashes.length] };
}

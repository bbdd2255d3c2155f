import type { Advice, Assessment, ShoppingLine } from '@boothwright/fit';
import { bandsMean, tellMeasure, tellStations, type BandsTold, type PlanTold } from '@boothwright/report';
import picocolors from 'picocolors';
import { caution, plain, wrapper } from './prose.js';

export interface AdviceOptions {
  readonly width: number;
  readonly colours: boolean;
}

/** What would fit, workstation by workstation, then what to measure and what to buy. */
export function formatAdvice(file: string, assessment: Assessment, advice: Advice, options: AdviceOptions): string {
  const paint = picocolors.createColors(options.colours);
  const wrap = wrapper(options.width);
  const plan = ({ title, facts }: PlanTold, index: number) =>
    [
      wrap(`${index === 0 ? 'Best plan' : 'Or'}: ${title}`, '  → ', '    '),
      ...facts.map(({ label, text }) => paint.dim(wrap(`${label}: ${text}.`, '    ', '      '))),
    ].join('\n');

  /** Who needs which height: two columns, the names as wide as the widest. */
  const tableOf = ({ part, now, rows }: BandsTold) => {
    const widest = Math.max(...rows.map(({ who }) => plain(who).length));
    const row = ({ who, height }: BandsTold['rows'][number]) =>
      wrap(height, `    ${plain(who).padEnd(widest)}  `, ' '.repeat(widest + 6));
    return [wrap(`${part}: now ${now}; suits`), ...rows.map((one) => paint.dim(row(one)))].join('\n');
  };

  const stations = tellStations(advice, assessment).map(({ workstation, plans, noPlan, notes, bands }) =>
    [
      paint.bold(plain(`Workstation ${workstation}`)),
      ...(noPlan === undefined ? [] : [wrap(noPlan)]),
      ...plans.map(plan),
      ...notes.map((note) => wrap(note, '  ! ', '    ')),
      ...bands.map((each) => tableOf(each)),
    ].join('\n'),
  );
  const hasBands = advice.stations.some(({ bands }) => bands.length > 0);
  const measure = advice.measure.map(tellMeasure).map(({ title, text }) => wrap(`${title}. ${text}`, '  → ', '    '));
  const parts = [
    `${paint.bold(plain(assessment.booth.name))} ${paint.dim(plain(file))}`,
    ...stations,
    ...(hasBands ? [paint.dim(wrap(bandsMean, ''))] : []),
    ...(measure.length > 0 ? [[paint.bold('Measure next'), ...measure].join('\n')] : []),
    [paint.bold('What to ask for in a shop'), linesOf(advice.shopping, options)].join('\n'),
    paint.dim(wrap(caution, '')),
  ];
  return `${parts.join('\n\n')}\n`;
}

/** The shopping specification alone, to print and take along. */
export function formatShopping(
  assessment: Assessment,
  shopping: readonly ShoppingLine[],
  options: AdviceOptions,
): string {
  const heading = plain(`What to ask for, for ${assessment.booth.name}`);
  return `${picocolors.createColors(options.colours).bold(heading)}\n\n${linesOf(shopping, options)}\n`;
}

function linesOf(shopping: readonly ShoppingLine[], { width }: AdviceOptions): string {
  const wrap = wrapper(width);
  if (shopping.length === 0) return wrap('Nothing: the file names no furniture.');
  return shopping.map(({ item, wants }) => wrap(`${item}: ${wants.join('; ')}`, '  ', '    ')).join('\n');
}

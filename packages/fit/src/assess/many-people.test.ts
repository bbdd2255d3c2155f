import { expect, it, vi } from 'vitest';
import type * as Making from '../bodies/people.js';
import { aBooth, aDesk, anOperator, aSeat, aStation, given } from '../testing/booths.js';
import { assess } from './assess.js';

const made = vi.hoisted(() => vi.fn());
vi.mock('../bodies/people.js', async (load) => {
  const making = await load<typeof Making>();
  return {
    ...making,
    peopleOf(...asked: Parameters<typeof making.peopleOf>) {
      made(...asked);
      return making.peopleOf(...asked);
    },
  };
});

// As many as the language lets work at one place; each is weighed against all others who sit there, time and again.
it('a hundred unlike people at one workstation are made once each', () => {
  const operators = Array.from({ length: 100 }, (_, n) => anOperator(`P${n}`, { stature: 1500 + 4 * n }));
  const names = operators.map(({ name }) => name);
  const station = aStation('Sound', 'Left', 'Tall', names, { postures: given(['sit', 'stand'] as const) });
  const booth = aBooth({
    operators,
    desks: [aDesk('Left', 950)],
    seats: [aSeat('Tall', 650)],
    workstations: [station],
  });
  const { findings } = assess(booth);
  expect(findings.filter(({ remedies }) => remedies.length > 0).length).toBeGreaterThan(100);
  expect(made).toHaveBeenCalledTimes(100);
}, 60_000);

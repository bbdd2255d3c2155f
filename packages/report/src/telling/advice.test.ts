import { expect, it } from 'vitest';
import { larkfieldAdvice } from '../testing/larkfield-advice.js';
import { larkfield } from '../testing/larkfield.js';
import { tellStations } from './advice.js';

it('tells of a crowd at each workstation where it is served unlike', () => {
  const [sound] = larkfieldAdvice.stations;
  const [plan] = sound!.plans;
  const at = (workstation: string, share: number) => ({ ...plan!.leftOut[0]!, workstation, share });
  const leftOutOf = (...leftOut: ReturnType<typeof at>[]) => {
    const advice = { ...larkfieldAdvice, stations: [{ ...sound!, plans: [{ ...plan!, leftOut }] }] };
    const { facts } = tellStations(advice, larkfield)[0]!.plans[0]!;
    return facts.filter(({ label }) => label === 'Leaves out').map(({ text }) => text.replace(/ \(.*/, ''));
  };
  expect(leftOutOf(at('Sound', 0.53), at('Words', 0.7))).toEqual([
    '47% of Volunteers, sitting, at Sound',
    '30% of Volunteers, sitting, at Words',
  ]);
  expect(leftOutOf(at('Sound', 0.53), at('Words', 0.53))).toEqual(['47% of Volunteers, sitting']);
});

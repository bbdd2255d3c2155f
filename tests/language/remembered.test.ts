import type * as everything from '@boothwright/fit';
import { type Booth, checks, type HeightPart } from '@boothwright/fit';
import { expect, test, vi } from 'vitest';
import { someBooths } from './booths.js';

type Fit = typeof everything;

/** The computation with nothing remembered. */
async function fresh(): Promise<Fit> {
  vi.resetModules();
  return import('@boothwright/fit');
}

const heights: readonly HeightPart[] = ['desk', 'seat', 'ring'];
const chosen = checks.flatMap(({ chooses = [] }) => chooses);

/** The sketch is made when it is first read: here it is. */
function whole({ assess }: Fit, booth: Booth) {
  const assessment = assess(booth);
  return { ...assessment, sketch: assessment.sketch };
}

test('what is remembered changes no answer: whatever was asked before, in whatever order', async () => {
  const booths = await someBooths(3, 20);
  expect(booths.length).toBeGreaterThan(70);
  const first = await fresh();
  const expected = booths.map(({ booth }) => whole(first, booth));

  const second = await fresh();
  for (const [index, { booth, text }] of [...booths.entries()].reverse()) {
    const advice = second.advise(booth);
    for (const property of [...heights, ...chosen]) second.remediesOf(booth, property);
    expect(whole(second, booth), text).toEqual(expected[index]);
    expect(first.advise(booth), text).toEqual(advice);
  }
}, 120_000);

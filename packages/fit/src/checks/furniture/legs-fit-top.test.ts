import { describe, expect, it } from 'vitest';
import type { Booth, Desk, Legs } from '../../booth.js';
import { aBooth, aDesk, byDefault, given, nowhere } from '../../testing/booths.js';
import { findingOf, findingsOf } from '../../testing/findings.js';

/** A top of 1500 × 700. */
function booth(width: number, depth: number, inset?: number, desk: Partial<Desk> = {}, parts: Partial<Booth> = {}) {
  const legs: Legs = {
    origin: nowhere,
    width: given(width),
    depth: given(depth),
    inset: inset === undefined ? byDefault(0) : given(inset),
  };
  return aBooth({ desks: [aDesk('Left', 740, { legs, ...desk })], ...parts });
}

const judge = (...args: Parameters<typeof booth>) => findingOf(booth(...args), 'legs-fit-top');

describe('legs-fit-top: inside the top, with an edge to screw into', () => {
  it.each<[string, number, number, number | undefined, string, number]>([
    ['50 all round', 1400, 600, undefined, 'pass', 50],
    ['25 at each end', 1450, 600, undefined, 'pass', 25],
    ['20 at each end', 1460, 600, undefined, 'marginal', 20],
    ['flush', 1500, 600, undefined, 'marginal', 0],
    ['20 beyond each end', 1540, 600, undefined, 'fail', -20],
    ['10 at the near and far edge', 1400, 680, undefined, 'marginal', 10],
    ['deeper than the top', 1400, 720, undefined, 'fail', -10],
    ['50 from the near edge, 50 from the far one', 1400, 600, 50, 'pass', 50],
    ['at the near edge', 1400, 600, 0, 'marginal', 0],
    ['120 from the near edge: 20 beyond the far one', 1400, 600, 120, 'fail', -20],
  ])('%s', (_, width, depth, inset, verdict, over) => {
    const finding = judge(width, depth, inset);
    expect(finding.verdict).toBe(verdict);
    expect(finding.measured).toBeCloseTo(over, 6);
  });

  it('says where it stands out, and what it took for granted', () => {
    expect(judge(1540, 600).message).toContain('stands out 20 mm beyond the top at each end');
    expect(judge(1400, 600, 120).message).toContain('at the far edge');
    expect(judge(1400, 600).assumptions).toEqual(['the leg frame stands in the middle of the top']);
    expect(judge(1400, 600, 50).assumptions).toEqual([]);
    expect(judge(1400, 600)).toMatchObject({ strength: 'common practice, no source' });
  });

  it('asks nothing of a desk without legs, and for sizes that are missing', () => {
    expect(findingsOf(booth(1400, 600, 50, { legs: undefined }), 'legs-fit-top')).toEqual([]);
    expect(judge(1400, 600, 50, { width: undefined })).toMatchObject({
      missing: { property: 'width', of: 'desk Left' },
    });
    const bare = { origin: nowhere, inset: byDefault(0) };
    expect(judge(1, 1, 1, { legs: bare })).toMatchObject({
      missing: { property: 'width', of: 'the legs of desk Left' },
    });
    expect(judge(1, 1, 1, { legs: { ...bare, width: given(1400) } })).toMatchObject({ missing: { property: 'depth' } });
  });

  it('the file may set the edge, with its reason', () => {
    const overrides = [{ check: 'legs-fit-top', value: 0, reason: 'the frame is bolted through', origin: nowhere }];
    expect(judge(1500, 600, undefined, {}, { overrides })).toMatchObject({
      verdict: 'pass',
      source: 'the file’s own limit: the frame is bolted through',
    });
  });
});

import { describe, expect, it } from 'vitest';
import type { Booth, Desk, Legs } from '../../booth.js';
import { aBooth, aDesk, byDefault, given, nowhere } from '../../testing/booths.js';
import { findingOf, findingsOf } from '../../testing/findings.js';
import { told } from '../../testing/told.js';

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

describe('legs-fit-top: what a reader is told', () => {
  const tell = (...args: Parameters<typeof booth>) => told(booth(...args), 'legs-fit-top');

  it('where the top stands out, little, or not', () => {
    expect(tell(1300, 600)).toMatchInlineSnapshot(`
      "pass, desk Left
      The top of Left stands out 50 mm over its legs at the near and far edge where it is least: an edge to screw into.
      = 100 mm at each end, 50 mm at the near and far edge
      : 50 against 25.4 mm, margin 24.6
      at desks.Left.legs, by common practice, no source
      granted the leg frame stands in the middle of the top
      default a top of 25 mm"
    `);
    expect(tell(1480, 600)).toMatchInlineSnapshot(`
      "marginal, desk Left
      The top of Left stands out 10 mm over its legs at each end: too little of an edge to screw into. 25 mm is usual.
      = 10 mm at each end, 50 mm at the near and far edge
      : 10 against 25.4 mm, margin -15.4
      at desks.Left.legs, by common practice, no source
      granted the leg frame stands in the middle of the top
      default a top of 25 mm"
    `);
    expect(tell(1300, 720)).toMatchInlineSnapshot(`
      "fail, desk Left
      The leg frame of Left stands out 10 mm beyond the top at the near and far edge. Take a smaller frame, or a larger top.
      = 100 mm at each end, −10 mm at the near and far edge
      : -10 against 0 mm, margin -10
      at desks.Left.legs, by common practice, no source
      granted the leg frame stands in the middle of the top
      default a top of 25 mm"
    `);
    expect(tell(1300, 600, 10)).toMatchInlineSnapshot(`
      "marginal, desk Left
      The top of Left stands out 10 mm over its legs at the near edge: too little of an edge to screw into. 25 mm is usual.
      = 100 mm at each end, 10 mm at the near edge, 90 mm at the far edge
      : 10 against 25.4 mm, margin -15.4
      at desks.Left.legs, by common practice, no source
      default a top of 25 mm"
    `);
  });

  it('where something is missing', () => {
    expect(tell(1300, 600, undefined, { width: undefined })).toMatchInlineSnapshot(`
      "unknown, desk Left
      Cannot say whether the legs of Left fit its top. Add \`width\` to desk Left, such as \`width 1520mm\`.
      at desks.Left.legs, by common practice, no source
      ask width of desk Left, as width 1520mm, at desks.Left"
    `);
    expect(tell(1300, 600, undefined, { depth: undefined })).toMatchInlineSnapshot(`
      "unknown, desk Left
      Cannot say whether the legs of Left fit its top. Add \`depth\` to desk Left, such as \`depth 690mm\`.
      at desks.Left.legs, by common practice, no source
      ask depth of desk Left, as depth 690mm, at desks.Left"
    `);
    expect(tell(1300, 600, undefined, { legs: { origin: nowhere, inset: byDefault(0) } })).toMatchInlineSnapshot(`
      "unknown, desk Left
      Cannot say whether the legs of Left fit its top. Add \`width\` to the legs of desk Left, such as \`width 1420mm\`.
      at desks.Left.legs, by common practice, no source
      ask width of the legs of desk Left, as width 1420mm, at desks.Left.legs"
    `);
    expect(tell(1300, 600, undefined, { legs: { origin: nowhere, inset: byDefault(0), width: given(1300) } }))
      .toMatchInlineSnapshot(`
        "unknown, desk Left
        Cannot say whether the legs of Left fit its top. Add \`depth\` to the legs of desk Left, such as \`depth 610mm\`.
        at desks.Left.legs, by common practice, no source
        ask depth of the legs of desk Left, as depth 610mm, at desks.Left.legs"
      `);
  });
});

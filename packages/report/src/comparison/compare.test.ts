import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withText } from '../testing/hostile.js';
import { finding, larkfield } from '../testing/larkfield.js';
import { compareLayouts } from './compare.js';
import { namedLayouts, renderComparison, unitsOf } from './index.js';

const skirt = (rest: Parameters<typeof finding>[2]) => finding('skirt-drop', { kind: 'skirt', name: 'Front' }, rest);
const of = (label: string, ...findings: ReturnType<typeof finding>[]) => ({
  label,
  assessment: { ...larkfield, findings, workstations: [], walkways: [] },
});

describe('a comparison', () => {
  it.each([
    ['fail', undefined, 'pass', undefined, 'gains'],
    ['fail', undefined, 'marginal', undefined, 'gains'],
    ['fail', undefined, 'fail', 'hemmed on site', 'gains'],
    ['pass', undefined, 'fail', 'hemmed on site', 'losses'],
    ['pass', undefined, 'unknown', undefined, 'losses'],
    ['marginal', undefined, 'fail', undefined, 'losses'],
  ] as const)('%s (%s), then %s (%s): %s', (verdict, accepted, other, otherAccepted, where) => {
    const first = of('A', skirt({ verdict, ...(accepted === undefined ? {} : { accepted }) }));
    const second = of('B', skirt({ verdict: other, ...(otherAccepted && { accepted: otherAccepted }) }));
    const [change] = compareLayouts([first, second]).changes;
    expect(change![where]).toHaveLength(1);
    expect(Object.values(change!).flat()).toHaveLength(2);
  });

  it('finds no difference between a layout and itself', () => {
    const { results, changes, served, walkways } = compareLayouts([
      { label: 'A', assessment: larkfield },
      { label: 'B', assessment: larkfield },
    ]);
    expect([results, changes]).toEqual([[], [{ layout: 1, gains: [], losses: [], dropped: [], added: [] }]]);
    for (const { outcomes } of served) expect(outcomes[0]).toEqual(outcomes[1]);
    for (const { clear } of walkways) expect(clear[0]).toBe(clear[1]);
    expect(served.length * walkways.length).toBeGreaterThan(0);
  });

  it('does not count what was given up as a gain', () => {
    const [change] = compareLayouts([of('A', skirt({ verdict: 'fail' })), of('B')]).changes;
    expect(change).toMatchObject({ gains: [], losses: [], added: [] });
    expect(change!.dropped).toHaveLength(1);
    expect(compareLayouts([of('B'), of('A', skirt({ verdict: 'fail' }))]).changes[0]!.added).toHaveLength(1);
  });

  it('matches the booth of one layout with that of another, whatever they are called', () => {
    const at = (name: string) => finding('accessible-station', { kind: 'booth', name }, { verdict: 'marginal' });
    expect(compareLayouts([of('A', at('First')), of('B', at('Second'))]).results).toEqual([]);
  });

  it('turns round with its layouts', () => {
    const [a, b] = [of('A', skirt({ verdict: 'fail' })), of('B', skirt({ verdict: 'pass' }))];
    expect(compareLayouts([a, b]).changes[0]!.gains).toHaveLength(1);
    expect(compareLayouts([b, a]).changes[0]!.losses).toHaveLength(1);
  });

  it('gives a person one letter in all layouts, whatever their order there', () => {
    const { booth } = larkfield;
    const turned = { ...larkfield, booth: { ...booth, operators: [...booth.operators].reverse() } };
    const given = [
      { label: 'A', assessment: larkfield },
      { label: 'Noor’s own', assessment: turned },
    ];
    const { layouts, said } = namedLayouts(given, 'letters');
    expect(JSON.stringify(compareLayouts(layouts))).not.toMatch(/Noor|Tobias|Priya/);
    expect(layouts[1]!.label).toBe('Person A’s own');
    const names = (layout: number) => layouts[layout]!.assessment.booth.operators.map(({ name }) => name);
    expect(names(1)).toEqual([...names(0)].reverse());
    expect(said).toContain('Names are left out');
    expect(namedLayouts(given, 'full').layouts).toBe(given);
    expect(namedLayouts(given, 'full').said).toContain('are named');
  });

  it('lets no text become markup', () => {
    const tags = (text: string) => {
      const comparison = compareLayouts([
        { label: text, assessment: withText(text) },
        { label: 'B', assessment: { ...withText(text), findings: [] } },
      ]);
      const html = renderComparison(comparison, {
        units: unitsOf('in'),
        names: undefined,
        generatedBy: 'Boothwright 0.1.0',
      });
      return html.match(/<[^>]*>/g)!.map((tag) => tag.split(/[\s>]/)[0]);
    };
    const expected = tags('plain');
    const nasty = fc.constantFrom(
      '<script>x</script>',
      '"><img onerror=x>',
      '</td><td>',
      '&lt;b&gt;',
      '<!--',
      "' onload='",
    );
    fc.assert(
      fc.property(nasty, (text) => {
        expect(tags(text)).toEqual(expected);
      }),
    );
  });
});

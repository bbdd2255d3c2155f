import { assess, pieceKey, pieceOfKey, type Assessment, type Booth } from '@boothwright/fit';
import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { said } from '../testing/given.js';
import { larkfieldBooth } from '../testing/larkfield-booth.js';
import { LiveDrawing, viewsOf, type View } from './index.js';

const drawn = assess(larkfieldBooth);

function allViews(assessment: Assessment, width = 760): readonly View[] {
  const { plans, stations } = viewsOf(assessment, width);
  return [...plans, ...stations.flatMap(({ views }) => views)];
}

function html(assessment: Assessment, view: View, lit: readonly string[] = [], zoom = 1): string {
  return render(
    <LiveDrawing
      assessment={assessment}
      drawing={view.draw()}
      id={view.id}
      side={view.side}
      lit={new Set(lit)}
      zoom={zoom}
    />,
  );
}

const attributes = (text: string, name: string) =>
  [...text.matchAll(new RegExp(`${name}="([^"]*)"`, 'g'))].map(([, it]) => it!);
const unescaped = (text: string) => text.replaceAll('&quot;', '"').replaceAll('&amp;', '&').replaceAll('&lt;', '<');

describe.each(allViews(drawn).map((view) => [view.caption, view] as const))('%s', (_, view) => {
  it('has one button for each thing, and one of them is reached by the tab key', () => {
    const text = html(drawn, view);
    const buttons = [...text.matchAll(/<g [^>]*role="button"[^>]*>/g)].map(([tag]) => tag);
    const keys = buttons.map((tag) => attributes(tag, 'data-piece')[0]!);
    expect(keys.length).toBeGreaterThan(2);
    expect(new Set(keys).size).toBe(keys.length);
    expect(new Set(attributes(text, 'data-piece'))).toEqual(new Set(keys));
    expect(buttons.filter((tag) => tag.includes('tabindex="0"'))).toHaveLength(1);
    for (const tag of buttons) expect(attributes(tag, 'aria-label')[0]).toMatch(/\S/);
  });

  it('lights all that is drawn of a thing, and nothing else', () => {
    const text = html(drawn, view);
    for (const key of new Set(attributes(text, 'data-piece').map(unescaped))) {
      const lit = [...html(drawn, view, [key]).matchAll(/<g [^>]*class="target lit"[^>]*>/g)].map(([tag]) => tag);
      expect(lit.length).toBe(attributes(text, 'data-piece').filter((each) => unescaped(each) === key).length);
      for (const tag of lit) expect(unescaped(attributes(tag, 'data-piece')[0]!)).toBe(key);
    }
  });
});

it('names every thing of the booth that has a place', () => {
  const labels = allViews(drawn).flatMap((view) => attributes(html(drawn, view), 'aria-label'));
  const { desks, workstations } = drawn.booth;
  for (const { name } of [...desks, ...workstations])
    expect(
      labels.some((label) => label.includes(name)),
      name,
    ).toBe(true);
});

it('keeps the ids of drawings and things when a value of the booth changes', () => {
  const ids = (assessment: Assessment) => allViews(assessment).map(({ id }) => id);
  const taller: Booth = {
    ...larkfieldBooth,
    desks: larkfieldBooth.desks.map((desk) => ({ ...desk, height: said({ min: 900, max: 900 }) })),
  };
  expect(ids(assess(taller))).toEqual(ids(drawn));
});

it('makes a key for any reference, and the reference from its key', () => {
  const text = fc.oneof(fc.string(), fc.string({ unit: 'grapheme' }));
  fc.assert(
    fc.property(text, fc.option(text, { nil: undefined }), (name, workstation) => {
      const piece = { kind: 'screen', name, ...(workstation !== undefined && { workstation }) } as const;
      expect(pieceOfKey(pieceKey(piece))).toEqual(piece);
    }),
  );
});

/** Names that would be markup if they were not text. */
const hostile = [
  '<img src=x onerror=alert(1)>',
  '"><script>alert(1)</script>',
  "' onfocus='alert(1)",
  '</svg><b>',
  '&lt;b&gt;',
];

function renamed(name: string): Booth {
  const [station] = larkfieldBooth.workstations;
  const [desk] = larkfieldBooth.desks;
  return {
    ...larkfieldBooth,
    name,
    desks: [{ ...desk!, name }],
    workstations: [{ ...station!, name, desk: { ...station!.desk!, name } }],
    placements: [{ ...larkfieldBooth.placements[0]!, pieces: [{ ...larkfieldBooth.placements[0]!.pieces[0]!, name }] }],
    walkways: larkfieldBooth.walkways.map((walkway) => ({ ...walkway, name })),
  };
}

it('keeps the text of a file from becoming markup', () => {
  const plain = assess(renamed('Plain'));
  const known = new Set(allViews(plain).flatMap((view) => tagsIn(html(plain, view))));
  const any = fc.string({ minLength: 1, unit: 'binary' });
  fc.assert(
    fc.property(any, (name) => {
      const assessment = assess(renamed(name));
      for (const view of allViews(assessment))
        for (const tag of tagsIn(html(assessment, view))) expect(known).toContain(tag);
    }),
    { numRuns: 15, examples: hostile.map((text) => [text] as [string]) },
  );
}, 60_000);

/** Each tag with the names of its attributes. */
function tagsIn(text: string): string[] {
  return [...text.matchAll(/<([a-zA-Z]+)((?:\s+[^\s=>"]+(?:="[^"]*")?)*)\s*\/?>/g)].map(
    ([, tag, given]) =>
      `${tag} ${[...given!.matchAll(/([^\s=]+)="[^"]*"/g)]
        .map(([, name]) => name)
        .sort()
        .join(' ')}`,
  );
}

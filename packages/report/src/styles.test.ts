import { describe, expect, it } from 'vitest';
import { styles } from './styles.js';

/** The colours of each scheme as the style sheet defines them, by name. */
const [light, dark] = [...styles.matchAll(/:root \{([^}]*--paper[^}]*)\}/g)].map(([, block]) =>
  Object.fromEntries(
    [...block!.matchAll(/--([a-z-]+\d?):\s*(#[0-9a-f]{3,6})/g)].map(([, name, colour]) => [name!, colour!]),
  ),
);

/** Relative luminance after WCAG 2.2. */
function luminance(colour: string): number {
  const digits =
    colour.length === 4 ? [...colour.slice(1)].map((digit) => digit + digit) : colour.slice(1).match(/../g)!;
  const [red, green, blue] = digits.map((pair) => {
    const value = parseInt(pair, 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}

function contrast(a: string, b: string): number {
  const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (high! + 0.05) / (low! + 0.05);
}

describe('the contrast formula', () => {
  // WCAG 2.2: 21 for black on white; #777 on white is the well-known 4.48 that just misses.
  it.each([
    ['#000', '#fff', 21],
    ['#777', '#fff', 4.48],
    ['#767676', '#fff', 4.54],
    ['#fff', '#fff', 1],
  ])('%s on %s is %d', (a, b, expected) => {
    expect(contrast(a, b)).toBeCloseTo(expected, 2);
  });
});

describe.each([
  ['light', light!],
  ['dark', dark!],
])('%s colours', (_, colours) => {
  it.each(['ink', 'soft', 'pass', 'marginal', 'fail', 'unknown'])(
    '%s can be read on paper (WCAG 2.2, 1.4.3)',
    (name) => {
      expect(contrast(colours[name]!, colours.paper!)).toBeGreaterThanOrEqual(4.5);
    },
  );

  it.each(['ink', 'soft'])('%s can be read on the ground of code', (name) => {
    expect(contrast(colours[name]!, colours.wash!)).toBeGreaterThanOrEqual(4.5);
  });

  it.each(['line-1', 'line-2', 'line-3', 'line-4'])('%s can be seen on paper (WCAG 2.2, 1.4.11)', (name) => {
    expect(contrast(colours[name]!, colours.paper!)).toBeGreaterThanOrEqual(3);
  });
});

describe('the style sheet', () => {
  it('names every colour that it uses, in both schemes', () => {
    const used = new Set([...styles.matchAll(/var\(--([a-z-]+\d?)\)/g)].map(([, name]) => name!));
    expect(used.size).toBeGreaterThan(10);
    for (const name of used) expect([light![name], dark![name]].every(Boolean), name).toBe(true);
  });
});

/** The colours of paper and of the light scheme, by name; contrast is held by `styles.test.ts`. */
export const light = {
  paper: '#ffffff',
  ink: '#1f2428',
  soft: '#58626b',
  line: '#d5dade',
  wash: '#f5f6f7',
  pass: '#19693c',
  marginal: '#875800',
  fail: '#a62a2c',
  unknown: '#4a5b78',
  'line-1': '#24588f',
  'line-2': '#9a4d00',
  'line-3': '#0a6a6a',
  'line-4': '#6d3b97',
} as const;

export type ColourName = keyof typeof light;

/** As custom properties of a style sheet. */
export function properties(colours: Readonly<Record<string, string>>): string {
  return Object.entries(colours)
    .map(([name, colour]) => `--${name}: ${colour};`)
    .join(' ');
}

/** So much of the ink on the paper. */
export function tint(share: number): string {
  const [ink, paper] = [light.ink, light.paper].map((colour) =>
    colour
      .slice(1)
      .match(/../g)!
      .map((pair) => parseInt(pair, 16)),
  );
  const mixed = ink!.map((value, index) => Math.round(share * value + (1 - share) * paper![index]!));
  return `#${mixed.map((value) => value.toString(16).padStart(2, '0')).join('')}`;
}

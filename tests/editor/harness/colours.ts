import type { Page } from 'playwright-core';

/** Red, green and blue, from 0 to 255. */
export type Colour = readonly [number, number, number];

/** A colour as a style sheet says it: `rgb(…)`, or `#rrggbb` as in an address. */
export function parseColour(text: string): Colour {
  const rgb = /rgba?\((\d+), (\d+), (\d+)/.exec(text);
  if (rgb) return [Number(rgb[1]), Number(rgb[2]), Number(rgb[3])];
  const hex = /(?:#|%23)([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})/i.exec(text);
  if (hex) return [1, 2, 3].map((at) => parseInt(hex[at]!, 16)) as unknown as Colour;
  throw new Error(`No colour in '${text}'.`);
}

/** How far two colours stand apart, from 1 to 21 (WCAG 2.2, contrast ratio). */
export function contrast(one: Colour, other: Colour): number {
  const [dark, light] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light! + 0.05) / (dark! + 0.05);
}

function luminance(colour: Colour): number {
  const [red, green, blue] = colour.map((part) => {
    const share = part / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}

/** The colours in which the active editor draws the squiggles of each severity: of the wave, and in high contrast of a line too. */
export async function squiggleColours(page: Page): Promise<Record<string, Colour[]>> {
  const styles = await page.evaluate(() => {
    const editor = document.querySelector('.editor-group-container.active .editor-instance .monaco-editor')!;
    const found: Record<string, string[]> = {};
    for (const mark of editor.querySelectorAll('.view-overlays [class*="squiggly-"]')) {
      const severity = /squiggly-(error|warning|info)/.exec(mark.className)?.[1];
      if (!severity) continue;
      const [own, before] = [getComputedStyle(mark), getComputedStyle(mark, '::before')];
      const waves = [own.backgroundImage, before.backgroundImage].filter((image) => image !== 'none');
      found[severity] = [...waves, ...(own.borderBottomStyle === 'none' ? [] : [own.borderBottomColor])];
    }
    return found;
  });
  return Object.fromEntries(Object.entries(styles).map(([severity, each]) => [severity, each.map(parseColour)]));
}

/** What stands behind the text of the active editor. */
export async function background(page: Page): Promise<Colour> {
  const editor = page.locator('.editor-group-container.active .editor-instance .monaco-editor-background').first();
  return parseColour(await editor.evaluate((element) => getComputedStyle(element).backgroundColor));
}

import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { createAnalyser } from '@boothwright/language';
import { nodeFileSystem } from '@boothwright/language/node';
import { renderReport } from '@boothwright/report';
import { URI } from 'langium';
import { chromium, type Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { findChromium } from '../editor/harness/chromium.js';

const booths = ['../../examples/', '../fixtures/drawings/'].flatMap((folder) => {
  const url = new URL(folder, import.meta.url);
  return readdirSync(fileURLToPath(url))
    .filter((name) => name.endsWith('.booth') && name !== 'furniture.booth')
    .map((name) => [name, new URL(name, url).href] as const);
});

/** Sheet widths in CSS pixels: a desktop, a narrow window, a phone. */
const widths = [1100, 700, 375];
/** Smaller than this nobody reads on a phone, CSS pixels. */
const SMALLEST_TEXT = 9;

let browser: Browser;
beforeAll(async () => {
  browser = await chromium.launch({ executablePath: findChromium(), args: ['--no-sandbox'] });
}, 180_000);
afterAll(() => browser?.close());

describe.each(booths)('the drawings of %s', (_, uri) => {
  const report = pageOf(uri);

  test.each(widths)('have no text on another, or off the paper, %i wide', async (width) => {
    const page = await browser.newPage({ viewport: { width, height: 900 } });
    await page.setContent(await report);
    const { drawings, faults, smallest } = await page.evaluate<Measured>(MEASURE);
    await page.close();
    expect(drawings).toBeGreaterThan(2);
    expect(faults).toEqual([]);
    expect(smallest).toBeGreaterThanOrEqual(SMALLEST_TEXT);
  });
});

async function pageOf(uri: string): Promise<string> {
  const { assessment } = await createAnalyser({ fileSystem: nodeFileSystem() })(URI.parse(uri));
  return renderReport(assessment!, { generatedBy: 'Boothwright 0.1.0', names: 'full' });
}

interface Measured {
  readonly drawings: number;
  readonly faults: readonly string[];
  readonly smallest: number;
}

/** Runs in the page: boxes of all texts of each drawing that is shown, against one another and the drawing's own box. */
const MEASURE = `(() => {
  const shown = [...document.querySelectorAll('svg.drawing')].filter((svg) => svg.getBoundingClientRect().width > 0);
  const faults = [];
  let smallest = Infinity;
  for (const svg of shown) {
    const paper = svg.getBoundingClientRect();
    const scale = paper.width / svg.viewBox.baseVal.width;
    const texts = [...svg.querySelectorAll('text')].map((text) => ({ says: text.textContent, box: text.getBoundingClientRect() }));
    for (const text of svg.querySelectorAll('text')) smallest = Math.min(smallest, parseFloat(getComputedStyle(text).fontSize) * scale);
    texts.forEach(({ says, box }, index) => {
      if (box.left < paper.left - 1 || box.right > paper.right + 1 || box.top < paper.top - 1 || box.bottom > paper.bottom + 1)
        faults.push('off the paper: ' + says);
      for (const other of texts.slice(index + 1)) {
        const across = Math.min(box.right, other.box.right) - Math.max(box.left, other.box.left);
        const down = Math.min(box.bottom, other.box.bottom) - Math.max(box.top, other.box.top);
        if (across > 1 && down > 1) faults.push(says + ' lies on ' + other.says);
      }
    });
  }
  return { drawings: shown.length, faults, smallest };
})()`;

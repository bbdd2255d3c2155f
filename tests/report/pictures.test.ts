import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { advise } from '@boothwright/fit';
import { renderReport } from '@boothwright/report';
import { unzlibSync } from 'fflate';
import pixelmatch from 'pixelmatch';
import { PNG } from 'pngjs';
import { chromium, type Browser, type Locator, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import regular from '../../packages/report/src/generated/noto-sans-regular.js';
import semibold from '../../packages/report/src/generated/noto-sans-semibold.js';
import { findChromium } from '../editor/harness/chromium.js';
import { assessExample } from './booths.js';

/**
 * How reports look, held against pictures that a person has looked at. `PICTURES=renew` takes them anew. The font is the PDF's,
 * unhinted, so that machines differ as little as they can.
 */
const kept = path.join(import.meta.dirname, 'pictures');
const output = path.join(import.meta.dirname, 'output');
const renews = process.env['PICTURES'] === 'renew';
/** So many pixels may differ in a picture: less than the shortest dimension line has. */
const TOLERATED_PIXELS = 60;
const LETTER_WIDTH = 816;

let browser: Browser;
let report: string;
beforeAll(async () => {
  browser = await chromium.launch({
    executablePath: findChromium(),
    args: ['--no-sandbox', '--font-render-hinting=none', '--disable-lcd-text'],
  });
  const assessment = await assessExample('larkfield-hall-first-plan.booth');
  const advice = advise(assessment.booth);
  report = renderReport(assessment, {
    generatedBy: 'Boothwright 0.1.0',
    date: '4 May 2026',
    names: 'full',
    advice,
  });
}, 120_000);
afterAll(() => browser?.close());

const drawings = [
  'The room from above',
  'The booth from above',
  'From the booth to the stage',
  'Noor, sitting at Sound',
];

describe.each(['light', 'dark'] as const)('the report on a %s screen', (colorScheme) => {
  test('begins as its picture does', async () => {
    const page = await open({ viewport: { width: 1000, height: 1100 }, colorScheme });
    compare(`first-page-${colorScheme}`, await page.screenshot());
    await page.close();
  });

  test.each(drawings)('draws ‘%s’ as its picture does', async (caption) => {
    const page = await open({ viewport: { width: 1000, height: 1100 }, colorScheme });
    compare(`${fileName(caption)}-${colorScheme}`, await drawingOf(page, caption).screenshot());
    await page.close();
  });
});

test('the report begins on paper as its picture does', async () => {
  const page = await open({ viewport: { width: LETTER_WIDTH, height: 1056 } });
  await page.emulateMedia({ media: 'print' });
  compare('first-page-print', await page.screenshot());
  await page.close();
});

test('a drawing that lacks any one of its dimension lines does not pass', async () => {
  const page = await open({ viewport: { width: 1000, height: 1100 } });
  const drawing = drawingOf(page, 'The booth from above');
  const whole = await drawing.screenshot();
  const lines = drawing.locator(
    '[data-kind$=-width] path.thin, [data-kind$=-depth] path.thin, [data-kind=walkway] path.thin',
  );
  const count = await lines.count();
  expect(count).toBeGreaterThan(6);
  for (let index = 0; index < count; index++) {
    const line = lines.nth(index);
    await line.evaluate((path) => path.setAttribute('display', 'none'));
    expect(differing(whole, await drawing.screenshot()).pixels).toBeGreaterThan(TOLERATED_PIXELS);
    await line.evaluate((path) => path.removeAttribute('display'));
  }
  await page.close();
});

async function open(options: Parameters<Browser['newPage']>[0]): Promise<Page> {
  const page = await browser.newPage(options);
  await page.setContent(report);
  await page.addStyleTag({
    content: `${face(regular, 400)}${face(semibold, 600)} * { font-family: Pictures !important; }`,
  });
  await page.evaluate('document.fonts.ready');
  return page;
}

function drawingOf(page: Page, caption: string): Locator {
  const figure = page.locator('figure').filter({ has: page.getByText(caption, { exact: true }) });
  return figure.locator('svg.drawing:visible').first();
}

function face(packed: string, weight: number): string {
  const bytes = Buffer.from(unzlibSync(Buffer.from(packed, 'base64')));
  return `@font-face { font-family: Pictures; font-weight: ${weight}; src: url(data:font/ttf;base64,${bytes.toString('base64')}); }`;
}

function fileName(caption: string): string {
  return caption.toLowerCase().replace(/[^a-z]+/g, '-');
}

/** Holds a picture against the one that is kept; leaves what differs in `output`. */
function compare(name: string, picture: Buffer): void {
  const file = path.join(kept, `${name}.png`);
  if (renews) {
    mkdirSync(kept, { recursive: true });
    writeFileSync(file, picture);
    return;
  }
  expect(existsSync(file), `${file} is not there: take it with PICTURES=renew, and look at it`).toBe(true);
  const { pixels, drawn } = differing(readFileSync(file), picture);
  if (pixels > TOLERATED_PIXELS) {
    mkdirSync(output, { recursive: true });
    writeFileSync(path.join(output, `${name}.png`), picture);
    writeFileSync(path.join(output, `${name}-differs.png`), drawn);
  }
  expect(pixels, `${name} looks otherwise: see ${output}`).toBeLessThanOrEqual(TOLERATED_PIXELS);
}

function differing(one: Buffer, other: Buffer): { readonly pixels: number; readonly drawn: Buffer } {
  const [before, after] = [PNG.sync.read(one), PNG.sync.read(other)];
  const { width, height } = before;
  expect({ width: after.width, height: after.height }).toEqual({ width, height });
  const drawn = new PNG({ width, height });
  const pixels = pixelmatch(before.data, after.data, drawn.data, width, height, { threshold: 0.1, includeAA: true });
  return { pixels, drawn: PNG.sync.write(drawn) };
}

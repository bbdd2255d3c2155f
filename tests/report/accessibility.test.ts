import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { advise } from '@boothwright/fit';
import { analyse } from '@boothwright/language';
import { renderReport } from '@boothwright/report';
import type { AxeResults, RunOptions } from 'axe-core';
import { URI } from 'langium';
import { NodeFileSystem } from 'langium/node';
import { chromium, type Browser, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findChromium } from '../editor/harness/chromium.js';

const examples = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../../examples');
const standards = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

let browser: Browser;
let axe: string;

beforeAll(async () => {
  axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
  browser = await chromium.launch({ executablePath: findChromium(), args: ['--no-sandbox'] });
}, 120_000);
afterAll(() => browser?.close());

/** The report of an example, as `boothwright report` writes it. */
async function reportOf(example: string): Promise<string> {
  const uri = URI.file(path.join(examples, example));
  const { assessment } = await analyse(uri, { fileSystem: NodeFileSystem.fileSystemProvider() });
  return renderReport(assessment!, {
    generatedBy: 'Boothwright 0.1.0',
    date: '4 May 2026',
    names: 'full',
    advice: advise(assessment!.booth),
  });
}

/** What axe objects to, with the places. */
async function objections(page: Page): Promise<string[]> {
  await page.evaluate(axe);
  const options: RunOptions = { runOnly: { type: 'tag', values: standards }, resultTypes: ['violations'] };
  const { violations, passes } = await page.evaluate(
    (given) => (globalThis as unknown as { axe: { run(options: unknown): Promise<AxeResults> } }).axe.run(given),
    options,
  );
  expect(passes.length).toBeGreaterThan(15);
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' · ')}`);
}

/** Shows what the page folds away. */
function unfold(page: Page): Promise<unknown> {
  return page.evaluate("for (const details of document.querySelectorAll('details')) details.open = true");
}

async function open(html: string, options: Parameters<Browser['newPage']>[0]): Promise<Page> {
  const page = await browser.newPage(options);
  await page.setContent(html);
  return page;
}

describe.each(['larkfield-hall.booth', 'larkfield-hall-first-plan.booth', 'millbrook-room-sit-desk.booth'])(
  'the report of %s in a browser',
  (example) => {
    let html: string;
    beforeAll(async () => {
      html = await reportOf(example);
    }, 60_000);

    it.each([
      ['light', { colorScheme: 'light', viewport: { width: 1000, height: 900 } }],
      ['dark', { colorScheme: 'dark', viewport: { width: 1000, height: 900 } }],
      ['in forced colours', { forcedColors: 'active', viewport: { width: 1000, height: 900 } }],
      [
        'in forced colours, dark',
        { forcedColors: 'active', colorScheme: 'dark', viewport: { width: 1000, height: 900 } },
      ],
      ['on a telephone', { colorScheme: 'light', viewport: { width: 360, height: 740 } }],
    ] as const)(
      'is accessible, %s',
      async (_, options) => {
        const page = await open(html, options);
        expect(await objections(page)).toEqual([]);
        await unfold(page);
        expect(await objections(page)).toEqual([]);
        await page.close();
      },
      60_000,
    );

    it('is accessible on paper, and light there whatever the screen', async () => {
      const page = await open(html, { colorScheme: 'dark', viewport: { width: 720, height: 900 } });
      await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
      expect(await page.evaluate(() => getComputedStyle(document.body).backgroundColor)).toBe('rgb(255, 255, 255)');
      expect(await objections(page)).toEqual([]);
      await page.close();
    }, 60_000);

    it('needs no sideways scrolling on a telephone', async () => {
      const page = await open(html, { viewport: { width: 360, height: 740 } });
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
      await page.close();
    }, 60_000);

    it('fetches nothing', async () => {
      const page = await browser.newPage();
      const asked: string[] = [];
      page.on('request', (request) => asked.push(request.url()));
      await page.setContent(html, { waitUntil: 'load' });
      expect(asked).toEqual([]);
      await page.close();
    }, 60_000);
  },
);

describe('the test itself', () => {
  it('objects to a page that is not accessible', async () => {
    const page = await open(
      '<html><body><img src="data:,"><p style="color:#999;background:#fff">pale</p></body></html>',
      {},
    );
    await page.evaluate(axe);
    const found = await page.evaluate(async () => {
      const { violations } = await (globalThis as unknown as { axe: { run(): Promise<AxeResults> } }).axe.run();
      return violations.map(({ id }) => id);
    });
    expect(found).toEqual(expect.arrayContaining(['image-alt', 'color-contrast', 'html-has-lang']));
    await page.close();
  }, 60_000);
});

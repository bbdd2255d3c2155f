import { createAnalyser } from '@boothwright/language';
import { nodeFileSystem } from '@boothwright/language/node';
import { build } from 'esbuild';
import { URI } from 'langium';
import { chromium, type Browser, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { bundles, toOptions } from '../../.config/bundles.mjs';
import { examine } from '../editor/harness/axe.js';
import { findChromium } from '../editor/harness/chromium.js';

const uri = new URL('../../examples/larkfield-hall-first-plan.booth', import.meta.url).href;
/** A page's width beside a text: a phone or a narrow panel, a usual one, a window of its own. CSS pixels. */
const widths = [320, 600, 1200];

let browser: Browser;
let script: string;
let result: unknown;
beforeAll(async () => {
  browser = await chromium.launch({ executablePath: findChromium(), args: ['--no-sandbox'] });
  const page = bundles.find(({ entry }) => entry.includes('/webview/'))!;
  const { outputFiles } = await build({ ...toOptions(page), write: false, logLevel: 'error' });
  script = outputFiles[0]!.text;
  const { assessment } = await createAnalyser({ fileSystem: nodeFileSystem() })(URI.parse(uri));
  result = { is: 'booth', stale: false, handles: [], assessment: { ...assessment, sketch: assessment!.sketch } };
}, 180_000);
afterAll(() => browser?.close());

describe.each(widths)('the preview’s page, %i wide', (width) => {
  test('has nothing beside the window, and its figures lie beside the piece that they tell of', async () => {
    const page = await shown(width);
    const beside = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(beside).toBe(0);
    for (const name of [/^walkway/, /^desk Left/, /^workstation Sound/]) {
      const piece = page.locator('[data-sheet=booth]').getByRole('button', { name }).first();
      await piece.focus();
      const ref = JSON.parse((await piece.getAttribute('data-piece'))!) as [string, string];
      await tell(page, { kind: ref[0], name: ref[1] });
      const [tip, told] = [(await page.locator('.tip').boundingBox())!, (await piece.boundingBox())!];
      const over = Math.min(tip.y + tip.height, told.y + told.height) - Math.max(tip.y, told.y);
      expect(over, String(name)).toBeLessThanOrEqual(0);
      expect(tip.x).toBeGreaterThanOrEqual(0);
      expect(tip.x + tip.width).toBeLessThanOrEqual(width);
    }
    await page.close();
  });

  test('is accessible with all its lists open', async () => {
    const page = await shown(width);
    await page.evaluate(() => document.querySelectorAll('details').forEach((details) => (details.open = true)));
    const { passes, objections } = await examine(page.mainFrame());
    expect(passes).toBeGreaterThan(15);
    expect(objections).toEqual([]);
    await page.close();
  });
});

/** The page as an editor shows it, of an example. */
async function shown(width: number): Promise<Page> {
  const page = await browser.newPage({ viewport: { width, height: 800 }, reducedMotion: 'reduce' });
  const html = '<!doctype html><html lang="en"><title>Preview</title><body class="vscode-light"><div id="page"></div>';
  await page.setContent(html);
  await page.addStyleTag({ content: ':root { --vscode-editor-background: #fff; --vscode-editor-foreground: #222; }' });
  await page.evaluate(() => {
    const api = { postMessage: () => undefined, getState: () => undefined, setState: () => undefined };
    Object.assign(globalThis, { acquireVsCodeApi: () => api });
  });
  await page.addScriptTag({ content: script });
  await page.evaluate((message) => window.postMessage(message), { type: 'show', uri, result });
  await page.locator('svg.live').first().waitFor();
  return page;
}

/** Many lines, so that room for them is scarce. */
async function tell(page: Page, piece: { kind: string; name: string }): Promise<void> {
  const markdown = `told of ${piece.kind}\n\n${'A line of what is known of it.\n\n'.repeat(15)}`;
  await page.keyboard.press('Shift');
  await page.evaluate((message) => window.postMessage(message), { type: 'figures', piece, markdown });
  await page.locator('.tip', { hasText: `told of ${piece.kind}` }).waitFor();
}

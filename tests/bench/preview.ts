import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { type CDPSession, chromium, type Page } from 'playwright-core';
import { previewRequest, type PreviewResult } from '@boothwright/language/protocol';
import { findChromium } from '../editor/harness/chromium.js';
import { median, timeOf } from './numbers.js';
import { type Kind, Server } from './server.js';

/** One example: milliseconds after the findings of a changed number, kilobytes sent to the page. */
export interface PreviewRow {
  readonly file: string;
  /** The first drawing, from the question to the page laid out. */
  readonly first: number;
  /** From the question to the answer. */
  readonly answer: number;
  /** The page's script, with styles and layout. */
  readonly page: number;
  readonly whole: number;
  /** On a processor, the server and the page together. */
  readonly cpu: number;
  readonly size: number;
}

const EDITS = 40;
const WARM_UP = 10;

/**
 * The preview's page in a real browser, as a person sees it who types another height of a desk: what comes between the findings and the
 * drawing, but for the editor's own way from the extension to the page. Nothing where there is no browser.
 */
export async function measurePreview(kind: Kind, folder: string, script: string): Promise<PreviewRow[]> {
  const browser = await chromium.launch({ executablePath: findChromium(), args: ['--no-sandbox'] });
  try {
    const rows: PreviewRow[] = [];
    for (const file of readdirSync(folder).filter((name) => name.endsWith('.booth'))) {
      const text = readFileSync(path.join(folder, file), 'utf8');
      if (!/^workstation /m.test(text)) continue;
      const page = await browser.newPage({ viewport: { width: 800, height: 900 } });
      await page.setContent('<!doctype html><body><div id="page"></div>');
      await page.evaluate(() => {
        const api = { postMessage: () => undefined, getState: () => undefined, setState: () => undefined };
        Object.assign(globalThis, { acquireVsCodeApi: () => api });
      });
      await page.addScriptTag({ path: script });
      rows.push({ file, ...(await measureOne(kind, pathToFileURL(path.join(folder, file)).href, text, page)) });
      await page.close();
    }
    return rows;
  } finally {
    await browser.close();
  }
}

async function measureOne(kind: Kind, uri: string, text: string, page: Page): Promise<Omit<PreviewRow, 'file'>> {
  const { line, character } = digitOf(text);
  const server = await Server.start(kind, uri);
  await server.open(text);
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  const first = await drawn(server, uri, page, session);
  const times: Drawn[] = [];
  for (let n = 0; n < WARM_UP + EDITS; n++) {
    await server.edit(line, character, String((n * 7) % 10), 1);
    const each = await drawn(server, uri, page, session);
    if (n >= WARM_UP) times.push(each);
  }
  await server.stop();
  const of = (part: (each: Drawn) => number) => median(times.map(part));
  return {
    first: first.answer + first.page,
    answer: of(({ answer }) => answer),
    page: of((each) => each.page),
    whole: of((each) => each.answer + each.page),
    cpu: of(({ cpu }) => cpu),
    size: of(({ size }) => size),
  };
}

interface Drawn {
  readonly answer: number;
  readonly page: number;
  readonly cpu: number;
  readonly size: number;
}

/** Asks for the drawing and has the page show it. */
async function drawn(server: Server, uri: string, page: Page, session: CDPSession): Promise<Drawn> {
  const began = server.cpu();
  let result: PreviewResult | undefined;
  const answer = await timeOf(async () => {
    result = await server.ask<PreviewResult>(previewRequest, { uri });
  });
  const ofServer = server.cpu() - began;
  const message = JSON.stringify({ type: 'show', uri, result });
  const before = await threadTime(session);
  const spent = await page.evaluate((text) => {
    const start = performance.now();
    window.dispatchEvent(new MessageEvent('message', { data: JSON.parse(text) as unknown }));
    document.body.getBoundingClientRect();
    return performance.now() - start;
  }, message);
  const ofPage = (await threadTime(session)) - before;
  const count = await page.locator('svg.live').count();
  if (count === 0) throw new Error(`Nothing is drawn of ${uri}.`);
  return { answer, page: spent, cpu: ofServer + ofPage, size: message.length / 1000 };
}

/** What the page has used of a processor, milliseconds. */
async function threadTime(session: CDPSession): Promise<number> {
  const { metrics } = await session.send('Performance.getMetrics');
  return 1000 * metrics.find(({ name }) => name === 'TaskDuration')!.value;
}

/** The last digit of the first height of a desk. */
function digitOf(text: string): { line: number; character: number } {
  const lines = text.split('\n');
  const from = lines.findIndex((line) => line.startsWith('desk '));
  const line = lines.findIndex((each, index) => index >= from && /height \d+/.test(each));
  const { index, 0: found } = /height \d+/.exec(lines[line]!)!;
  return { line, character: index + found.length - 1 };
}

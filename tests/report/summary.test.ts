import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { advise, type Assessment } from '@boothwright/fit';
import { renderReport, type Paper } from '@boothwright/report';
import { renderPdf } from '@boothwright/report/pdf';
import { chromium, type Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findChromium } from '../editor/harness/chromium.js';
import { assessExample, assessText, examples } from './booths.js';
import { findPoppler, infoOf, textOf } from './poppler.js';

const options = { generatedBy: 'Boothwright 0.1.0', date: '4 May 2026', names: 'full' } as const;
const papers = ['letter', 'a4'] as const satisfies readonly Paper[];
/** Of the first plan of Larkfield Hall, with every result, drawing and source. */
const MOST_PAGES = 10;

let browser: Browser;
let folder: string;
beforeAll(async () => {
  findPoppler();
  folder = mkdtempSync(path.join(tmpdir(), 'boothwright-summary-'));
  browser = await chromium.launch({ executablePath: findChromium(), args: ['--no-sandbox'] });
}, 300_000);
afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true });
});

/** A booth that has more people, walkways and missing figures than a page holds, all with long names. */
const full = () => {
  const long = (name: string) => `${name}_whose_name_is_as_long_as_a_name_may_well_be`;
  const numbers = Array.from({ length: 12 }, (_, n) => n);
  return assessText(`booth "${'A hall with a very long name '.repeat(3)}" { show mm }
${numbers.map((n) => `operator ${long(`P${n}`)} { stature ${150 + 3 * n}cm }`).join('\n')}
${numbers.map((n) => `desk ${long(`Desk${n}`)} { width 80cm }\nwalkway ${long(`Way${n}`)} { between ${long(`Desk${n}`)} and back-wall }`).join('\n')}
desk High { height 110cm }
stool Tall { seat 50cm..60cm }
workstation Sound { desk High  stool Tall  operators ${numbers.map((n) => long(`P${n}`)).join(', ')}  posture sit, stand }
`);
};

/** Advice for so many takes minutes: it is told without. */
const FULL = 'a booth that is full';

const booths: readonly (readonly [string, () => Promise<Assessment>])[] = [
  ...examples.map((name) => [name, () => assessExample(name)] as const),
  [FULL, full],
];

describe.each(booths)('the summary of %s', (name, given) => {
  let assessment: Assessment;
  let all: Parameters<typeof renderReport>[1];
  beforeAll(async () => {
    assessment = await given();
    all = name === FULL ? options : { ...options, advice: advise(assessment.booth) };
  }, 120_000);

  /** What page 1 holds, and with what page 2 begins. */
  function expectOnePage(file: string): void {
    const [first, second] = ['1', '2'].map((page) => textOf(file, '-f', page, '-l', page));
    for (const told of ['Does it fit?', 'This is a planning aid.']) expect(first).toContain(told);
    expect(first).not.toMatch(/^Plans for|^Single changes/m);
    expect(second!.trimStart()).toMatch(/^What to change\n/);
  }

  it.each(papers)(
    'is the first page of the web page, printed on %s',
    async (paper) => {
      const page = await browser.newPage();
      await page.setContent(renderReport(assessment, all));
      const file = path.join(folder, 'printed.pdf');
      await page.pdf({ path: file, format: paper === 'a4' ? 'A4' : 'Letter' });
      await page.close();
      expectOnePage(file);
    },
    120_000,
  );

  it.each(papers)(
    'is the first page of the PDF on %s',
    async (paper) => {
      const file = path.join(folder, 'written.pdf');
      writeFileSync(file, await renderPdf(assessment, { ...all, paper, made: new Date(0) }));
      expectOnePage(file);
      if (name === 'larkfield-hall-first-plan.booth')
        expect(Number(infoOf(file).Pages)).toBeLessThanOrEqual(MOST_PAGES);
    },
    120_000,
  );
});

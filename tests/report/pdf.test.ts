import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { advise, type Assessment } from '@boothwright/fit';
import { isReport } from '@boothwright/report';
import { renderPdf, type PdfOptions } from '@boothwright/report/pdf';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { contentOf } from '../../packages/report/src/content/report.js';
import { adviceWithText, withText } from '../../packages/report/src/testing/hostile.js';
import { assessExample, assessText, examples } from './booths.js';
import { findPoppler, infoOf, picturesOf, textOf } from './poppler.js';

const made = new Date('2026-05-04T12:00:00Z');
const options: PdfOptions = { generatedBy: 'Boothwright 0.1.0', date: '4 May 2026', names: 'full', made };
let folder: string;

beforeAll(() => {
  findPoppler();
  folder = mkdtempSync(path.join(tmpdir(), 'boothwright-pdf-'));
}, 300_000);
afterAll(() => rmSync(folder, { recursive: true }));

async function write(assessment: Assessment, more: Partial<PdfOptions> = {}): Promise<string> {
  const file = path.join(folder, `${Math.random().toString(36).slice(2)}.pdf`);
  writeFileSync(file, await renderPdf(assessment, { ...options, ...more }));
  return file;
}

/** Words and how often each stands there. */
function tally(text: string): Map<string, number> {
  const counts = new Map<string, number>();
  for (const word of text.split(/\s+/).filter(Boolean)) counts.set(word, (counts.get(word) ?? 0) + 1);
  return counts;
}

/** Everything that the report says on paper or writes into a drawing, without marks and shapes. */
function textsIn(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  if (Array.isArray(value)) return value.flatMap(textsIn);
  if (typeof value !== 'object' || value === null) return [];
  if ('sheet' in value && 'pieces' in value) return textsIn(value.pieces);
  if ('shape' in value) return 'text' in value ? [String(value.text)] : [];
  if ('kind' in value && value.kind === 'more') return [];
  if ('charts' in value) return (value.charts as Parameters<typeof textsOfChart>[0][]).flatMap(textsOfChart);
  return Object.entries(value).flatMap(([key, part]) =>
    ['kind', 'as', 'verdict', 'name', 'station', 'narrow'].includes(key) ? [] : textsIn(part),
  );
}

function textsOfChart(chart: { title: string; lines: { summary: string }[] }): string[] {
  return [chart.title, ...chart.lines.map(({ summary }) => summary)];
}

describe.each(examples)('the report of %s as PDF', (name) => {
  let assessment: Assessment;
  let file: string;
  beforeAll(async () => {
    assessment = await assessExample(name);
    file = await write(assessment, { advice: advise(assessment.booth) });
  }, 60_000);

  it('opens, on the paper that its units ask for', () => {
    const { Title, Producer, JavaScript, Form, 'Page size': size } = infoOf(file);
    expect(Title).toBe(`${assessment.booth.name}: fit report`);
    expect([Producer, JavaScript, Form]).toEqual(['Boothwright 0.1.0', 'no', 'none']);
    expect(size).toMatch(assessment.booth.show === 'in' ? /letter/ : /A4/);
  });

  it('loses no word', () => {
    const content = contentOf(assessment, { ...options, advice: advise(assessment.booth) });
    const wanted = tally(textsIn(content).join(' ').replaceAll('√', 'root of '));
    const found = tally(textOf(file, '-raw'));
    expect(wanted.size).toBeGreaterThan(300);
    const lost = [...wanted].filter(([word, times]) => (found.get(word) ?? 0) < times);
    expect(lost).toEqual([]);
    expect(textOf(file)).not.toContain('\ufffd');
  });

  it('keeps within the margins of every page', () => {
    const pages = picturesOf(file, mkdtempSync(path.join(folder, 'pages-')), 36);
    expect(pages).toHaveLength(Number(infoOf(file).Pages));
    for (const { width, height, grey } of pages) {
      const dark = (x: number, y: number) => grey[y * width + x]! < 250;
      const outside = (x: number, y: number) => x < 19 || x >= width - 19 || y < 17 || y >= height - 10;
      const ink = Array.from(
        { length: width * height },
        (_, at) => [at % width, Math.floor(at / width)] as const,
      ).filter(([x, y]) => dark(x, y));
      expect(ink.length).toBeGreaterThan(200);
      expect(ink.filter(([x, y]) => outside(x, y))).toEqual([]);
    }
  });

  it('is known again as ours by its first kilobyte', () => {
    expect(isReport(readFileSync(file).toString('utf8', 0, 1024))).toBe(true);
  });
});

describe('the PDF', () => {
  it('takes the paper that is asked for', async () => {
    const assessment = await assessText('booth "Larkfield Hall" { show mm }\n');
    expect(infoOf(await write(assessment))['Page size']).toMatch(/A4/);
    expect(infoOf(await write(assessment, { paper: 'letter' }))['Page size']).toMatch(/letter/);
  });

  it('writes names of many scripts, and says on its first page what it cannot write', async () => {
    const names = ['Zoë', 'Øystein', 'Łukasz', 'Δημήτρης', 'Ольга', 'Trần'];
    const operators = [...names, 'Zoe\u0308', '山'].map((one) => `operator ${one} { stature 170cm }`).join('\n');
    const assessment = await assessText(`booth "Hall of 山" { show mm }\n${operators}\n`);
    const file = await write(assessment);
    const text = textOf(file);
    for (const one of names) expect(text).toContain(one);
    expect(text).toContain('Hall of \ufffd');
    expect(textOf(file, '-l', '1')).toMatch(/no sign for some characters[^.]*\(U\+5C71\)/);
    expect(infoOf(file).Title).toBe('Hall of 山: fit report');
  });

  it('is the same for the same booth, to the byte', async () => {
    const assessment = await assessText('booth "Larkfield Hall" { show mm }\noperator Noor { stature 160cm }\n');
    expect(await renderPdf(assessment, options)).toEqual(await renderPdf(assessment, options));
  });

  it('holds no action, link, script or annotation, whatever a booth file says, and the text can be read', async () => {
    const hostile = fc.oneof(
      fc.constantFrom(
        ')>> /JS (app.alert(1)) <<',
        '\\) /URI (http://x',
        'endstream endobj /AA <<',
        '</script><script>',
        '(((',
        '\\',
        'http://example.org/a mailto:a@example.org',
      ),
      fc.string({ unit: fc.constantFrom(...'()<>\\/[]{}%#\'"JSURIAO1. a:@'), minLength: 1, maxLength: 40 }),
    );
    await fc.assert(
      fc.asyncProperty(hostile, async (text) => {
        const said = `x${text}x`;
        const file = await write(withText(said), { advice: adviceWithText(said) });
        expect(infoOf(file).Title!.replace(/\s+/g, ' ')).toBe(`${said}: fit report`.replace(/\s+/g, ' '));
        const names = namesIn(readFileSync(file));
        expect(names).toContain('Outlines');
        expect(forbidden.filter((name) => names.has(name))).toEqual([]);
        expect(textOf(file, '-raw').replace(/\s+/g, '')).toContain(said.replace(/\s+/g, ''));
      }),
      { numRuns: 40 },
    );
  }, 180_000);

  it('would be seen to hold an action', () => {
    const names = namesIn(Buffer.from('1 0 obj <</Title (\\) /JS) /OpenAction <</S /URI /URI (x)>>>> endobj'));
    expect(forbidden.filter((name) => names.has(name))).toEqual(['URI', 'OpenAction']);
  });
});

/** Names of a PDF that make it do something, or lead elsewhere. */
const forbidden = [
  'JS',
  'JavaScript',
  'URI',
  'AA',
  'OpenAction',
  'Launch',
  'A',
  'Annots',
  'AcroForm',
  'EmbeddedFile',
  'GoToR',
  'SubmitForm',
];

/** The names in a PDF's objects; strings and streams hold none. */
function namesIn(pdf: Buffer): Set<string> {
  const objects = pdf.toString('latin1').replace(/stream\r?\n[^]*?\r?\nendstream/g, '');
  let bare = '';
  let depth = 0;
  for (let at = 0; at < objects.length; at++) {
    const character = objects[at]!;
    if (depth > 0 && character === '\\') at++;
    else if (character === '(') depth++;
    else if (depth > 0 && character === ')') depth--;
    else if (depth === 0) bare += character;
  }
  expect(depth).toBe(0);
  return new Set([...bare.matchAll(/\/([A-Za-z]+)/g)].map(([, name]) => name!));
}

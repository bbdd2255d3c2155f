import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { advise, type Assessment } from '@boothwright/fit';
import { renderMarkdown, renderReport, type ReportOptions } from '@boothwright/report';
import { draw } from '@boothwright/report/draw';
import { renderPdf } from '@boothwright/report/pdf';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { assessExample, assessText, examples } from './booths.js';
import { findPoppler, infoOf, textOf } from './poppler.js';

const options = { generatedBy: 'Boothwright 0.1.0', date: '4 May 2026' } as const;
let folder: string;
beforeAll(() => {
  findPoppler();
  folder = mkdtempSync(path.join(tmpdir(), 'boothwright-names-'));
}, 300_000);
afterAll(() => rmSync(folder, { recursive: true }));

/** Every form that leaves the house, as text; of the PDF also its properties and bookmarks. */
async function outputs(assessment: Assessment, names: ReportOptions['names']): Promise<Record<string, string>> {
  const all = { ...options, names, advice: advise(assessment.booth) };
  const pdf = path.join(folder, 'report.pdf');
  writeFileSync(pdf, await renderPdf(assessment, { ...all, made: new Date(0) }));
  const raw = execFileSync('pdftotext', ['-raw', pdf, '-'], { encoding: 'utf8' });
  const drawn = (['booth', 'room', 'hall'] as const).flatMap((view) =>
    (['svg', 'dxf'] as const).map(
      (format) => [`${view}.${format}`, draw(assessment, { ...options, names, view, format }) ?? ''] as const,
    ),
  );
  return {
    html: renderReport(assessment, all),
    markdown: renderMarkdown(assessment, all),
    pdf: raw,
    properties: JSON.stringify(infoOf(pdf)),
    firstPage: textOf(pdf, '-l', '1'),
    ...Object.fromEntries(drawn),
  };
}

describe.each(examples)('%s without names', (name) => {
  it('names nobody in any output, and says so on the first page', async () => {
    const assessment = await assessExample(name);
    const people = assessment.booth.operators.map((operator) => operator.name);
    const [lettered, full] = [await outputs(assessment, 'letters'), await outputs(assessment, 'full')];
    for (const person of people) {
      expect(full.html).toContain(person);
      expect(full.pdf).toContain(person);
      for (const [form, text] of Object.entries(lettered))
        expect(text.includes(person), `${person} in ${form}`).toBe(false);
    }
    if (people.length === 0) {
      expect(`${lettered.html} ${full.html}`).not.toMatch(/Names are left out|Operators are named/);
      return;
    }
    for (const form of ['html', 'markdown', 'firstPage']) {
      expect(lettered[form]!.replace(/\s+/g, ' ')).toContain('Names are left out: Person A');
      expect(full[form]!.replace(/\s+/g, ' ')).toContain('Operators are named as in the booth file.');
    }
  }, 120_000);
});

it('finds names in the title, in reasons and in the names of other things', async () => {
  const assessment = await assessText(`booth "Noor's corner" { show in }
operator Noor { stature 5'3" }
operator Noora { stature 5'9" }
desk NoorDesk { width 60in  depth 27in  height 40in }
stool Noor_stool { seat 20in..22in }
workstation Sound { desk NoorDesk  stool Noor_stool  operators Noor, Noora  posture sit }
skirt Front { on NoorDesk  drop 41in }
accept skirt-drop on Front because "Noor hems it; Noora knows"
`);
  const lettered = await outputs(assessment, 'letters');
  expect(lettered.html).toContain('Person A&#39;s corner'.replace('&#39;', "'"));
  expect(lettered.html).toContain('Person A hems it; Person B knows');
  for (const [form, text] of Object.entries(lettered)) expect(text.includes('Noor'), form).toBe(false);
}, 120_000);

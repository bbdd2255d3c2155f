import type { Assessment } from '@boothwright/fit';
import PDFDocument from 'pdfkit';
import { paragraph, soft, type Block } from '../content/blocks.js';
import { contentOf } from '../content/report.js';
import type { ReportOptions } from '../options.js';
import { paperFor, type Paper } from '../paper.js';
import { titleOfReport } from '../report.js';
import { setBlocks, setFooters } from './blocks.js';
import { Flow } from './flow.js';
import { addFonts, lackingIn, LACKING, Measure, type Doc } from './type.js';

export interface PdfOptions extends ReportOptions {
  /** Letter for a booth in inches or feet, A4 for any other, if not said. */
  readonly paper?: Paper;
  /** When it is made, as the file's properties say. */
  readonly made: Date;
}

const sizes: Record<Paper, [number, number]> = { letter: [612, 792], a4: [595.28, 841.89] };
const MARGIN = { sides: 40, top: 36, bottom: 44 };

/** The fit report as PDF, its drawings as vectors, its text as text. It holds no script, link, form or attachment. */
export async function renderPdf(assessment: Assessment, options: PdfOptions): Promise<Uint8Array> {
  const [width, height] = sizes[options.paper ?? paperFor(assessment.booth.show)];
  const blocks = contentOf(assessment, options);
  const title = titleOfReport(assessment, options);
  const doc = new PDFDocument({
    size: [width, height],
    margin: 0,
    bufferPages: true,
    lang: 'en',
    displayTitle: true,
    font: '',
    info: { Title: title, Creator: options.generatedBy, Producer: options.generatedBy, CreationDate: options.made },
  });
  const made = collected(doc);
  // Stands within the first kilobyte, by which a report is known again.
  doc.ref({ MadeBy: 'Boothwright' }).end(undefined);
  addFonts(doc);

  const measure = new Measure(doc);
  const frame = {
    left: MARGIN.sides,
    top: MARGIN.top,
    width: width - 2 * MARGIN.sides,
    height: height - MARGIN.top - MARGIN.bottom,
  };
  const flow = new Flow(doc, frame);
  setBlocks(flow, measure, withNoteOfLacking(blocks));
  setFooters(flow, measure, title);
  doc.end();
  return made;
}

/** Says on the first page which characters stand there as a sign, below the title. */
function withNoteOfLacking(blocks: readonly Block[]): readonly Block[] {
  const lacking = [...new Set(textsOf(blocks).flatMap(lackingIn))];
  if (lacking.length === 0) return blocks;
  const codes = lacking.map((one) => `U+${one.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0')}`);
  const shown = codes.length > MOST_CODES ? [...codes.slice(0, MOST_CODES), '…'] : codes;
  const note = `The fonts of this PDF have no sign for some characters of the booth file (${shown.join(', ')}). Each stands here as ${LACKING}. The report as a web page shows them.`;
  const [first, ...rest] = blocks;
  if (first?.kind !== 'page') return blocks;
  const [title, ...others] = first.blocks;
  return [{ ...first, blocks: [title!, paragraph(soft(note)), ...others] }, ...rest];
}

const MOST_CODES = 12;

/** Every text in a value. */
function textsOf(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(textsOf);
}

function collected(doc: Doc): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const parts: Uint8Array[] = [];
    doc.on('data', (part: Uint8Array) => parts.push(part));
    doc.on('error', reject);
    doc.on('end', () => {
      const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
      let at = 0;
      for (const part of parts) {
        whole.set(part, at);
        at += part.length;
      }
      resolve(whole);
    });
  });
}

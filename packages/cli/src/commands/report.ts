import path from 'node:path';
import { advise, type Assessment } from '@boothwright/fit';
import { lettersFor, renderMarkdown, renderReport, type ReportOptions } from '@boothwright/report';
import { version } from '../../package.json';
import { formatJson } from '../formats/json.js';
import { formatProblems } from '../formats/text.js';
import { readBooth, type Reading } from '../reading.js';
import { writeReport } from '../report-file.js';
import { GOOD, UNUSABLE, UsageError, type Status } from '../status.js';
import type { Terminal } from '../terminal.js';
import { oneOf, parseCommand, type Command } from './command.js';

export const report: Command = {
  usage: ['report FILE -o OUT [--format html|pdf|markdown|json] [--paper letter|a4] [--names full|letters] [--force]'],
  help: `Writes the fit report of a booth file: one file to read, print and send.
The status is 0 when the report is written, whatever it says of the booth.

  -o, --output OUT        where to write it; an earlier report there is replaced
  --format html           a page that stands alone, with drawings
           pdf            pages to print or send, with the same drawings
           markdown       text for a wiki or a mail
           json           the assessment, as check --format json prints it
                          without --format the ending of OUT decides: .html, .pdf,
                          .md or .json; any other is HTML
  --paper letter|a4       of the PDF; without it Letter for a booth in inches or
                          feet, A4 for any other
  --names full|letters    'letters' shows Person A, Person B … in place of names
  --force                 replace OUT even if boothwright did not make it`,
  run: runReport,
};

const formats = ['html', 'pdf', 'markdown', 'json'] as const;
const papers = ['letter', 'a4'] as const;
type Format = (typeof formats)[number];

async function runReport(args: readonly string[], terminal: Terminal): Promise<Status> {
  const { values, positionals } = parseCommand(args, {
    output: { type: 'string', short: 'o' },
    format: { type: 'string' },
    paper: { type: 'string' },
    names: { type: 'string', default: 'full' },
    force: { type: 'boolean', default: false },
  });
  const names = oneOf('names', values.names, ['full', 'letters']);
  const [file, ...more] = positionals;
  if (file === undefined || more.length > 0) throw new UsageError('name one booth file: a report is about one booth.');
  const { output } = values;
  if (!output) throw new UsageError(`say where to write the report, as in: boothwright report ${file} -o report.html`);
  const format = values.format === undefined ? formatOf(output) : oneOf('format', values.format, formats);
  const paper = values.paper === undefined ? undefined : oneOf('paper', values.paper, papers);
  if (paper && format !== 'pdf') throw new UsageError(`--paper is for a PDF: add --format pdf, or leave it out.`);

  const reading = await readBooth(file);
  terminal.err(formatProblems([reading]));
  if (!reading.understood) return UNUSABLE;
  const { assessment } = reading;
  if (!assessment) throw new UsageError(`${file} holds no booth to report on, only pieces for other files.`);
  const content = await render(format, reading, assessment, { names, paper });
  await writeReport(output, content, { force: values.force, source: file });
  terminal.out(`Wrote ${output}\n`);
  return GOOD;
}

function formatOf(output: string): Format {
  switch (path.extname(output).toLowerCase()) {
    case '.md':
    case '.markdown':
      return 'markdown';
    case '.json':
      return 'json';
    case '.pdf':
      return 'pdf';
    default:
      return 'html';
  }
}

interface Asked {
  readonly names: ReportOptions['names'];
  readonly paper: (typeof papers)[number] | undefined;
}

async function render(
  format: Format,
  reading: Reading,
  assessment: Assessment,
  { names, paper }: Asked,
): Promise<string | Uint8Array> {
  if (format === 'json') {
    const { problems } = reading;
    const said = { problems, assessment };
    return formatJson([{ ...reading, ...(names === 'letters' ? lettersFor(assessment.booth)(said) : said) }]);
  }
  const options: ReportOptions = {
    generatedBy: `Boothwright ${version}`,
    date: today(),
    names,
    advice: advise(assessment.booth),
  };
  switch (format) {
    case 'markdown':
      return renderMarkdown(assessment, options);
    case 'html':
      return renderReport(assessment, options);
    case 'pdf': {
      // Loaded only here: no other command waits for fonts and page setting.
      const { renderPdf } = await import('@boothwright/report/pdf');
      return renderPdf(assessment, { ...options, made: new Date(), ...(paper && { paper }) });
    }
  }
}

/** The day here, as in '4 May 2026'. */
function today(): string {
  return new Date().toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
}

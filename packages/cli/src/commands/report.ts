import { advise } from '@boothwright/fit';
import { renderReport } from '@boothwright/report';
import { version } from '../../package.json';
import { formatProblems } from '../formats/text.js';
import { readBooth } from '../reading.js';
import { writeReport } from '../report-file.js';
import { GOOD, UNUSABLE, UsageError, type Status } from '../status.js';
import type { Terminal } from '../terminal.js';
import { oneOf, parseCommand, type Command } from './command.js';

export const report: Command = {
  usage: ['report FILE -o OUT.html [--names full|letters] [--force]'],
  help: `Writes the fit report of a booth file: one HTML file to read, print and send.
The status is 0 when the report is written, whatever it says of the booth.

  -o, --output OUT.html  where to write it; an earlier report there is replaced
  --names full|letters   'letters' shows Person A, Person B … in place of names
  --force                replace OUT.html even if boothwright did not make it`,
  run: runReport,
};

async function runReport(args: readonly string[], terminal: Terminal): Promise<Status> {
  const { values, positionals } = parseCommand(args, {
    output: { type: 'string', short: 'o' },
    names: { type: 'string', default: 'full' },
    force: { type: 'boolean', default: false },
  });
  const names = oneOf('names', values.names, ['full', 'letters']);
  const [file, ...more] = positionals;
  if (file === undefined || more.length > 0) throw new UsageError('name one booth file: a report is about one booth.');
  if (!values.output)
    throw new UsageError(`say where to write the report, as in: boothwright report ${file} -o report.html`);

  const reading = await readBooth(file);
  terminal.err(formatProblems([reading]));
  if (!reading.understood) return UNUSABLE;
  if (!reading.assessment) throw new UsageError(`${file} holds no booth to report on, only pieces for other files.`);
  const html = renderReport(reading.assessment, {
    generatedBy: `Boothwright ${version}`,
    date: today(),
    names,
    advice: advise(reading.assessment.booth),
  });
  await writeReport(values.output, html, { force: values.force, source: file });
  terminal.out(`Wrote ${values.output}\n`);
  return GOOD;
}

/** The day here, as in '4 May 2026'. */
function today(): string {
  return new Date().toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
}

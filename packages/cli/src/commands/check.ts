import { formatJson } from '../formats/json.js';
import { formatSarif } from '../formats/sarif.js';
import { formatProblems, formatText } from '../formats/text.js';
import { Progress } from '../progress.js';
import { createReader, type Reading } from '../reading.js';
import { FAILED, GOOD, UNUSABLE, UsageError, type Status } from '../status.js';
import type { Terminal } from '../terminal.js';
import { oneOf, parseCommand, type Command } from './command.js';

export const check: Command = {
  usage: ['check FILE… [--format text|json|sarif] [--passes]'],
  help: `Says of each booth file what fits and what does not.

  --format text   for people (the default)
           json   for programs: one object for one file, an array for several;
                  schema/assessment-1.schema.json
           sarif  for tools that gather findings: SARIF 2.1.0
  --passes        write out what passes too, in text and SARIF`,
  run: runCheck,
};

async function runCheck(args: readonly string[], terminal: Terminal): Promise<Status> {
  const { values, positionals: files } = parseCommand(args, {
    format: { type: 'string', default: 'text' },
    passes: { type: 'boolean', default: false },
  });
  const format = oneOf('format', values.format, ['text', 'json', 'sarif']);
  if (files.length === 0) throw new UsageError('name a booth file, as in: boothwright check hall.booth');

  const readings: Reading[] = [];
  const read = createReader();
  const progress = new Progress(terminal, files.length);
  for (const file of files) {
    progress.tell(readings.length);
    readings.push(await read(file));
  }
  progress.end();
  const status = statusOf(readings);
  switch (format) {
    case 'json':
      terminal.out(formatJson(readings));
      break;
    case 'sarif':
      terminal.out(formatSarif(readings, { passes: values.passes, status }));
      break;
    case 'text':
      terminal.err(formatProblems(readings));
      terminal.out(formatText(readings, { ...terminal, passes: values.passes }));
  }
  return status;
}

/** The worst of all files. An accepted fail does not count. */
export function statusOf(readings: readonly Reading[]): Status {
  if (readings.some(({ understood }) => !understood)) return UNUSABLE;
  const findings = readings.flatMap(({ assessment }) => assessment?.findings ?? []);
  return findings.some(({ verdict, accepted }) => verdict === 'fail' && accepted === undefined) ? FAILED : GOOD;
}

import path from 'node:path';
import type { Assessment } from '@boothwright/fit';
import {
  compareLayouts,
  comparisonMarkdown,
  namedLayouts,
  renderComparison,
  unitsOf,
} from '@boothwright/report/comparison';
import { version } from '../../package.json';
import { formatComparison, formatComparisonJson } from '../formats/comparison.js';
import { formatProblems } from '../formats/text.js';
import { readBooth, type Reading } from '../reading.js';
import { writeReport } from '../report-file.js';
import { GOOD, UNUSABLE, UsageError, type Status } from '../status.js';
import type { Terminal } from '../terminal.js';
import { oneOf, parseCommand, type Command } from './command.js';

export const compare: Command = {
  usage: ['compare FILE FILE… [--format text|json] [-o OUT] [--names full|letters] [--force]'],
  help: `Puts layouts side by side: what each gains and loses against the first, whom each
serves, and how wide its walkways are. Things are matched by their names.
The status is 0 when there is a comparison, whatever it says.

  --format text           for people (the default)
           json           for programs: schema/comparison-1.schema.json
  -o, --output OUT        write a web page there (.html), Markdown (.md) or JSON (.json)
  --names full|letters    'letters' shows Person A, Person B … in place of names, a
                          person by the same letter in all layouts
  --force                 replace OUT even if boothwright did not make it`,
  run: runCompare,
};

async function runCompare(args: readonly string[], terminal: Terminal): Promise<Status> {
  const { values, positionals: files } = parseCommand(args, {
    format: { type: 'string', default: 'text' },
    output: { type: 'string', short: 'o' },
    names: { type: 'string', default: 'full' },
    force: { type: 'boolean', default: false },
  });
  const format = oneOf('format', values.format, ['text', 'json']);
  const names = oneOf('names', values.names, ['full', 'letters']);
  const [first] = files;
  if (first === undefined || files.length < 2) {
    throw new UsageError('name two booth files or more, as in: boothwright compare first.booth second.booth');
  }
  const readings: Reading[] = [];
  for (const file of files) readings.push(await readBooth(file));
  terminal.err(formatProblems(readings));
  if (readings.some(({ understood }) => !understood)) return UNUSABLE;

  const assessments = readings.map(({ file, assessment }) => {
    if (!assessment) throw new UsageError(`${file} holds no booth to compare, only pieces for other files.`);
    return assessment;
  });
  const { layouts, said } = namedLayouts(
    assessments.map((assessment, index) => ({ label: labelOf(assessments, index, files), assessment })),
    names,
  );
  const comparison = compareLayouts(layouts);
  const units = unitsOf(assessments[0]!.booth.show);
  const options = { units, names: said, generatedBy: `Boothwright ${version}` } as const;
  const { output } = values;
  if (output !== undefined) {
    const written: Readonly<Record<string, () => string>> = {
      '.html': () => renderComparison(comparison, options),
      '.md': () => comparisonMarkdown(comparison, options),
      '.json': () => formatComparisonJson(comparison, files),
    };
    const write = written[path.extname(output).toLowerCase()];
    if (!write) throw new UsageError(`${output} ends in none of .html, .md and .json: name it so.`);
    if (files.some((file) => path.resolve(file) === path.resolve(output))) {
      throw new UsageError(`${output} is one of the booth files: name another file for the comparison.`);
    }
    await writeReport(output, write(), { force: values.force, source: first });
    terminal.out(`Wrote ${output}\n`);
    return GOOD;
  }
  terminal.out(
    format === 'json' ? formatComparisonJson(comparison, files) : formatComparison(comparison, units.length, terminal),
  );
  return GOOD;
}

/** The booth's name, with its file's where another has the same. */
function labelOf(assessments: readonly Assessment[], index: number, files: readonly string[]): string {
  const { name } = assessments[index]!.booth;
  const isOnly = assessments.filter(({ booth }) => booth.name === name).length === 1;
  return isOnly ? name : `${name} (${path.basename(files[index]!)})`;
}

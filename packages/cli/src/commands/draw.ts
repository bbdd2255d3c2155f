import path from 'node:path';
import { listOf } from '@boothwright/fit';
import { draw as drawView, sideTitles, type View } from '@boothwright/report/draw';
import { version } from '../../package.json';
import { formatProblems } from '../formats/text.js';
import { readBooth } from '../reading.js';
import { writeReport } from '../report-file.js';
import { GOOD, UNUSABLE, UsageError, type Status } from '../status.js';
import type { Terminal } from '../terminal.js';
import { oneOf, parseCommand, type Command } from './command.js';

export const draw: Command = {
  usage: [
    'draw FILE -o OUT [--view booth|room|hall|side] [--of TITLE] [--format svg|dxf] [--names full|letters] [--force]',
  ],
  help: `Draws a booth file: one drawing, to print or to open where things are built.
The status is 0 when it is drawn, whatever there is to say of the booth.

  -o, --output OUT        where to write it; an earlier drawing there is replaced
  --view booth            the booth and its walkways from above (the default)
         room             the whole room from above
         hall             from the booth to the stage, from the side
         side             one person at work, from the side
  --of TITLE              which person from the side, as the report says: 'Noor, sitting at Sound'
  --format svg            a picture that scales
           dxf            for drawing programs: millimetres at full size, in layers
                          without --format the ending of OUT decides
  --names full|letters    'letters' shows Person A, Person B … in place of names
  --force                 replace OUT even if boothwright did not make it`,
  run: runDraw,
};

const formats = ['svg', 'dxf'] as const;

/** What a file has to say for each view. */
const needed: Record<View, string> = {
  booth: "'place' at least one desk",
  room: "say how wide and deep the 'room' is",
  hall: "say where the 'stage' of the room is, and who works where",
  side: 'say who works where, at which desk',
};

async function runDraw(args: readonly string[], terminal: Terminal): Promise<Status> {
  const { values, positionals } = parseCommand(args, {
    output: { type: 'string', short: 'o' },
    view: { type: 'string', default: 'booth' },
    of: { type: 'string' },
    format: { type: 'string' },
    names: { type: 'string', default: 'full' },
    force: { type: 'boolean', default: false },
  });
  if (values.of !== undefined && values.view !== 'side') throw new UsageError('--of goes with --view side.');
  const names = oneOf('names', values.names, ['full', 'letters']);
  const view = oneOf('view', values.view, ['booth', 'room', 'hall', 'side']);
  const [file, ...more] = positionals;
  if (file === undefined || more.length > 0) throw new UsageError('name one booth file: a drawing shows one booth.');
  const { output } = values;
  if (!output) throw new UsageError(`say where to draw it, as in: boothwright draw ${file} -o plan.dxf`);
  const ending = path.extname(output).slice(1).toLowerCase();
  const format = formats.find((known) => known === (values.format ?? ending));
  if (!format) {
    if (values.format !== undefined) oneOf('format', values.format, formats);
    throw new UsageError(`${output} ends in neither .svg nor .dxf: name it so, or add --format.`);
  }

  const reading = await readBooth(file);
  terminal.err(formatProblems([reading]));
  if (!reading.understood) return UNUSABLE;
  if (!reading.assessment) throw new UsageError(`${file} holds no booth to draw, only pieces for other files.`);
  const of = view === 'side' ? titleOf(values.of, sideTitles(reading.assessment, { names })) : undefined;
  const generatedBy = `Boothwright ${version}` as const;
  const drawing = drawView(reading.assessment, { view, format, names, generatedBy, ...(of && { of }) });
  if (drawing === undefined) throw new UsageError(`${file} says too little to draw this: ${needed[view]}.`);
  await writeReport(output, drawing, { force: values.force, source: file });
  terminal.out(`Wrote ${output}\n`);
  return GOOD;
}

/** The only drawing from the side need not be named. */
function titleOf(wanted: string | undefined, titles: readonly string[]): string | undefined {
  if (titles.length === 0) return undefined;
  if (wanted === undefined && titles.length === 1) return titles[0];
  if (wanted !== undefined && titles.includes(wanted)) return wanted;
  throw new UsageError(
    `say with --of which person to draw: ${listOf(
      titles.map((title) => `'${title}'`),
      'or',
    )}.`,
  );
}

import path from 'node:path';
import { draw as drawView, type View } from '@boothwright/report/draw';
import { version } from '../../package.json';
import { formatProblems } from '../formats/text.js';
import { readBooth } from '../reading.js';
import { writeReport } from '../report-file.js';
import { GOOD, UNUSABLE, UsageError, type Status } from '../status.js';
import type { Terminal } from '../terminal.js';
import { oneOf, parseCommand, type Command } from './command.js';

export const draw: Command = {
  usage: ['draw FILE -o OUT [--view booth|room|hall] [--format svg|dxf] [--names full|letters] [--force]'],
  help: `Draws a booth file: one drawing, to print or to open where things are built.
The status is 0 when it is drawn, whatever there is to say of the booth.

  -o, --output OUT        where to write it; an earlier drawing there is replaced
  --view booth            the booth and its walkways from above (the default)
         room             the whole room from above
         hall             from the booth to the stage, from the side
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
};

async function runDraw(args: readonly string[], terminal: Terminal): Promise<Status> {
  const { values, positionals } = parseCommand(args, {
    output: { type: 'string', short: 'o' },
    view: { type: 'string', default: 'booth' },
    format: { type: 'string' },
    names: { type: 'string', default: 'full' },
    force: { type: 'boolean', default: false },
  });
  const names = oneOf('names', values.names, ['full', 'letters']);
  const view = oneOf('view', values.view, ['booth', 'room', 'hall']);
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
  const drawing = drawView(reading.assessment, { view, format, names, generatedBy: `Boothwright ${version}` });
  if (drawing === undefined) throw new UsageError(`${file} says too little to draw this: ${needed[view]}.`);
  await writeReport(output, drawing, { force: values.force, source: file });
  terminal.out(`Wrote ${output}\n`);
  return GOOD;
}

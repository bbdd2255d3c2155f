import { advise as adviseOn, type Advice, type Assessment } from '@boothwright/fit';
import { closest } from 'fastest-levenshtein';
import { formatAdviceJson } from '../formats/advice-json.js';
import { formatAdvice, formatShopping } from '../formats/advice-text.js';
import { formatProblems } from '../formats/text.js';
import { readBooth } from '../reading.js';
import { GOOD, UNUSABLE, UsageError, type Status } from '../status.js';
import type { Terminal } from '../terminal.js';
import { oneOf, parseCommand, type Command } from './command.js';

export const advise: Command = {
  usage: ['advise FILE [WORKSTATION] [--shopping] [--format text|json]'],
  help: `Says what would fit everybody: heights to set and whom they suit, the heights that
suit each person, what to measure next, and what to ask for in a shop.
The status is 0 when there is advice, whatever it says of the booth.

  WORKSTATION         this one alone
  --shopping          what to ask for in a shop, and nothing else
  --format text|json  for people (the default), or for programs: one object,
                      schema/advice-1.schema.json`,
  run: runAdvise,
};

async function runAdvise(args: readonly string[], terminal: Terminal): Promise<Status> {
  const { values, positionals } = parseCommand(args, {
    shopping: { type: 'boolean', default: false },
    format: { type: 'string', default: 'text' },
  });
  const format = oneOf('format', values.format, ['text', 'json']);
  const [file, workstation, ...more] = positionals;
  if (file === undefined || more.length > 0)
    throw new UsageError('name one booth file and at most one workstation, as in: boothwright advise hall.booth Sound');

  const reading = await readBooth(file);
  if (format === 'text') terminal.err(formatProblems([reading]));
  if (!reading.understood) {
    if (format === 'json') terminal.out(formatAdviceJson(reading));
    return UNUSABLE;
  }
  const { assessment } = reading;
  if (!assessment) throw new UsageError(`${file} holds no booth to advise on, only pieces for other files.`);
  if (workstation !== undefined) refuseUnknown(workstation, assessment, file);

  const all = adviseOn(assessment.booth);
  const advice = workstation === undefined ? all : adviceFor(all, workstation, assessment);
  if (format === 'json') terminal.out(formatAdviceJson(reading, advice));
  else if (values.shopping) terminal.out(formatShopping(assessment, advice.shopping, terminal));
  else terminal.out(formatAdvice(file, assessment, advice, terminal));
  return GOOD;
}

function refuseUnknown(name: string, { booth }: Assessment, file: string): void {
  const names = booth.workstations.map((station) => station.name);
  if (names.includes(name)) return;
  if (names.length === 0) throw new UsageError(`${file} names no workstation.`);
  throw new UsageError(`there is no workstation '${name}' in ${file}. Did you mean '${closest(name, names)}'?`);
}

/** The parts that concern one workstation. */
function adviceFor({ stations, measure, shopping }: Advice, name: string, { booth }: Assessment): Advice {
  const people = booth.workstations.find((station) => station.name === name)!.people.map((person) => person.name);
  return {
    stations: stations.filter(({ workstation }) => workstation === name),
    measure: measure.filter(({ operator }) => people.includes(operator)),
    shopping: shopping.filter(({ workstations }) => workstations.includes(name)),
  };
}

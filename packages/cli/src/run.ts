import { closest } from 'fastest-levenshtein';
import { version } from '../package.json';
import { advise } from './commands/advise.js';
import { check } from './commands/check.js';
import { compare } from './commands/compare.js';
import { draw } from './commands/draw.js';
import { explain } from './commands/explain.js';
import { report } from './commands/report.js';
import type { Command } from './commands/command.js';
import { UNUSABLE, UsageError, type Status, GOOD } from './status.js';
import type { Terminal } from './terminal.js';

const commands: Readonly<Record<string, Command>> = { check, advise, report, draw, compare, explain };

const help = `Checks on paper whether a control booth fits its people, sightlines and walkways.

Usage
${Object.values(commands)
  .flatMap(({ usage }) => usage)
  .map((line) => `  boothwright ${line}`)
  .join('\n')}
  boothwright COMMAND --help
  boothwright --version

Exit status
  0  nothing failed
  1  something failed, and the file does not accept it
  2  a file could not be read, understood or written, or the command line was wrong

A planning aid. Your local building or fire official, and licensed professionals, decide.
`;

/** Runs one command line. Never throws: what goes wrong is said, and becomes the status. */
export async function run(args: readonly string[], terminal: Terminal): Promise<Status> {
  try {
    return await dispatch(args, terminal);
  } catch (error) {
    terminal.err(`boothwright: ${error instanceof UsageError ? error.message : traceOf(error)}\n`);
    return UNUSABLE;
  }
}

async function dispatch([name, ...rest]: readonly string[], terminal: Terminal): Promise<Status> {
  if (name === undefined) throw new UsageError(`say what to do.\n\n${help}`);
  if (name === '--help' || name === '-h' || name === 'help') {
    terminal.out(help);
    return GOOD;
  }
  if (name === '--version' || name === '-V') {
    terminal.out(`${version}\n`);
    return GOOD;
  }
  const command = Object.hasOwn(commands, name) ? commands[name] : undefined;
  if (!command) throw new UsageError(unknownCommand(name));
  if (rest.includes('--help') || rest.includes('-h')) {
    terminal.out(`Usage\n${command.usage.map((line) => `  boothwright ${line}\n`).join('')}\n${command.help}\n`);
    return GOOD;
  }
  return command.run(rest, terminal);
}

function unknownCommand(name: string): string {
  if (name.endsWith('.booth')) return `say what to do with ${name}, as in: boothwright check ${name}`;
  const nearest = closest(name, Object.keys(commands));
  return `there is no command '${name}'. Did you mean '${nearest}'? See boothwright --help.`;
}

function traceOf(error: unknown): string {
  return `this is a fault of boothwright itself.\n${error instanceof Error ? (error.stack ?? error.message) : String(error)}`;
}

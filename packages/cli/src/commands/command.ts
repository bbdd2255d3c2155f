import { listOf } from '@boothwright/fit';
import { parseArgs, type ParseArgsConfig } from 'node:util';
import { UsageError, type Status } from '../status.js';
import type { Terminal } from '../terminal.js';

/** One word of the command line. */
export interface Command {
  /** How to type it, one line per way, without the program's name. */
  readonly usage: readonly string[];
  /** What its options mean. */
  readonly help: string;
  /** @throws UsageError for what the person can put right. */
  readonly run: (args: readonly string[], terminal: Terminal) => Status | Promise<Status>;
}

/** `parseArgs` that complains in one sentence. */
export function parseCommand<const Options extends NonNullable<ParseArgsConfig['options']>>(
  args: readonly string[],
  options: Options,
) {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    throw new UsageError(`${error.message.split('. ')[0]!.replace(/\.$/, '')}. See boothwright --help.`);
  }
}

/** The option's value, if it is one of the words it takes. */
export function oneOf<const Word extends string>(option: string, value: string, words: readonly Word[]): Word {
  const word = words.find((known) => known === value);
  if (word === undefined) throw new UsageError(`--${option} takes ${listOf(words, 'or')}, not '${value}'.`);
  return word;
}

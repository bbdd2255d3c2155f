import { checks } from '@boothwright/fit';
import { closest } from 'fastest-levenshtein';
import { formatCheck } from '../formats/explanation.js';
import { GOOD, UsageError, type Status } from '../status.js';
import type { Terminal } from '../terminal.js';
import { parseCommand, type Command } from './command.js';

export const explain: Command = {
  usage: ['explain CHECK', 'explain --all'],
  help: `Says what a check asks, how it computes, where its limits come from, how far they
can be trusted, and shows a booth that it objects to and one that it does not.

  CHECK  the name that a finding bears, such as feet-supported
  --all  every check`,
  run: runExplain,
};

function runExplain(args: readonly string[], terminal: Terminal): Status {
  const { values, positionals } = parseCommand(args, { all: { type: 'boolean', default: false } });
  if (!values.all && positionals.length === 0) {
    throw new UsageError(`name a check, or add --all. The checks are ${checks.map(({ id }) => id).join(', ')}.`);
  }
  const wanted = values.all ? checks : positionals.map(checkNamed);
  terminal.out(wanted.map((check) => formatCheck(check, terminal)).join('\n'));
  return GOOD;
}

function checkNamed(id: string) {
  const check = checks.find((known) => known.id === id);
  if (check) return check;
  const nearest = closest(
    id,
    checks.map((known) => known.id),
  );
  throw new UsageError(`there is no check '${id}'. Did you mean '${nearest}'?`);
}

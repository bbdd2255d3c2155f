import { checks } from '@boothwright/fit';
import { issueCodes } from '@boothwright/language';
import { checkPages, type Page, pageOfCode } from '@boothwright/report';
import { closest } from 'fastest-levenshtein';
import { faultPage, formatPage } from '../formats/pages.js';
import { GOOD, UsageError, type Status } from '../status.js';
import type { Terminal } from '../terminal.js';
import { parseCommand, type Command } from './command.js';

export const explain: Command = {
  usage: ['explain CHECK', 'explain --all'],
  help: `Says what a check asks, how it computes, where its limits come from, how far they
can be trusted, and shows a booth that it objects to and one that it does not.

  CHECK  the name that a finding bears, such as feet-supported, or a fault of the
         text, such as no-unit
  --all  every check`,
  run: runExplain,
};

function runExplain(args: readonly string[], terminal: Terminal): Status {
  const { values, positionals } = parseCommand(args, { all: { type: 'boolean', default: false } });
  if (!values.all && positionals.length === 0) {
    throw new UsageError(`name a check, or add --all. The checks are ${checks.map(({ id }) => id).join(', ')}.`);
  }
  const wanted = values.all ? checkPages() : positionals.map(pageNamed);
  terminal.out(wanted.map((page) => formatPage(page, terminal)).join('\n'));
  return GOOD;
}

function pageNamed(name: string): Page {
  const fault = issueCodes.find((code) => code === name);
  const page = fault ? faultPage(fault) : pageOfCode(name);
  if (page) return page;
  const nearest = closest(name, [...checks.map(({ id }) => id), ...issueCodes]);
  throw new UsageError(`there is no check '${name}'. Did you mean '${nearest}'?`);
}

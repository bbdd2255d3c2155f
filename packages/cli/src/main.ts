import { run } from './run.js';
import { UNUSABLE } from './status.js';
import { processTerminal } from './terminal.js';

let isLost = false;

// A reader that closes early, as `head` does, is no error: the work is done to its end, and its status is the same.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') return;
  if (!isLost) process.stderr.write(`boothwright: what was found could not be written: ${reasonOf(error)}.\n`);
  isLost = true;
  process.exitCode = UNUSABLE;
});
// Nobody is left to hear of it.
process.stderr.on('error', () => undefined);

void run(process.argv.slice(2), processTerminal()).then((status) => {
  process.exitCode = isLost ? UNUSABLE : status;
});

function reasonOf({ code, message }: NodeJS.ErrnoException): string {
  return code === 'ENOSPC' ? 'there is no room left' : message;
}

import { run } from './run.js';
import { processTerminal } from './terminal.js';

// A reader that closes early, as `head` does, is no error.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit();
});

void run(process.argv.slice(2), processTerminal()).then((status) => {
  process.exitCode = status;
});

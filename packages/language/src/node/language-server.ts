import { readFileSync, realpathSync } from 'node:fs';
import path from 'node:path';

/** The language server as a program of its own, for any editor that speaks the protocol. */
const usage = `boothwright-language-server --stdio

Serves an editor over its standard streams, by the Language Server Protocol. Editors start it; it is of no use in a terminal.

  --stdio     over standard input and output
  --version   print the version
  --help      print this
`;
const [argument, ...more] = process.argv.slice(2);

if (argument === '--version') process.stdout.write(`${versionOf()}\n`);
else if (argument === '--help') process.stdout.write(usage);
else if (argument === '--stdio') void import('./main.js');
else {
  const wrong =
    argument === undefined ? 'Say how to reach the editor.' : `${[argument, ...more].join(' ')} is not known.`;
  process.stderr.write(`boothwright-language-server: ${wrong} It takes --stdio; --help says more.\n`);
  process.exitCode = 2;
}

/** The version of the package that this program is in. */
function versionOf(): string {
  const manifest = path.join(path.dirname(realpathSync(process.argv[1]!)), '../package.json');
  const { version } = JSON.parse(readFileSync(manifest, 'utf8')) as { version: string };
  return version;
}

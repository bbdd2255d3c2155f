// Writes the table of checks into README.md, between its two marks, from the catalogue itself.
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { format, resolveConfig } from 'prettier';

const root = fileURLToPath(new URL('..', import.meta.url));
const bundle = await build({
  entryPoints: [`${root}packages/fit/src/checks/catalogue.ts`],
  bundle: true,
  format: 'esm',
  write: false,
});
const { checks } = await import(
  `data:text/javascript;base64,${Buffer.from(bundle.outputFiles[0].text).toString('base64')}`
);

const cell = (text) => text.replaceAll('|', '\\|');
const rows = checks.map(
  ({ id, group, question, strength }) => `| ${group} | \`${id}\` | ${cell(question)} | ${strength} |`,
);
const table = ['| group | check | question | strength of its limit |', '| --- | --- | --- | --- |', ...rows].join('\n');
const readme = readFileSync(`${root}README.md`, 'utf8');
const [before, after] = [readme.split('<!-- checks -->')[0], readme.split('<!-- /checks -->')[1]];
const text = `${before}<!-- checks -->\n\n${table}\n\n<!-- /checks -->${after}`;
const file = `${root}README.md`;
writeFileSync(file, await format(text, { ...(await resolveConfig(file)), filepath: file }));
console.log(`README.md: ${checks.length} checks`);

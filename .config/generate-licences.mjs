// Lists the libraries that the bundles hold, with their licences: LICENCES.md, which ships with them. Stops at a licence that may not ship.
//   node .config/generate-licences.mjs [OUT.md]
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { shippedFolders } from './shipped.mjs';

const root = path.resolve(import.meta.dirname, '..');
/** Licences that let a product under the MIT licence hold the library, if it repeats their text. */
const allowed = new Set([
  'MIT',
  'ISC',
  'Apache-2.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  '0BSD',
  'BlueOak-1.0.0',
  '(MIT OR Apache-2.0)',
  'MIT-0',
  'Zlib',
  '(MIT AND Zlib)',
]);

const packages = (await shippedFolders())
  .map(read)
  .sort((a, b) => a.name.localeCompare(b.name, 'en') || a.version.localeCompare(b.version, 'en'));
const refused = packages.filter(({ licence }) => !allowed.has(licence));
if (refused.length > 0) {
  for (const { name, licence } of refused)
    console.error(`${name} has the licence ${licence}, which is not among those that may ship.`);
  process.exit(1);
}
writeFileSync(path.resolve(process.argv[2] ?? path.join(root, 'packages/extension/LICENCES.md')), text(packages));
console.log(`licences: ${packages.length} libraries ship`);

function read(folder) {
  const { name, version, license } = JSON.parse(readFileSync(path.join(root, folder, 'package.json'), 'utf8'));
  const files = readdirSync(path.join(root, folder)).filter((file) =>
    /^(licen[cs]e|notice|copying|third.?party)/i.test(file),
  );
  const texts = files
    .filter((file) => existsSync(path.join(root, folder, file)))
    .map((file) => readFileSync(path.join(root, folder, file), 'utf8'));
  return { name, version, licence: license ?? titleOf(texts), texts };
}

/** A library whose manifest names no licence may begin its text with the name of one. */
function titleOf([first = '']) {
  return first.startsWith('MIT License') ? 'MIT' : 'none';
}

/** A table of the libraries, then each text once, with those that it is of. */
function text(all) {
  const rows = all.map(({ name, version, licence }) => `| ${name} | ${version} | ${licence} |`);
  const byText = new Map();
  for (const { name, licence, texts } of all) {
    const own = texts.map((one) => one.replaceAll('\r\n', '\n').replaceAll('```', "'''").trim()).join('\n\n');
    const said = own || `The library names its licence, ${licence}, and ships no text of it.`;
    byText.set(said, [...(byText.get(said) ?? []), name]);
  }
  const sections = [...byText].map(
    ([said, names]) => `## ${[...new Set(names)].join(', ')}\n\n\`\`\`text\n${said}\n\`\`\``,
  );
  const head =
    '# Licences of what ships\n\nThe extension, the language server and the command line hold these libraries. Generated from the bundles.';
  return [head, ['| library | version | licence |', '| --- | --- | --- |', ...rows].join('\n'), ...sections, ''].join(
    '\n\n',
  );
}

// Writes the parser's tables (packages/language/src/generated) and the highlighting (syntaxes), both from the grammar.
import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const polyfill = pathToFileURL(`${root}.config/node20-polyfill.mjs`).href;
const options = `${process.env.NODE_OPTIONS ?? ''} --import=${polyfill}`.trim();
execFileSync(process.execPath, [`${root}node_modules/langium-cli/bin/langium.js`, 'generate', '--mode=production'], {
  cwd: root,
  env: { ...process.env, NODE_OPTIONS: options },
  stdio: ['ignore', 'ignore', 'inherit'],
});

const grammar = readFileSync(`${root}packages/language/src/grammar/booth.langium`, 'utf8');
const wordsOf = (rule) => {
  const body = new RegExp(`^${rule} returns string:([^;]*);`, 'm').exec(grammar)?.[1];
  if (body === undefined) throw new Error(`The grammar has no rule ${rule}.`);
  return [...body.matchAll(/'([a-z-]+)'/g)].map(([, word]) => word);
};
const anyOf = (words) =>
  `(?<![\\p{L}\\p{N}_-])(?:${[...words].sort((a, b) => b.length - a.length).join('|')})(?![\\p{L}\\p{N}_-])`;

const kinds = [...wordsOf('BlockKind'), ...wordsOf('NestedKind')];
const keys = [...wordsOf('PropertyKey'), ...wordsOf('NamesKey'), 'cover', 'users', 'between', 'limit'];
const flags = wordsOf('FlagKey');
const words = [...wordsOf('Direction'), ...wordsOf('Wall'), 'above', 'below', 'floor', 'reported'];
const name = '[\\p{L}_][\\p{L}\\p{M}\\p{N}_-]*';
const amount = '(?:\\d+(?:[ \\t]+|-)\\d+/\\d+|\\d+/\\d+|\\d*[¼-¾⅐-⅞]|\\d+(?:\\.\\d+)?|\\.\\d+)';
const unit =
  '(?:[ \\t]*(?:mm|cm|m|inches|inch|in|feet|foot|ft|degrees|deg|kg|lbs|lb|px)(?![\\p{L}\\p{N}_-])|[ \\t]*[°%]|[\'’′"“”″])';

const highlighting = {
  name: 'booth',
  scopeName: 'source.booth',
  fileTypes: ['booth'],
  patterns: [
    { include: '#comments' },
    { include: '#quantities' },
    { include: '#texts' },
    {
      match: `(${anyOf(kinds)})(?:[ \\t]+(${name}))?(?=\\s*(?:"[^"]*"\\s*)?\\{)`,
      captures: { 1: { name: 'storage.type.booth' }, 2: { name: 'entity.name.type.booth' } },
    },
    { name: 'keyword.control.booth', match: anyOf(['import', 'place', 'accept', 'because', 'and', 'in a row']) },
    { name: 'support.type.property-name.booth', match: anyOf([...keys, ...kinds]) },
    { name: 'constant.language.booth', match: anyOf([...flags, ...words]) },
    { name: 'punctuation.section.block.booth', match: '[{}]' },
    { name: 'punctuation.separator.booth', match: ',|\\.\\.' },
  ],
  repository: {
    comments: {
      patterns: [
        { name: 'comment.line.double-slash.booth', match: '//.*$' },
        { name: 'comment.block.booth', begin: '/\\*', end: '\\*/' },
      ],
    },
    quantities: {
      patterns: [
        { name: 'constant.numeric.booth', match: '(?<![\\p{L}_-])\\d+(?:\\.\\d+)?[ \\t]*[x×:][ \\t]*\\d+(?:\\.\\d+)?' },
        {
          name: 'constant.numeric.booth',
          match: `(?<![\\p{L}_-])[-−]?${amount}(${unit})?(?:[ \\t]*${amount}${unit})?`,
        },
      ],
    },
    texts: {
      patterns: [
        {
          name: 'string.quoted.double.booth',
          begin: '["“”]',
          end: '["“”]|$',
          patterns: [{ name: 'constant.character.escape.booth', match: '\\\\.' }],
        },
      ],
    },
  },
};
writeFileSync(`${root}syntaxes/booth.tmLanguage.json`, `${JSON.stringify(highlighting, null, 2)}\n`);
console.log(`language: parser tables and highlighting of ${new Set([...kinds, ...keys, ...flags]).size} words`);

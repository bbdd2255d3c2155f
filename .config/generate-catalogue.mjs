// Writes packages/fit/src/checks/catalogue.ts: the catalogue is the folder. A check file exports one constant, named as its id
// in camel case, from checks/<group>/<id>.ts; a file that exports none is a helper of its group.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../packages/fit/src/checks/', import.meta.url));
const groups = readdirSync(root, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name)
  .sort();
const checks = groups.flatMap((group) =>
  readdirSync(root + group)
    .filter((file) => file.endsWith('.ts') && !file.endsWith('.test.ts'))
    .sort()
    .map((file) => file.slice(0, -3))
    .map((id) => ({ id, group, name: id.replace(/-(\w)/g, (_, letter) => letter.toUpperCase()) }))
    .filter(({ id, name }) => readFileSync(`${root}${group}/${id}.ts`, 'utf8').includes(`export const ${name}: Check`)),
);

const lines = [
  '// Generated from the folders beside this file by `npm run generate`. Do not edit.',
  "import type { Check } from './check.js';",
  ...checks.map(({ id, group, name }) => `import { ${name} } from './${group}/${id}.js';`),
  '',
  '/** Every check, by group and id. */',
  'export const checks: readonly Check[] = [',
  ...checks.map(({ name }) => `  ${name},`),
  '];',
  '',
];
writeFileSync(`${root}catalogue.ts`, lines.join('\n'));
console.log(`catalogue: ${checks.length} checks in ${groups.length} groups`);

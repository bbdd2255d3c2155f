import { readdirSync, readFileSync } from 'node:fs';
import { type Booth, checks } from '@boothwright/fit';
import { parseHelper } from 'langium/test';
import { createBoothServices } from '../../packages/language/src/module.js';
import { silent } from '../../packages/language/src/testing/analysis.js';
import { memoryFiles, uriOf } from '../../packages/language/src/testing/memory.js';
import { BoothWriter } from '../fuzz/booths.js';
import { Random } from '../fuzz/random.js';

const folder = new URL('../../examples/', import.meta.url);
const exampleOf = (name: string) => readFileSync(new URL(name, folder), 'utf8');

export interface Some {
  readonly text: string;
  readonly booth: Booth;
}

/**
 * Booths of all kinds: the examples, what each check shows itself by, examples with another digit somewhere (what is like another is what could be
 * taken for it), and some that nobody would build.
 */
export async function someBooths(alike: number, written: number): Promise<readonly Some[]> {
  const random = new Random(20261127);
  const examples = readdirSync(folder).filter((name) => name.endsWith('.booth') && name !== 'furniture.booth');
  const withOtherDigit = (text: string) => {
    const at = random.pick([...text.matchAll(/\d/g)].map(({ index }) => index));
    return text.slice(0, at) + String(random.whole(1, 9)) + text.slice(at + 1);
  };
  const texts = [
    ...examples.map(exampleOf),
    ...checks.map(({ example }) => example.fires),
    ...examples.flatMap((name) => Array.from({ length: alike }, () => withOtherDigit(exampleOf(name)))),
    ...Array.from({ length: written }, () => new BoothWriter(random, 1).booth()),
  ];

  const files = memoryFiles({ 'furniture.booth': exampleOf('furniture.booth') });
  const { booth: services, shared } = createBoothServices({ fileSystemProvider: () => files, computation: silent });
  const booths: Some[] = [];
  for (const [index, text] of texts.entries()) {
    const document = await parseHelper(services)(text, { documentUri: uriOf(`hall-${index}.booth`).toString() });
    await shared.workspace.DocumentBuilder.build([document]);
    const assessed = services.Assessments.of(document);
    if (assessed) booths.push({ text, booth: assessed.booth });
  }
  return booths;
}

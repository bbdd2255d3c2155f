import { readdirSync, readFileSync } from 'node:fs';
import { type Booth, checks, type HeightPart } from '@boothwright/fit';
import { parseHelper } from 'langium/test';
import { expect, test, vi } from 'vitest';
import { createBoothServices } from '../../packages/language/src/module.js';
import { silent } from '../../packages/language/src/testing/analysis.js';
import { memoryFiles, uriOf } from '../../packages/language/src/testing/memory.js';
import { BoothWriter } from '../fuzz/booths.js';
import { Random } from '../fuzz/random.js';

type Fit = typeof import('@boothwright/fit');

const folder = new URL('../../examples/', import.meta.url);
const exampleOf = (name: string) => readFileSync(new URL(name, folder), 'utf8');
const examples = readdirSync(folder).filter((name) => name.endsWith('.booth') && name !== 'furniture.booth');
const random = new Random(20261127);

/** The same text with another digit somewhere: what is like another is what could be taken for it. */
function withOtherDigit(text: string): string {
  const digits = [...text.matchAll(/\d/g)].map(({ index }) => index);
  const at = random.pick(digits);
  return text.slice(0, at) + String(random.whole(1, 9)) + text.slice(at + 1);
}

const texts = [
  ...examples.map(exampleOf),
  ...checks.map(({ example }) => example.fires),
  ...examples.flatMap((name) => Array.from({ length: 3 }, () => withOtherDigit(exampleOf(name)))),
  ...Array.from({ length: 20 }, () => new BoothWriter(random, 1).booth()),
];

async function boothsOf(): Promise<Booth[]> {
  const files = memoryFiles({ 'furniture.booth': exampleOf('furniture.booth') });
  const { booth, shared } = createBoothServices({ fileSystemProvider: () => files, computation: silent });
  const booths: Booth[] = [];
  for (const [index, text] of texts.entries()) {
    const document = await parseHelper(booth)(text, { documentUri: uriOf(`hall-${index}.booth`).toString() });
    await shared.workspace.DocumentBuilder.build([document]);
    booths.push(...[booth.Assessments.of(document)?.booth ?? []].flat());
  }
  return booths;
}

/** The computation with nothing remembered. */
async function fresh(): Promise<Fit> {
  vi.resetModules();
  return import('@boothwright/fit');
}

const heights: readonly HeightPart[] = ['desk', 'seat', 'ring'];

test('what is remembered changes no answer: whatever was asked before, in whatever order', async () => {
  const booths = await boothsOf();
  expect(booths.length).toBeGreaterThan(70);
  const first = await fresh();
  const whole = ({ assess }: Fit, booth: Booth) => {
    const assessment = assess(booth);
    return { ...assessment, sketch: assessment.sketch };
  };
  const expected = booths.map((booth) => whole(first, booth));

  const second = await fresh();
  const chosen = checks.flatMap(({ chooses = [] }) => chooses);
  for (const [index, booth] of [...booths.entries()].reverse()) {
    const advice = second.advise(booth);
    for (const property of [...heights, ...chosen]) second.remediesOf(booth, property);
    expect(whole(second, booth), texts[index]).toEqual(expected[index]);
    expect(first.advise(booth), texts[index]).toEqual(advice);
  }
}, 120_000);

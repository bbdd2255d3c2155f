import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { advise, adviseStation, assess, type Assessment, checks, remediesOf } from '@boothwright/fit';
import { bundleFuzz } from '../../.config/fuzz-bundle.mjs';
import { caseOf } from './cases.js';
import { examine } from './examine.js';
import { Language } from './language.js';
import { examplesOf, fuzz } from './pool.js';
import { Random } from './random.js';

const root = path.resolve(import.meta.dirname, '../..');
const { examples, furniture } = examplesOf(root);
let folder: string;
let worker: string;

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'boothwright-fuzz-'));
  ({ worker } = await bundleFuzz(root, folder));
}, 60_000);

afterAll(() => rm(folder, { recursive: true }));

test('fifteen hundred texts go the whole way and break no rule', { timeout: 600_000 }, async () => {
  const failures = await fuzz(root, { seed: 20_260_101, cases: 1500, jobs: 2, worker, deadline: 60_000 });
  expect(failures.map(({ index, why, text }) => ({ index, why, text }))).toEqual([]);
});

describe('texts that once broke a rule', () => {
  const language = new Language(furniture);
  test.each([
    ['a balcony over a room without a width', 'booth "A" { }\nroom { balcony { edge 20ft } }'],
    ['a form feed among the white space', 'desk Left { width 6 \f t }'],
    ['a comment that is never closed and ends with its line', 'skirt Front { drop 46in /*width 8ft }\n'],
  ])('%s', async (_, text) => {
    for (let seed = 0; seed < 5; seed++)
      await examine({ text, made: 'known', random: new Random(seed) }, language, 'whole');
  });
});

test('the same seed and number give the same text, another number another', () => {
  const texts = Array.from({ length: 200 }, (_, index) => caseOf(7, index, examples).text);
  expect(Array.from({ length: 200 }, (_, index) => caseOf(7, index, examples).text)).toEqual(texts);
  expect(new Set(texts).size).toBeGreaterThan(180);
});

describe('the search finds what it looks for', () => {
  const text =
    'booth "Hall" { }\nroom { width 40ft  depth 60ft }\nwalkway Behind { between back-wall and stage-wall  serves 9 }\n';
  const one = () => ({ text, made: 'by hand', random: new Random(1) });
  const computing = (change: (assessment: Assessment) => Assessment): Language =>
    new Language(furniture, {
      assess: (booth) => change(assess(booth)),
      remediesOf,
      advise,
      adviseStation,
      checks: checks.map(({ id }) => id),
    });

  test.each<[string, (assessment: Assessment) => Assessment]>([
    [
      'NaN',
      (assessment) => ({ ...assessment, walkways: assessment.walkways.map((each) => ({ ...each, clear: NaN })) }),
    ],
    [
      'undefined',
      ({ findings, ...rest }) => ({
        ...rest,
        findings: findings.map((each) => ({ ...each, message: `${undefined} m` })),
      }),
    ],
    [
      'which the text does not have',
      ({ findings, ...rest }) => ({
        ...rest,
        findings: findings.map((each) => ({ ...each, origin: { ...each.origin!, end: { line: 99, character: 9 } } })),
      }),
    ],
    [
      'Boom',
      (): Assessment => {
        throw new Error('Boom');
      },
    ],
  ])('in what is computed: %s', async (what, change) => {
    await expect(examine(one(), computing(change), 'quick')).rejects.toThrow(what);
    await expect(
      examine(
        one(),
        computing((same) => same),
        'whole',
      ),
    ).resolves.toBeUndefined();
  });

  test.each<[string, (text: string) => string]>([
    ['changed a word', (all) => all.replace('Hall', 'Ball')],
    ['twice is not', (all) => `${all} `],
  ])('in a formatter: %s', async (what, change) => {
    const language = new Language(furniture);
    language.format = ({ textDocument }) => [
      {
        range: { start: { line: 0, character: 0 }, end: textDocument.positionAt(textDocument.getText().length) },
        newText: change(textDocument.getText()),
      },
    ];
    await expect(examine(one(), language, 'quick')).rejects.toThrow(what);
  });

  test('in a case that never ends, and goes on after it', async () => {
    const hanging = path.join(folder, 'hanging.mjs');
    await writeFile(
      hanging,
      `import { parentPort, workerData } from 'node:worker_threads';
       new Int32Array(workerData.progress)[0] = workerData.from;
       if (workerData.from < 2) for (;;);
       parentPort.postMessage('done');`,
    );
    const failures = await fuzz(root, { seed: 1, cases: 4, jobs: 1, worker: hanging, deadline: 500 });
    expect(failures.map(({ index, why }) => [index, why])).toEqual([
      [0, 'took longer than 0.5 s'],
      [1, 'took longer than 0.5 s'],
    ]);
  });
});

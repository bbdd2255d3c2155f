import { readdirSync, readFileSync } from 'node:fs';
import { checks } from '@boothwright/fit';
import { describe, expect, test } from 'vitest';
import type { FileDiagnostic } from '../analyse.js';
import { analyseFiles } from '../testing/analysis.js';

const root = new URL('../../../../examples/', import.meta.url);
const furniture = readFileSync(new URL('furniture.booth', root), 'utf8');
const texts = [
  ...readdirSync(root)
    .filter((name) => name.endsWith('.booth'))
    .map((name) => [name, readFileSync(new URL(name, root), 'utf8')] as const),
  ...checks.map(({ id, example }) => [`the example of ${id}`, example.fires] as const),
];

const known = new Map<string, Promise<FileDiagnostic[]>>();

function findingsOf(text: string): Promise<FileDiagnostic[]> {
  const findings = known.get(text) ?? find(text);
  known.set(text, findings);
  return findings;
}

async function find(text: string): Promise<FileDiagnostic[]> {
  const { diagnostics } = await analyseFiles({ 'hall.booth': text, 'furniture.booth': furniture });
  return diagnostics.filter(({ kind, uri }) => kind === 'finding' && uri.endsWith('hall.booth'));
}

describe('a finding points at one word or value', { timeout: 60_000 }, () => {
  test.each(texts)('in %s', async (_, text) => {
    const lines = text.split('\n');
    for (const { start, end, code } of await findingsOf(text)) {
      expect(end.line).toBe(start.line);
      const word = lines[start.line]!.slice(start.character, end.character);
      expect(word, code).toMatch(
        /^([\p{L}_][\p{L}\p{N}_-]*|"[^"]*"|[\d/'". ]+[a-z%"']*( (left|right|back|forward))?)$/u,
      );
    }
  });
});

/** Of one thing, so that there is no other end to lead to. */
const ofOne = [
  'legs-fit-top',
  'mix-position',
  'platform-step',
  'screen-turn',
  'skirt-flame',
  'walkway-capacity',
  'walkway-pinch',
  'walkway-projection',
  'walkway-turn',
];

test('a finding of two things leads to the other one', { timeout: 60_000 }, async () => {
  const findings = (await Promise.all(texts.map(([, text]) => findingsOf(text)))).flat();
  const withOtherEnd = new Set(findings.filter(({ related }) => related.length > 0).map(({ code }) => code));
  const seen = new Set(findings.map(({ code }) => code));
  expect([...seen].filter((code) => !withOtherEnd.has(code)).sort()).toEqual(ofOne);
});

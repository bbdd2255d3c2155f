import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { keysOfManifest, sentencesOfManifest } from './words/manifest.js';
import { placeholdersOf, sentences, sourceNames } from './words/sentences.js';

const folder = path.resolve(import.meta.dirname, '../packages/extension/l10n');
const bundles = readdirSync(folder).filter((name) => /^bundle\.l10n\.\w+\.json$/.test(name));
const english = sentences();

it('there is a translation to German', () => {
  expect(bundles).toContain('bundle.l10n.de.json');
  expect(english.size).toBeGreaterThan(500);
});

it('every sentence stands alone: nothing is left to be glued before or after it', () => {
  const frayed = [...english.keys()].filter((sentence) => sentence !== sentence.trim() || /^[,;:.)]/.test(sentence));
  expect(frayed).toEqual([]);
});

describe.each(bundles)('%s', (name) => {
  const translation = JSON.parse(readFileSync(path.join(folder, name), 'utf8')) as Record<string, string>;
  const known = new Map(Object.entries(translation));

  it('has every sentence', () => {
    const missing = [...english]
      .filter(([sentence]) => !known.get(sentence))
      .map(([sentence, where]) => ({ sentence, where }));
    expect(missing, 'give each of these a line in the file').toEqual([]);
  });

  it('has no sentence that nobody says', () => {
    const stale = [...known.keys()].filter((sentence) => !english.has(sentence) && !sourceNames().has(sentence));
    expect(stale, 'take these lines out of the file').toEqual([]);
  });

  it('fills in what the English sentence fills in', () => {
    const wrong = [...known].filter(
      ([sentence, translated]) => placeholdersOf(sentence).join() !== placeholdersOf(translated).join(),
    );
    expect(wrong).toEqual([]);
  });

  it('keeps code as it is: what stands between backticks is typed into a file', () => {
    const codeOf = (text: string) => (text.match(/`[^`]*`/g) ?? []).sort().join();
    expect([...known].filter(([sentence, translated]) => codeOf(sentence) !== codeOf(translated))).toEqual([]);
  });

  it('is sorted, so that two people add lines without meeting', () => {
    expect([...known.keys()]).toEqual([...known.keys()].sort());
  });
});

describe('the manifest', () => {
  const [own, german] = [sentencesOfManifest('en'), sentencesOfManifest('de')];

  it('asks for each sentence that there is, and for no other', () => {
    expect([...new Set(keysOfManifest())].sort()).toEqual(Object.keys(own).sort());
    expect(Object.keys(german).sort()).toEqual(Object.keys(own).sort());
  });

  it.each(Object.keys(own))('%s is German, with the same links', (key) => {
    const linksOf = (text: string) => text.match(/\(command:[^)]*\)/g);
    expect(linksOf(german[key]!)).toEqual(linksOf(own[key]!));
    expect(german[key]).not.toBe(own[key]);
  });
});

import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readManifest } from '../words/manifest.js';

interface Setting {
  readonly type: string;
  readonly default: unknown;
  readonly markdownDescription?: string;
}

const manifest = readManifest() as {
  contributes: { configuration: { properties: Record<string, Setting> } };
};
const settings = manifest.contributes.configuration.properties;
const hints = readFileSync(new URL('../../packages/language/src/lsp/hints.ts', import.meta.url), 'utf8');

test('each kind of hint has a setting that shows it by default, and no setting is without a kind', () => {
  const kinds = /type HintKind = ([^;]*);/.exec(hints)![1]!.match(/\w+/g)!;
  const named = Object.keys(settings).filter((key) => key.startsWith('boothwright.hints.'));
  expect(named.sort()).toEqual(kinds.map((kind) => `boothwright.hints.${kind}`).sort());
  for (const key of named) expect(settings[key]).toMatchObject({ type: 'boolean', default: true });
});

test('each setting says what it does', () => {
  for (const [key, { markdownDescription }] of Object.entries(settings))
    expect(markdownDescription?.length, key).toBeGreaterThan(20);
});

test.each(Object.keys(settings))('each setting is tried: %s', (key) => {
  const section = key.replace(/^boothwright\./, '');
  const tried = section.startsWith('hints.')
    ? readFileSync(new URL('../../packages/language/src/lsp/server.test.ts', import.meta.url), 'utf8')
    : readFileSync(new URL('../editor/client.test.ts', import.meta.url), 'utf8');
  expect(tried).toContain(section.startsWith('hints.') ? `${section.slice('hints.'.length)}: false` : `'${key}': `);
});

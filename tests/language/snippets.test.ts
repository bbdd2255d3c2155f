import { readFileSync } from 'node:fs';
import { EmptyFileSystem, URI } from 'langium';
import { expectFormatting } from 'langium/test';
import { describe, expect, test } from 'vitest';
import { createAnalyser, createBoothServices, vocabulary } from '@boothwright/language';
import { smallBooths } from '../../packages/language/src/lsp/small-booth.js';

interface Snippet {
  readonly description: string;
  readonly body: readonly string[];
}

const file = new URL('../../packages/extension/snippets/booth.json', import.meta.url);
const snippets = Object.entries(JSON.parse(readFileSync(file, 'utf8')) as Record<string, Snippet>);
const bodyOf = (name: string) => snippets.find(([each]) => each === name)![1].body.join('\n');
const textOf = (name: string) => expand(bodyOf(name));
const small = textOf('A small booth, in feet and inches');
const analyser = createAnalyser({ fileSystem: EmptyFileSystem.fileSystemProvider() });
const analyse = (text: string) => analyser({ uri: URI.parse('file:///hall.booth'), text });
const { booth: services } = createBoothServices(EmptyFileSystem);
const format = expectFormatting(services);

describe('each snippet, as it is before anybody types into it', () => {
  test.each(snippets)('%s: has no error, where it belongs', async (_, { body }) => {
    const { diagnostics, assessment } = await analyse(within(expand(body.join('\n'))));
    expect(diagnostics.filter(({ severity, kind }) => severity === 'error' || kind === 'text')).toEqual([]);
    expect(assessment!.findings.length).toBeGreaterThan(20);
  });

  test.each(snippets.filter(([name]) => name !== 'A control'))(
    '%s: stands as the formatter would put it',
    async (_, { body }) => {
      const text = expand(body.join('\n'));
      await format({ before: text, after: text, options: { tabSize: 2, insertSpaces: true } });
    },
  );

  test.each(snippets)('%s: stops at places to fill in, and says what it is for', (_, { body, description }) => {
    expect(body.join('\n')).toMatch(/\$\{1[:|]/);
    expect(body.join('\n')).toContain('$0');
    expect(description).toMatch(/^[A-Z].*\.$/);
  });

  test.each(snippets)('%s: has no abbreviation, since completion offers the same where it belongs', (_, snippet) => {
    expect(snippet).not.toHaveProperty('prefix');
  });
});

test('the small booths are the ones that completion offers', () => {
  const bodies = ['A small booth, in feet and inches', 'A small booth, metric'].map((name) => bodyOf(name));
  expect(bodies).toEqual(smallBooths().map(({ snippet }) => `${snippet}$0`));
});

test.each(['A small booth, in feet and inches', 'A small booth, metric'])('%s: nothing fails', async (name) => {
  const { assessment } = await analyse(textOf(name));
  expect(assessment!.findings.filter(({ verdict }) => verdict === 'fail')).toEqual([]);
});

test('every declaration that may stand in a file has a snippet', () => {
  const words = vocabulary.filter(({ within }) => within === 'file').map(({ word }) => word);
  const bodies = snippets.map(([, { body }]) => body.join('\n'));
  expect(words.filter((word) => !bodies.some((body) => new RegExp(`^${word}\\b`, 'm').test(body)))).toEqual([]);
});

/** What the editor inserts: each tab stop with its first value. */
function expand(body: string): string {
  const values = new Map<string, string>();
  const filled = body
    .replace(/\$\{(\d+)\|((?:\\.|[^\\,|])*)[^|]*\|\}/g, (_, stop: string, first: string) => {
      values.set(stop, first.replace(/\\(.)/g, '$1'));
      return values.get(stop)!;
    })
    .replace(/\$\{(\d+):([^}]*)\}/g, (_, stop: string, value: string) => {
      values.set(stop, value);
      return value;
    });
  return filled.replace(/\$(\d+)/g, (_, stop: string) => values.get(stop) ?? '');
}

/** A whole file with that text in it: itself, or the small booth with it. */
function within(text: string): string {
  if (text.startsWith('booth')) return text;
  if (text.startsWith('room')) return small.replace(/^room .*$/m, text);
  if (text.startsWith('control')) return small.replace(/^ {2}posture .*$/m, (line) => `${line}\n  ${text}`);
  return small + text;
}

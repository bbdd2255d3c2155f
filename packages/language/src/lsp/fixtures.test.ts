import { URI } from 'langium';
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { createBoothServices } from '../module.js';
import { type Case, casesOf, withOutputs, withoutCarets } from '../testing/fixtures.js';
import { memoryFiles, uriOf } from '../testing/memory.js';
import { views } from '../testing/views.js';

const root = new URL('../../../../tests/fixtures/editor/', import.meta.url);
const features = readdirSync(root).sort();
const filesOf = (feature: string) => readdirSync(new URL(`${feature}/`, root)).filter((name) => name.endsWith('.md'));

/** What the feature shows of a case, in services of its own. */
async function shown(feature: string, { files }: Case): Promise<string> {
  const texts = files.map(({ name, text }) => ({ name, ...withoutCarets(text) }));
  const memory = memoryFiles(Object.fromEntries(texts.map(({ name, text }) => [name, text])));
  const { shared, booth } = createBoothServices({ fileSystemProvider: () => memory });
  await shared.workspace.WorkspaceManager.initializeWorkspace([{ name: 'hall', uri: 'file:///hall' }]);
  const { LangiumDocuments, DocumentBuilder } = shared.workspace;
  const document = await LangiumDocuments.getOrCreateDocument(URI.parse(uriOf(texts[0]!.name).toString()));
  await DocumentBuilder.build([document], { validation: true });
  const carets = texts[0]!.carets.map((caret) => document.textDocument.positionAt(caret));
  return views[feature]!({ document, carets, services: booth });
}

test('every feature that can be shown has fixtures, and no folder is without a view', () => {
  expect(features).toEqual(Object.keys(views).sort());
});

describe.each(features)('%s', (feature) => {
  test.each(filesOf(feature))('%s', async (name) => {
    const file = new URL(`${feature}/${name}`, root);
    const markdown = readFileSync(file, 'utf8');
    const cases = casesOf(markdown);
    expect(cases.length).toBeGreaterThan(0);
    const outputs: string[] = [];
    for (const each of cases) outputs.push(await shown(feature, each));
    await expect(withOutputs(markdown, outputs)).toMatchFileSnapshot(fileURLToPath(file));
  });
});

import { readdirSync, readFileSync } from 'node:fs';
import { advise, type Assessment, checks, speak } from '@boothwright/fit';
import { createBoothServices, kinds, vocabulary } from '@boothwright/language';
import { nodeFileSystem } from '@boothwright/language/node';
import { type LangiumDocument, URI } from 'langium';
import { expect, test } from 'vitest';
import type { Hover, MarkupContent } from 'vscode-languageserver-types';
import { placeholdersOf, sentences, sourceNames } from './sentences.js';

/** A language without words: of each sentence it says only what is filled in. Whatever words are left were not translated. */
const german = JSON.parse(
  readFileSync(new URL('../../packages/extension/l10n/bundle.l10n.de.json', import.meta.url), 'utf8'),
) as object;
const spoken = [...new Set([...sentences().keys(), ...Object.keys(german)])];
speak(Object.fromEntries(spoken.map((key) => [key, placeholdersOf(key).join(' ')])));

const folder = new URL('../../examples/', import.meta.url);
const files = readdirSync(folder)
  .filter((name) => name.endsWith('.booth'))
  .map((name) => ({ uri: new URL(name, folder).href, text: readFileSync(new URL(name, folder), 'utf8') }));
const examples = checks.flatMap(({ id, example }) =>
  [example.fires, example.passes].map((text, index) => ({ uri: `file:///examples/${id}-${index}.booth`, text })),
);
const faults = [
  'booth { widht 3 }\ndesk Left { width 60, 3in  height 40m  foo  seat 3in }\nskirt A { on Lfet  drop }\nplace Left',
  'booth "A" { limit reach 3in  accept reachh  show yards }\nroom { stage { edge 3..2ft } door D { on Left } }\nroom {',
  'desk Left { width 60kg  height 3..  top -3in }\ndesk Left { } workstation W { desk W  posture lie  crowd }\nimport "a"',
].map((text, index) => ({ uri: `file:///faults/${index}.booth`, text }));

const { shared, booth: services } = createBoothServices({ fileSystemProvider: nodeFileSystem });

/** The checked document; a file that another one imports may be there already. */
async function read({ uri, text }: { uri: string; text: string }): Promise<LangiumDocument> {
  const { LangiumDocuments, DocumentBuilder } = shared.workspace;
  const address = URI.parse(uri);
  const document = LangiumDocuments.getDocument(address) ?? LangiumDocuments.createDocument(address, text);
  await DocumentBuilder.build([document], { validation: true });
  return document;
}

/** What an editor shows of a document. */
async function shown(document: LangiumDocument): Promise<string[]> {
  const place = { textDocument: { uri: document.uri.toString() } };
  const { textDocument } = document;
  const range = { start: { line: 0, character: 0 }, end: textDocument.positionAt(textDocument.getText().length) };
  const diagnostics = document.diagnostics ?? [];
  const { CodeActionProvider, CodeLensProvider, InlayHintProvider, HoverProvider } = services.lsp;
  const actions = await CodeActionProvider!.getCodeActions(document, { ...place, range, context: { diagnostics } });
  const lenses = await CodeLensProvider!.provideCodeLens(document, place);
  const hints = await InlayHintProvider!.getInlayHints(document, { ...place, range });
  const words = [...textDocument.getText().matchAll(/\S+/g)];
  const hovers = words.map(({ index }) =>
    HoverProvider!.getHoverContent(document, { ...place, position: textDocument.positionAt(index) }),
  ) as (Hover | undefined)[];
  const assessment = services.Assessments.safelyOf(document)?.assessment;
  return [
    ...diagnostics.flatMap(({ message, relatedInformation = [] }) => [
      message as string,
      ...relatedInformation.map((related) => related.message),
    ]),
    ...(actions ?? []).map(({ title }) => title),
    ...(lenses ?? []).map(({ command }) => command!.title),
    ...(hints ?? []).flatMap(({ label, tooltip }) => [label as string, tooltip as string]),
    ...hovers.flatMap((hover) => (hover ? [(hover.contents as MarkupContent).value] : [])),
    ...(assessment ? told(assessment) : []),
  ];
}

function told({ findings }: Assessment): string[] {
  return findings.flatMap(({ message, terms = '', caution = '', assumptions, related, remedies }) => [
    ...[message, terms, caution, ...assumptions],
    ...related.map((one) => one.message),
    ...remedies.map(({ title }) => title),
  ]);
}

const wordsIn = (text: string) => text.match(/[A-Za-z][a-z’'-]+/g) ?? [];

/** The language’s own words, which are typed; the names of documents, which stay; units. */
const typed = new Set([
  ...vocabulary.flatMap(({ word, example, properties }) =>
    [
      word,
      example,
      ...properties.flatMap(({ key, aliases = [], example: value, shape, default: usual = '' }) => [
        ...[key, value, usual, ...aliases],
        ...('words' in shape ? shape.words : []),
      ]),
    ].flatMap(wordsIn),
  ),
  ...Object.keys(kinds).flatMap(wordsIn),
  ...checks.flatMap(({ id }) => wordsIn(id)),
  ...[...sourceNames()].filter((name) => !spoken.includes(name)).flatMap(wordsIn),
  ...wordsIn('mm cm m in ft kg lb deg px above below accept because import limit place at booth'),
  ...wordsIn('back-wall left-wall right-wall stage-wall landmarks seating stage'),
]);

test.each([...files, ...examples, ...faults])('$uri: no word is left to translate', async (file) => {
  const document = await read(file);
  const own = new Set([...typed, ...wordsIn(file.text), ...files.flatMap(({ text }) => wordsIn(text))]);
  const texts = await shown(document);
  expect(texts.length).toBeGreaterThan(3);
  const left = texts.filter((text) => wordsIn(text).some((word) => !own.has(word)));
  expect([...new Set(left)].map((text) => [text, wordsIn(text).filter((word) => !own.has(word))])).toEqual([]);
});

test.each(files.filter(({ uri }) => !uri.endsWith('/furniture.booth')))(
  '$uri: no word of its advice is left to translate',
  async (file) => {
    const assessed = services.Assessments.safelyOf(
      await read({ ...file, uri: file.uri.replace(/\.booth$/, '-advised.booth') }),
    );
    const { stations, measure, shopping } = advise(assessed!.booth);
    const texts = [
      ...stations.flatMap(({ plans, notes }) => [...plans.map(({ title }) => title), ...notes]),
      ...measure.map(({ how }) => how),
      ...shopping.flatMap(({ item, wants }) => [item, ...wants]),
    ];
    expect(texts.length).toBeGreaterThan(3);
    const own = new Set([...typed, ...files.flatMap(({ text }) => wordsIn(text))]);
    expect(texts.filter((text) => wordsIn(text).some((word) => !own.has(word)))).toEqual([]);
  },
);

import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import type { URI } from 'langium';
import { expect, test } from 'vitest';
import { assess, type Assessment } from '@boothwright/fit';
import { createBoothServices } from '../../packages/language/src/module.js';
import { memoryFiles, uriOf } from '../../packages/language/src/testing/memory.js';

const names = ['furniture', 'larkfield-hall', 'oakmere-annex-worst', 'millbrook-room-sit-desk'];
const texts = Object.fromEntries(
  names.map((name) => [
    `${name}.booth`,
    readFileSync(new URL(`../../examples/${name}.booth`, import.meta.url), 'utf8'),
  ]),
);

/** Over a digit, as people type; or anywhere, to break things. */
const edit = fc.oneof(
  { weight: 5, arbitrary: fc.record({ at: fc.nat(), digit: fc.nat(9) }) },
  {
    weight: 2,
    arbitrary: fc.record({
      at: fc.nat(),
      length: fc.nat(3),
      insert: fc.constantFrom('', '\n', ' ', '1', 'sit', 'x', '{', '}', 'Noor', 'desk New { width 60in }\n'),
    }),
  },
);

function applied(text: string, change: { at: number; digit?: number; length?: number; insert?: string }): string {
  const digits = [...text.matchAll(/\d/g)].map(({ index }) => index);
  const from = change.digit === undefined ? change.at % (text.length + 1) : digits[change.at % digits.length]!;
  const insert = change.insert ?? String(change.digit);
  return text.slice(0, from) + insert + text.slice(from + (change.length ?? 1));
}

/** The sketch is made when it is first read: here it is. */
function whole(assessment: Assessment | undefined): unknown {
  return assessment && { ...assessment, sketch: assessment.sketch };
}

test('after any edits the assessment is that of a booth never seen before, digit for digit', async () => {
  const files = memoryFiles(texts);
  const { shared, booth: services } = createBoothServices({ fileSystemProvider: () => files });
  const { DocumentBuilder, LangiumDocuments } = shared.workspace;
  const other = createBoothServices({ fileSystemProvider: () => files });
  const readAnew = async (uri: URI) => {
    const all = other.shared.workspace.LangiumDocuments.all.map((document) => document.uri).toArray();
    await other.shared.workspace.DocumentBuilder.update([uri], all);
    const document = other.shared.workspace.LangiumDocuments.getDocument(uri)!;
    return { booth: other.booth.Assessments.of(document)?.booth, diagnostics: document.diagnostics };
  };
  await fc.assert(
    fc.asyncProperty(fc.constantFrom(...names), fc.array(edit, { minLength: 1, maxLength: 5 }), async (name, edits) => {
      const file = `${name}.booth`;
      const uri = uriOf(file);
      let text = texts[file]!;
      for (const change of edits) {
        text = applied(text, change);
        files.files.set(uri.toString(), text);
        await DocumentBuilder.update([uri], []);
        const document = LangiumDocuments.getDocument(uri)!;
        const anew = await readAnew(uri);
        expect(document.diagnostics).toEqual(anew.diagnostics);
        expect(services.Assessments.of(document)?.booth).toEqual(anew.booth);
        for (const name of names) {
          const seen = LangiumDocuments.getDocument(uriOf(`${name}.booth`));
          const found = seen && services.Assessments.of(seen);
          if (!found) continue;
          expect(whole(found.assessment)).toEqual(whole(assess(structuredClone(found.booth))));
        }
      }
      files.files.set(uri.toString(), texts[file]!);
      await DocumentBuilder.update([uri], []);
    }),
    { numRuns: 40 },
  );
}, 240_000);

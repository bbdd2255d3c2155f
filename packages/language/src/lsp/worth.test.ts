import { AstUtils, CstUtils, EmptyFileSystem, type LangiumDocument } from 'langium';
import { parseHelper } from 'langium/test';
import { adviseStation, assess, checks } from '@boothwright/fit';
import type { Position } from 'vscode-languageserver-types';
import { describe, expect, test, vi } from 'vitest';
import { isHolder, entryOfProperty, isPropertyNode, kindOf } from '../syntax/tree.js';
import { createBoothServices } from '../module.js';
import { vocabulary } from '../vocabulary/vocabulary.js';

const { booth: services } = createBoothServices(EmptyFileSystem);
const parse = parseHelper(services);

/** The property at a place: 'desk height'. A placement is moved as a whole, and not by completion. */
function propertyAt(document: LangiumDocument, place: Position): string[] {
  const root = document.parseResult.value.$cstNode!;
  const leaf = CstUtils.findLeafNodeAtOffset(root, document.textDocument.offsetAt(place));
  const property = leaf && AstUtils.getContainerOfType(leaf.astNode, isPropertyNode);
  const holder = property?.$container;
  if (!isHolder(holder) || kindOf(holder) === 'place') return [];
  return [`${kindOf(holder)} ${entryOfProperty(property!)!.key}`];
}

const changed = new Set<string>();
for (const { example } of checks) {
  const document = await parse(example.fires, { validation: true });
  const findings = services.Assessments.safelyOf(document)?.assessment.findings ?? [];
  const single = findings.flatMap(({ remedies }) => remedies).filter(({ changes }) => changes.length === 1);
  for (const { changes } of single) for (const key of propertyAt(document, changes[0]!.origin.start)) changed.add(key);
}
const marked = vocabulary.flatMap(({ kind, properties }) =>
  properties.filter(({ hasBest }) => hasBest).map(({ key }) => `${kind} ${key}`),
);

test('every property that a check can choose a value for is marked so', () => {
  expect(changed.size).toBeGreaterThan(8);
  expect([...changed].filter((key) => !marked.includes(key))).toEqual([]);
});

describe('nothing is computed', () => {
  const hall = 'booth "H" { }\ndesk Left { width 60in  height 40in }\nworkstation S { desk Left }';
  const run = vi.fn(assess);
  const { booth: watched } = createBoothServices({
    ...EmptyFileSystem,
    computation: {
      assess: (booth) => run(booth),
      advise: () => ({ stations: [], measure: [], shopping: [] }),
      adviseStation,
      checks: [],
    },
  });

  test.each([
    ['width 60in', 0],
    ['height 40in', 1],
  ])('at %s unless its best value can be said: %i more', async (property, more) => {
    const document = await parseHelper(watched)(hall, { validation: true });
    run.mockClear();
    const position = document.textDocument.positionAt(hall.indexOf(property) + property.length);
    await watched.lsp.CompletionProvider!.getCompletion(document, {
      textDocument: { uri: document.uri.toString() },
      position,
    });
    expect(run).toHaveBeenCalledTimes(more);
  });
});

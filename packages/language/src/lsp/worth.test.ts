import { readdirSync, readFileSync } from 'node:fs';
import { AstUtils, CstUtils, EmptyFileSystem, type LangiumDocument } from 'langium';
import { parseHelper } from 'langium/test';
import {
  adviseStation,
  assess,
  type Check,
  checks,
  type ChosenProperty,
  type HeightPart,
  type Remedy,
  remediesOf,
} from '@boothwright/fit';
import type { Position } from 'vscode-languageserver-types';
import { describe, expect, test, vi } from 'vitest';
import type { Property } from '../generated/ast.js';
import { isProperty } from '../generated/ast.js';
import { isHolder, entryOfProperty, isPropertyNode, kindOf } from '../syntax/tree.js';
import { createBoothServices } from '../module.js';
import { memoryFiles, uriOf } from '../testing/memory.js';
import { vocabulary } from '../vocabulary/vocabulary.js';

const folder = new URL('../../../../examples/', import.meta.url);
const exampleOf = (name: string) => readFileSync(new URL(name, folder), 'utf8');
const files = () => memoryFiles({ 'furniture.booth': exampleOf('furniture.booth') });
const { booth: services, shared } = createBoothServices({ fileSystemProvider: files });
const parse = parseHelper(services);
const texts = [
  ...checks.map(({ id, example }) => ({ name: `${id}.booth`, text: example.fires })),
  ...readdirSync(folder)
    .filter((name) => name.endsWith('.booth') && name !== 'furniture.booth')
    .map((name) => ({ name, text: exampleOf(name) })),
];

const booths: { readonly name: string; readonly text: string; readonly document: LangiumDocument }[] = [];
for (const { name, text } of texts) {
  const document = await parse(text, { documentUri: uriOf(name).toString() });
  await shared.workspace.DocumentBuilder.build([document]);
  booths.push({ name, text, document });
}

/** The property at a place: 'desk height'. */
function nameOf(property: Property): string {
  const holder = property.$container;
  return isHolder(holder) ? `${kindOf(holder)} ${entryOfProperty(property)?.key}` : '';
}

function propertyAt(document: LangiumDocument, place: Position): Property | undefined {
  const root = document.parseResult.value.$cstNode!;
  const leaf = CstUtils.findLeafNodeAtOffset(root, document.textDocument.offsetAt(place));
  const property = leaf && AstUtils.getContainerOfType(leaf.astNode, isPropertyNode);
  return isProperty(property) ? property : undefined;
}

const heights = ['desk height', 'stool seat', 'chair seat', 'stool foot-ring', 'chair foot-ring'];
const chosenBy = ({ rule, chooses = [] }: Check): readonly string[] => [...(rule ? heights : []), ...chooses];
/** Of a placement, which a remedy moves as a whole. */
const isPlace = (name: string) => name.startsWith('place ');

test('what a check sets by itself is what it says it chooses', () => {
  const seen = new Set<string>();
  for (const { name: file, document } of booths) {
    for (const { check, remedies } of services.Assessments.of(document)?.assessment.findings ?? [])
      for (const { changes } of remedies) {
        const [change] = changes;
        if (!change || changes.length > 1 || change.origin.uri !== document.uri.toString()) continue;
        const name = nameOf(propertyAt(document, change.origin.start)!);
        if (isPlace(name)) continue;
        expect(chosenBy(checks.find(({ id }) => id === check)!), `${check} in ${file}`).toContain(name);
        seen.add(name);
      }
  }
  expect(seen.size).toBeGreaterThan(8);
});

test('what the checks choose are properties of the language', () => {
  const known = vocabulary.flatMap(({ kind, properties }) => properties.map(({ key }) => `${kind} ${key}`));
  expect(known).toEqual(expect.arrayContaining(checks.flatMap(chosenBy)));
});

test('a value that is tried by reading its block alone is as in a text of its own', async () => {
  const parts: Partial<Record<string, HeightPart>> = {
    'desk height': 'desk',
    'stool seat': 'seat',
    'chair seat': 'seat',
    'stool foot-ring': 'ring',
  };
  const chosen = new Set<string>(checks.flatMap(({ chooses = [] }) => chooses));
  /** Values that suit nobody. */
  const seeds: Record<string, string> = {
    'desk height': '1200mm',
    'stool seat': '900mm',
    'chair seat': '700mm',
    'stool foot-ring': '100mm below seat',
    'monitor text': '6px',
    'skirt length': '600mm',
    'screen tilt': '40deg back',
    'screen turn': '80deg left',
    'screen bottom': '800mm above desk',
    'screen centre': '800mm above desk',
    'screen top': '800mm above desk',
    'control setback': '700mm',
    'seating first': '10mm',
    // A text that differs from the file, which says so already.
    'door opens': 'in ',
  };
  const wholly = vi.spyOn(services.Trial, 'assess');
  const seen = new Map<string, number>();
  for (const { text: before, document } of booths) {
    const { assessment } = services.Assessments.of(document)!;
    const references = [...document.references];
    for (const slot of AstUtils.streamAllContents(document.parseResult.value).filter(isProperty)) {
      const name = nameOf(slot);
      const property = parts[name] ?? (chosen.has(name) ? (name as ChosenProperty) : undefined);
      const value = slot.values[0]?.$cstNode;
      if (!property || !value) continue;
      const text = before.slice(0, value.offset) + (seeds[name] ?? '60mm') + before.slice(value.end);
      const there = (remedies: readonly Remedy[]) =>
        remedies.filter(({ changes }) => changes.length === 1 && isAt(changes[0]!.origin.start, value.range.start));

      wholly.mockClear();
      const tried = there(remediesOf((await services.Trial.boothOf(document, text))!, property));
      expect(wholly).not.toHaveBeenCalled();
      const whole = await services.Trial.assess(document, text);
      const asked = checks.filter((check) => chosenBy(check).includes(name)).map(({ id }) => id);
      const found = whole!.findings.filter(({ check, verdict }) => verdict !== 'pass' && asked.includes(check));
      expect(tried, text).toEqual(there(found.flatMap(({ remedies }) => remedies)));
      seen.set(name, (seen.get(name) ?? 0) + tried.length);
    }
    expect(services.Assessments.of(document)!.assessment).toBe(assessment);
    expect(document.references).toEqual(references);
  }
  const compared = [...seen].filter(([, count]) => count > 0).map(([name]) => name);
  expect(compared).toEqual(
    expect.arrayContaining([...Object.keys(parts), 'screen setback', 'skirt drop', 'cable slope']),
  );
  expect(compared.length).toBeGreaterThan(11);
});

function isAt(a: Position, b: Position): boolean {
  return a.line === b.line && a.character === b.character;
}

describe('nothing is computed', () => {
  const hall = 'booth "H" { }\ndesk Left { width 60in  height 40in }\nworkstation S { desk Left }';
  const run = vi.fn(remediesOf);
  const { booth: watched } = createBoothServices({
    ...EmptyFileSystem,
    computation: {
      assess,
      remediesOf: (...given) => run(...given),
      advise: () => ({ stations: [], measure: [], shopping: [] }),
      adviseStation,
      checks: [],
    },
  });

  async function offeredAt(property: string, text = hall) {
    const document = await parseHelper(watched)(text, { validation: true });
    run.mockClear();
    const position = document.textDocument.positionAt(text.indexOf(property) + property.length);
    const textDocument = { uri: document.uri.toString() };
    return watched.lsp.CompletionProvider!.getCompletion(document, { textDocument, position });
  }

  test.each([
    ['width 60in', 0],
    ['height 40in', 1],
  ])('at %s unless its best value can be said: %i more', async (property, more) => {
    await offeredAt(property);
    expect(run).toHaveBeenCalledTimes(more);
  });

  test('once one height of a desk serves everyone', async () => {
    const people = (who: string) => `${hall.replace('desk Left }', `desk Left  operators ${who} }`)}
operator Noor { body female  stature 4'9" }\noperator Olaf { body male  stature 6'8" }`;
    const one = await offeredAt('height ', people('Noor'));
    expect(run).not.toHaveBeenCalled();
    expect(one!.items.map(({ detail }) => detail)).toEqual(['serves 1 of 1', 'example']);

    await offeredAt('height ', people('Noor, Olaf'));
    expect(run).toHaveBeenCalledTimes(1);
  });

  test('that breaks the list, if a check breaks', async () => {
    const whole = await offeredAt('height 40in');
    run.mockImplementationOnce(() => {
      throw new Error('a fault of a check');
    });
    const { items } = (await offeredAt('height 40in'))!;
    expect(run).toHaveBeenCalledTimes(1);
    expect(items.length).toBeGreaterThan(0);
    expect(whole!.items.map(({ label }) => label)).toEqual(expect.arrayContaining(items.map(({ label }) => label)));
  });
});

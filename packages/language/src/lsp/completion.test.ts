import { expectCompletion, parseHelper } from 'langium/test';
import { describe, expect, test } from 'vitest';
import { createBoothServices } from '../module.js';
import { memoryFiles, uriOf } from '../testing/memory.js';
import type { BoothCompletionProvider } from './completion.js';

const files = memoryFiles({ 'furniture.booth': 'desk Shared { width 60in }\nstool High { }', 'rota.booth': '' });
const { booth } = createBoothServices({ fileSystemProvider: () => files });
const complete = expectCompletion(booth);
const parse = parseHelper(booth);
const provider = booth.lsp.CompletionProvider as BoothCompletionProvider;
let number = 0;

async function labelsAt(text: string): Promise<string[]> {
  let labels: string[] = [];
  await complete({
    text,
    index: 0,
    parseOptions: { documentUri: uriOf(`hall-${number++}.booth`).toString() },
    assert: ({ items }) => void (labels = items.map(({ label }) => label)),
    disposeAfterCheck: true,
  });
  return labels;
}

const known =
  'desk Left { }  desk Right { }  stool Tall { }  operator Noor { }  crowd Volunteers { }  monitor Cues { }\n';

describe('outside of blocks', () => {
  test.each(['<|>', 'des<|>', `${known}<|>`, `${known}wor<|>\n${known}`])('%s', async (text) => {
    const labels = await labelsAt(text);
    expect(labels).toEqual(expect.arrayContaining(['booth', 'desk', 'workstation', 'import', 'place', 'accept']));
    expect(labels).not.toContain('width');
  });

  test('no new name is guessed', async () => {
    expect(await labelsAt('desk <|>')).toEqual([]);
  });
});

describe('in a block', () => {
  test('properties that are not said yet, and nested blocks', async () => {
    const labels = await labelsAt('desk Left { width 60in  <|>  depth 30in  tray { drop 4in } }');
    expect(labels).toEqual(expect.arrayContaining(['height', 'top', 'closed', 'tray', 'legs', 'accept']));
    expect(labels).not.toEqual(expect.arrayContaining(['width']));
    expect(labels).not.toEqual(expect.arrayContaining(['depth']));
    expect(labels).not.toContain('drop');
    expect(await labelsAt('desk Left { legs { }  <|> }')).not.toContain('legs');
    expect(await labelsAt('desk Left { tray {<|>}  depth 30in }')).toContain('depth');
  });

  test('by any spelling, and by what excludes them', async () => {
    expect(await labelsAt('operator Noor { sitting-elbow-height 9in  <|> }')).not.toContain('sitting-elbow');
    const screen = await labelsAt(`${known}workstation A { monitor Cues { bottom 4in above desk  <|> } }`);
    expect(screen).toContain('setback');
    expect(screen).not.toContain('centre');
  });

  test('while the block is still open, and the word half typed', async () => {
    expect(await labelsAt('desk Left { wid<|>\n\nstool Tall { seat 28in }')).toContain('width');
    expect(await labelsAt('room { stage { <|>')).toEqual(expect.arrayContaining(['edge', 'height', 'width']));
    expect(await labelsAt('room { stage { edge 55ft }  <|>')).toEqual(expect.arrayContaining(['seating', 'width']));
  });

  test('nothing in a block that is not known, in a comment or in a text', async () => {
    expect(await labelsAt('wardrobe Left { <|> }')).toEqual([]);
    expect(await labelsAt('desk Left { // wid<|>\n }')).toEqual([]);
    expect(await labelsAt('skirt Front { flame-certificate "in the <|>" }')).toEqual([]);
  });
});

describe('after a property', () => {
  test.each([
    [`${known}workstation A { desk <|> }`, ['Left', 'Right']],
    [`${known}workstation A { desk Le<|> }`, ['Left', 'Right']],
    [`${known}workstation A { operators Noor, <|> }`, ['Volunteers']],
    [`${known}workstation A { monitor <|> }`, ['Cues']],
    [`${known}workstation A { posture <|> }`, ['sit', 'stand']],
    [`${known}workstation A { posture sit, <|> }`, ['stand']],
    ['booth "Hall" { show <|> }', ['in', 'ft', 'mm', 'cm', 'm']],
    ['cable Snake { cover <|> }', ['none', 'bevelled', 'ramp']],
    ['room { door Main { on <|> } }', ['back-wall', 'left-wall', 'right-wall', 'stage-wall']],
    ['desk Left { width <|> }', ['60in']],
    [`${known}walkway A { between Left <|> }`, ['and']],
    [`${known}place <|>`, ['Left', 'Right']],
    [`${known}place Left, <|>`, ['Right']],
    [`${known}place Left <|>`, ['in a row', 'at']],
  ])('%s', async (text, labels) => {
    expect(await labelsAt(text)).toEqual(labels);
  });

  test('landmarks and pieces bound a walkway', async () => {
    const labels = await labelsAt(`${known}walkway A { between booth and <|> }`);
    expect(labels).toEqual(expect.arrayContaining(['back-wall', 'stage', 'Left', 'Right']));
    expect(labels).not.toContain('booth');
    expect(labels).not.toContain('Noor');
  });

  test('words that go with a quantity come before the next property', async () => {
    expect((await labelsAt('stool A { foot-ring 18in <|> }')).slice(0, 2)).toEqual(['above floor', 'below seat']);
    expect((await labelsAt(`${known}workstation A { lean 2in <|> }`)).slice(0, 2)).toEqual(['forward', 'back']);
  });
});

describe('a space that is typed', () => {
  const offered = async (text: string) => {
    const document = await parse(text.replace('<|>', ''), { documentUri: uriOf(`hall-${number++}.booth`).toString() });
    const position = document.textDocument.positionAt(text.indexOf('<|>'));
    const context = { triggerKind: 2, triggerCharacter: ' ' } as const;
    const list = await provider.getCompletion(document, { position, context });
    return list.items.map(({ label }) => label);
  };

  test.each([
    `${known}<|>`,
    'desk <|>',
    'desk Side { <|> }',
    'desk Side { width <|> }',
    'desk Side { width 60in <|> }',
    'desk Side { width 60in  <|> }',
    `${known}workstation A { posture  <|> }`,
    `${known}workstation A { posture sit <|> }`,
    `${known}workstation A { desk Left <|> }`,
    `${known}place Left <|>`,
    'desk Side { width 60in } <|>',
  ])('opens nothing in %s', async (text) => {
    expect(await offered(text)).toEqual([]);
  });

  test.each([
    [`${known}workstation A { posture <|> }`, ['sit', 'stand']],
    [`${known}workstation A { posture sit, <|> }`, ['stand']],
    [`${known}workstation A { desk <|> }`, ['Left', 'Right']],
    [`${known}place <|>`, ['Left', 'Right']],
    ['import <|>', ['"furniture.booth"', '"rota.booth"']],
    ['room { door Main { on <|> } }', ['back-wall', 'left-wall', 'right-wall', 'stage-wall']],
    ['stool A { foot-ring 18in below <|> }', ['floor', 'seat']],
  ])('offers the values in %s', async (text, labels) => {
    expect(await offered(text)).toEqual(labels);
  });
});

describe('other places', () => {
  test('a check and its reason', async () => {
    expect(await labelsAt('accept <|>')).toContain('skirt-drop');
    expect(await labelsAt('accept skirt-drop <|>')).toEqual(['on', 'because']);
    expect(await labelsAt(`${known}accept skirt-drop on <|>`)).toContain('Left');
    expect(await labelsAt(`${known}accept skirt-drop on Left <|>`)).toEqual(['because']);
    expect(await labelsAt(`${known}accept skirt-drop on Left because "so" <|>`)).toContain('desk');
  });

  test('the files beside this one', async () => {
    expect(await labelsAt('import <|>')).toEqual(['"furniture.booth"', '"rota.booth"']);
    expect(await labelsAt('import "fur<|>')).toEqual(['"furniture.booth"', '"rota.booth"']);
  });

  test('names that are imported', async () => {
    expect(await labelsAt('import "furniture.booth"\nworkstation A { desk <|> }')).toEqual(['Shared']);
  });
});

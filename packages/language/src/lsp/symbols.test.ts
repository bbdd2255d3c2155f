import { EmptyFileSystem } from 'langium';
import { parseHelper } from 'langium/test';
import { type DocumentSymbol, SymbolKind } from 'vscode-languageserver-types';
import { expect, test } from 'vitest';
import { createBoothServices } from '../module.js';

const { booth: services } = createBoothServices(EmptyFileSystem);
const parse = parseHelper(services);

const hall = `booth "Hall" { show in }
desk Left { width 60in  tray { drop 3in } }
place Left at 1ft, 2ft
monitor Cues { diagonal 22in }
room { width 30ft  door Main { on back-wall } }
workstation Sound { desk Left  monitor Cues { setback 20in }  control Faders { } }
accept skirt-drop on Left because "hemmed on site"
`;

async function outline(text: string): Promise<DocumentSymbol[]> {
  const document = await parse(text);
  const params = { textDocument: { uri: document.uri.toString() } };
  return await services.lsp.DocumentSymbolProvider!.getSymbols(document, params);
}

const kindNames = new Map(Object.entries(SymbolKind).map(([name, kind]) => [kind, name]));
const inWords = (symbols: readonly DocumentSymbol[] = [], depth = 0): string[] =>
  symbols.flatMap(({ name, detail, kind, children }) => [
    `${'  '.repeat(depth)}${name} (${detail ?? ''}) ${kindNames.get(kind) ?? ''}`,
    ...inWords(children, depth + 1),
  ]);

test('the outline tells every block in its place, in the order of the text', async () => {
  expect(inWords(await outline(hall))).toEqual([
    'Hall (booth) Module',
    'Left (desk) Struct',
    '  tray () Property',
    'place Left (placement) Event',
    'Cues (monitor) Struct',
    'room () Namespace',
    '  Main (door) Property',
    'Sound (workstation) Class',
    '  Cues (screen of a workstation) Field',
    '  Faders (control) Property',
    'accept skirt-drop on Left (hemmed on site) Event',
  ]);
});

test('what is selected lies inside the block, and is its name where it has one', async () => {
  const { textDocument } = await parse(hall);
  const check = ({ range, selectionRange, name, children = [] }: DocumentSymbol) => {
    const [from, to] = [range.start, range.end].map((place) => textDocument.offsetAt(place)) as [number, number];
    expect(textDocument.offsetAt(selectionRange.start)).toBeGreaterThanOrEqual(from);
    expect(textDocument.offsetAt(selectionRange.end)).toBeLessThanOrEqual(to);
    if (/^[A-Z]/.test(name)) expect(textDocument.getText(selectionRange).replaceAll('"', '')).toBe(name);
    children.forEach(check);
  };
  (await outline(hall)).forEach(check);
});

test.each(['desk', 'desk { }', 'place', 'accept', 'workstation S { monitor', 'booth "" { }', 'import', '}'])(
  'a text that is half written has an outline of named things: %s',
  async (text) => {
    for (const { name } of await outline(text)) expect(name).not.toBe('');
  },
);

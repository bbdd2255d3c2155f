import { EmptyFileSystem } from 'langium';
import { expectHover } from 'langium/test';
import { describe, expect, test } from 'vitest';
import { createBoothServices } from '../services.js';

const { booth } = createBoothServices(EmptyFileSystem);
const hover = expectHover(booth);

const at = (text: string, pattern: RegExp | undefined) =>
  hover({ text, index: 0, hover: pattern, disposeAfterCheck: true });

describe('words of the language', () => {
  test.each([
    ['desk Left { <|>top 1in }', /\*\*top\*\*: The thickness of the top[\s\S]*Default: `25mm`/],
    ['operator Noor { sitting-elbow<|>-height 9in }', /\*\*sitting-elbow\*\*/],
    ['desk Left { <|>closed }', /Written or left out/],
    ['<|>walkway A { }', /\*\*walkway\*\*[\s\S]*```booth/],
    ['desk A { }\nworkstation B { mon<|>itor C { } }', /as it stands at this workstation/],
    ['accept skirt-<|>drop because "so"', /`skirt-drop`/],
  ])('%s', async (text, pattern) => {
    await at(text, pattern);
  });

  test('nothing is said of a value', async () => {
    await at('desk Left { width 6<|>0in }', undefined);
  });
});

const hall = `booth "Hall" { show in }
operator Noor { body female  stature 5'3"  sitting-elbow 9in }
crowd Volunteers { women 55% }
desk Left { width 60in  depth 30in  height 40in }
stool Tall { seat 30in }
workstation Sound { desk Left  stool Tall  operators Noor, Volunteers }
skirt Front { on Left  drop 45in }
`;

describe('names show what was computed of the thing', () => {
  test('an operator: predicted and measured dimensions', async () => {
    await at(hall.replace('operator Noor', 'operator No<|>or'), /\*\*stature\*\* \| \*\*63 in\*\* \| measured/);
    await at(
      hall.replace('operator Noor', 'operator No<|>or'),
      /\*\*sitting elbow height\*\* \| \*\*9 in\*\* \| measured/,
    );
    await at(
      hall.replace('operator Noor', 'operator No<|>or'),
      /\| popliteal height \| [\d /]+ in \| [\d /]+ in to [\d /]+ in \|/,
    );
  });

  test('also where the name is used', async () => {
    await at(hall.replace('operators Noor', 'operators No<|>or'), /\*\*Noor\*\*, operator/);
  });

  test('a crowd', async () => {
    await at(
      hall.replace('crowd Volunteers', 'crowd Volun<|>teers'),
      /55% women, 90% of them to be served \(default\)/,
    );
  });

  test('a workstation: who is served', async () => {
    await at(hall.replace('workstation Sound', 'workstation So<|>und'), /Noor, sitting: everything fits \d+%/);
  });

  test('a skirt: its findings with figures and source', async () => {
    await at(hall.replace('skirt Front', 'skirt Fr<|>ont'), /✗ .*`skirt-drop`, measured .* in, limit .*, margin −/);
  });

  test('a thing in a file that is no booth: what it is', async () => {
    await at('desk Le<|>ft { }', /\*\*Left\*\*, desk\n\nA desk, table or counter/);
  });
});

test('the range is the word', async () => {
  const disposable = await hover({ text: 'desk Left { wid<|>th 60in }', index: 0, hover: /width/ });
  const document = booth.shared.workspace.LangiumDocuments.all.toArray().at(-1)!;
  const found = await booth.lsp.HoverProvider!.getHoverContent(document, {
    textDocument: { uri: document.uri.toString() },
    position: { line: 0, character: 14 },
  });
  expect(found?.range).toEqual({ start: { line: 0, character: 12 }, end: { line: 0, character: 17 } });
  await disposable.dispose();
});

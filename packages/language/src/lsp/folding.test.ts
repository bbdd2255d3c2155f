import { EmptyFileSystem } from 'langium';
import { expectFoldings, parseHelper } from 'langium/test';
import { expect, test } from 'vitest';
import { createBoothServices } from '../services.js';

const { booth: services } = createBoothServices(EmptyFileSystem);
const folds = expectFoldings(services);

test('blocks fold, and blocks in them', async () => {
  await folds({
    text: `<|room {
  width 40ft
  <|door Main {
    on back-wall
    at 3ft|>
  }|>
}
desk Left { width 60in }
`,
  });
});

test('a long comment folds, and so do three line comments together', async () => {
  const text =
    '/* a\n b\n*/\ndesk A { }\n// one\n// two\n// three\n\n// apart\ndesk B { } // behind\n// two\n// only\n';
  const document = await parseHelper(services)(text);
  const ranges = await services.lsp.FoldingRangeProvider!.getFoldingRanges(document, {
    textDocument: { uri: document.uri.toString() },
  });
  expect(ranges.map(({ startLine, endLine, kind }) => [startLine, endLine, kind])).toEqual([
    [0, 1, 'comment'],
    [4, 6, 'comment'],
  ]);
});

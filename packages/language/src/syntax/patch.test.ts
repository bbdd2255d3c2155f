import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import {
  type AstNode,
  type CstNode,
  EmptyFileSystem,
  isCompositeCstNode,
  isLeafCstNode,
  type LangiumDocument,
  URI,
} from 'langium';
import { describe, expect, test } from 'vitest';
import { createBoothServices } from '../module.js';
import { silent } from '../testing/analysis.js';
import { memoryFiles } from '../testing/memory.js';
import type { Document } from '../generated/ast.js';
import { patch, tryBlock } from './patch.js';

const uri = URI.parse('file:///hall/hall.booth');

const { shared } = createBoothServices({ ...EmptyFileSystem, computation: silent });
const parse = (text: string) => shared.workspace.LangiumDocumentFactory.fromString(text, uri).parseResult;

/** All that a tree says of itself, and where. */
function shown(node: CstNode): unknown {
  const own = [node.text, node.offset, node.end, node.range, node.hidden, node.astNode.$type];
  if (isLeafCstNode(node)) return [...own, node.tokenType.name];
  return isCompositeCstNode(node) ? [...own, node.content.map(shown)] : own;
}

function tree(root: AstNode): unknown {
  return JSON.parse(
    JSON.stringify(root, (key: string, value: unknown) => {
      if (['$container', '$cstNode', '$document', '$refNode'].includes(key)) return undefined;
      return value && typeof value === 'object' && '$refText' in value ? value.$refText : value;
    }),
  );
}

function expectSame(patched: AstNode, fresh: AstNode): void {
  expect(tree(patched)).toEqual(tree(fresh));
  expect(shown(patched.$cstNode!)).toEqual(shown(fresh.$cstNode!));
}

const base = readFileSync(new URL('../../../../examples/oakmere-annex-mended.booth', import.meta.url), 'utf8');

describe('a changed block is parsed by itself', () => {
  test.each([
    ['a digit', 'width 60in', 'width 61in'],
    ['a line', 'width 60in', 'width 60in\n\n  depth 20in'],
    ['a comment', 'width 60in', 'width 60in // as bought\n'],
    ['nothing left', 'width 60in', ''],
    ['a nested block', 'width 60in', 'legs { width 50in }'],
  ])('%s', (_, before, after) => {
    const old = `desk Left {\n  ${before}  }  desk Right { } // end\nplace Left at 1ft, 2ft\n`;
    const text = old.replace(before, after);
    const result = parse(old);
    const tried = tryBlock(result, text, parse)!;
    const [fresh] = (parse(text).value as Document).blocks;
    expectSame(tried.block, fresh!);
    expect(tried.of).toBe((result.value as Document).blocks[0]);
    expectSame(result.value, parse(old).value);

    const patched = patch(result, text, parse);
    expectSame(patched!.value, parse(text).value);
  });

  test.each([
    ['outside a block', 'place Left', 'place Right'],
    ['the head of a block', 'desk Left', 'desk Long'],
    ['a brace', 'width 60in', 'width 60in }'],
    ['an open comment', 'width 60in', '/* width 60in'],
    ['a block closed and another opened', 'width 60in', '} desk Other {'],
  ])('but not where that may not be enough: %s', (_, before, after) => {
    const old = 'desk Left { width 60in }\ndesk Right { } /* so */\nplace Left at 1ft, 2ft\n';
    expect(patch(parse(old), old.replace(before, after), parse)).toBeUndefined();
  });

  test('and not in a text with a fault', () => {
    const old = 'desk Left { width 60in }\ndesk Right { ';
    expect(patch(parse(old), old.replace('60', '61'), parse)).toBeUndefined();
  });
});

/** Pieces that people type, and pieces that break things. */
const typed = fc.oneof(
  fc.constantFrom(
    '1',
    '0',
    '.5',
    'in',
    ' ',
    '\n',
    'x',
    '  width 20in\n',
    '{',
    '}',
    '"',
    '/*',
    '*/',
    '//',
    ',',
    '..',
    '½',
  ),
  fc.constantFrom(
    'desk New { }\n',
    'monitor Cues { setback 20in }',
    'at 5ft, 6ft',
    'stand',
    'accept overlap because "so"',
  ),
  fc.string({ maxLength: 4 }),
);

/** A session that opens and edits one file. */
function session() {
  const files = memoryFiles({});
  const { shared: own } = createBoothServices({ fileSystemProvider: () => files, computation: silent });
  const { DocumentBuilder, LangiumDocuments } = own.workspace;
  return {
    async open(text: string): Promise<void> {
      await DocumentBuilder.update([], [uri]);
      await this.edit(text);
    },
    async edit(text: string): Promise<void> {
      files.files.set(uri.toString(), text);
      await DocumentBuilder.update([uri], []);
    },
    get document(): LangiumDocument {
      return LangiumDocuments.getDocument(uri)!;
    },
  };
}

test('after any edits a document is as if it had been opened so', async () => {
  const edited = session();
  const fresh = session();
  await fc.assert(
    fc.asyncProperty(fc.array(fc.tuple(fc.nat(), fc.nat(6), typed), { minLength: 1, maxLength: 6 }), async (edits) => {
      let text = base;
      await edited.open(text);
      for (const [at, length, insert] of edits) {
        const from = at % (text.length + 1);
        text = text.slice(0, from) + insert + text.slice(from + length);
        await edited.edit(text);
      }
      await fresh.open(text);
      expectSame(edited.document.parseResult.value, fresh.document.parseResult.value);
      expect(edited.document.diagnostics).toEqual(fresh.document.diagnostics);
      expect(namesIn(edited.document)).toEqual(namesIn(fresh.document));
    }),
    { numRuns: 60 },
  );
}, 120_000);

function namesIn({ references }: LangiumDocument): unknown {
  return references.map(({ $refText, error }) => [$refText, error?.message]);
}

import { said } from '@boothwright/fit';
import type { AstNode, LangiumDocument } from 'langium';
import { DefaultNodeKindProvider, type DocumentSymbolProvider } from 'langium/lsp';
import { type DocumentSymbol, SymbolKind } from 'vscode-languageserver-types';
import {
  type Accept,
  type Block,
  isBlock,
  isDocument,
  isScreen,
  type Placement,
  type Screen,
} from '../generated/ast.js';
import { kindOf, nestedOf, partOf } from '../syntax/tree.js';
import { readText } from '../syntax/texts.js';
import { type Kind, kinds } from '../vocabulary/entries.js';

const symbolKinds: Partial<Record<Kind, SymbolKind>> = {
  booth: SymbolKind.Module,
  room: SymbolKind.Namespace,
  operator: SymbolKind.Variable,
  crowd: SymbolKind.Array,
  desk: SymbolKind.Struct,
  stool: SymbolKind.Struct,
  chair: SymbolKind.Struct,
  monitor: SymbolKind.Struct,
  rack: SymbolKind.Struct,
  skirt: SymbolKind.Struct,
  platform: SymbolKind.Struct,
  cable: SymbolKind.Struct,
  workstation: SymbolKind.Class,
  walkway: SymbolKind.Interface,
};

export class BoothNodeKindProvider extends DefaultNodeKindProvider {
  override getSymbolKind(node: AstNode): SymbolKind {
    return isBlock(node) ? (symbolKinds[node.kind] ?? SymbolKind.Property) : SymbolKind.Field;
  }
}

/** The outline: every block in its place, with what kind of thing it is; placements and acceptances after their words. */
export class BoothDocumentSymbolProvider implements DocumentSymbolProvider {
  private readonly kinds = new BoothNodeKindProvider();

  getSymbols(document: LangiumDocument): DocumentSymbol[] {
    const root = document.parseResult.value;
    if (!isDocument(root)) return [];
    return [
      ...root.blocks.map((block) => this.ofBlock(block)),
      ...root.placements.map(ofPlacement),
      ...root.accepts.map(ofAcceptance),
    ].sort((a, b) => a.range.start.line - b.range.start.line || a.range.start.character - b.range.start.character);
  }

  private ofBlock(block: Block | Screen): DocumentSymbol {
    const own = isScreen(block) ? block.monitor?.$refText : block.name;
    const title = isBlock(block) && block.title !== undefined ? readText(block.title).value : '';
    const name = own ?? (title || block.kind);
    const named = isScreen(block) ? 'monitor' : own === undefined ? 'title' : 'name';
    return {
      name,
      detail: name === block.kind ? '' : said(kinds[kindOf(block)]),
      kind: this.kinds.getSymbolKind(block),
      range: block.$cstNode!.range,
      selectionRange: partOf(block, name === block.kind ? 'kind' : named)!.range,
      children: nestedOf(block).map((nested) => this.ofBlock(nested)),
    };
  }
}

function ofPlacement(placement: Placement): DocumentSymbol {
  const names = placement.pieces.map(({ $refText }) => $refText).filter(Boolean);
  return {
    name: ['place', names.join(', ')].filter(Boolean).join(' '),
    detail: said(kinds.place),
    kind: SymbolKind.Event,
    range: placement.$cstNode!.range,
    selectionRange: partOf(placement, 'pieces', 0)!.range,
  };
}

function ofAcceptance(acceptance: Accept): DocumentSymbol {
  const { check, subject, reason } = acceptance;
  return {
    name: ['accept', check, subject && `on ${subject.$refText}`].filter(Boolean).join(' '),
    detail: reason === undefined ? '' : readText(reason).value,
    kind: SymbolKind.Event,
    range: acceptance.$cstNode!.range,
    selectionRange: partOf(acceptance, 'check')!.range,
  };
}

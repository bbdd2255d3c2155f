import { type AstNode, CstUtils, type LangiumDocument, type LeafCstNode } from 'langium';
import type { HoverProvider } from 'langium/lsp';
import { checks } from '@boothwright/fit';
import type { HoverParams } from 'vscode-languageserver';
import type { Hover } from 'vscode-languageserver-types';
import { type Block, isAccept, isBlock, isLimit, isPlacement, isScreen } from '../generated/ast.js';
import type { BoothServices } from '../services.js';
import { entryOfProperty, isPropertyNode, kindOf } from '../syntax/tree.js';
import { needOf } from '../values/interpret.js';
import { kinds, type PropertyEntry } from '../vocabulary/entries.js';
import { entryOf } from '../vocabulary/vocabulary.js';
import { figuresOf } from './figures.js';

/** What a word means, and what was computed of the thing it names. */
export class BoothHoverProvider implements HoverProvider {
  constructor(private readonly services: BoothServices) {}

  getHoverContent(document: LangiumDocument, { position }: Pick<HoverParams, 'position'>): Hover | undefined {
    const root = document.parseResult.value.$cstNode;
    const offset = document.textDocument.offsetAt(position);
    const leaf = root && CstUtils.findDeclarationNodeAtOffset(root, offset, /[\p{L}\p{N}_-]/u);
    const value = leaf && this.contentOf(leaf, document);
    return value ? { contents: { kind: 'markdown', value }, range: leaf.range } : undefined;
  }

  private contentOf(leaf: LeafCstNode, document: LangiumDocument): string | undefined {
    const node = leaf.astNode;
    if (isPropertyNode(node) && isFirst(leaf, node)) {
      const entry = entryOfProperty(node);
      return entry && describeProperty(entry);
    }
    if ((isBlock(node) || isScreen(node) || isPlacement(node)) && isFirst(leaf, node))
      return describeKind(kindOf(node));
    if ((isAccept(node) || isLimit(node)) && leaf.text === node.check) return describeCheck(node.check);
    const [target] = this.services.references.References.findDeclarations(leaf);
    return isBlock(target) && target.name === leaf.text ? this.describeBlock(target, document) : undefined;
  }

  private describeBlock(block: Block, document: LangiumDocument): string {
    const name = block.name!;
    const head = `**${name}**, ${kinds[block.kind]}`;
    const assessment = this.services.Assessments.safelyOf(document)?.assessment;
    const figures = assessment ? figuresOf(block.kind, name, assessment).filter(Boolean) : [];
    return [head, ...(figures.length > 0 ? figures : [entryOf(block.kind).says])].join('\n\n');
  }
}

function describeProperty(entry: PropertyEntry): string {
  const example = entry.example ? `\`${entry.key} ${entry.example}\`` : `\`${entry.key}\``;
  const need = entry.shape.is === 'flag' ? 'Written or left out' : `Takes ${needOf(entry)}`;
  const usual = entry.default === undefined ? '' : ` Default: \`${entry.default}\`.`;
  return `**${entry.key}**: ${entry.says}\n\n${need}, as in ${example}.${usual}`;
}

function describeKind(kind: ReturnType<typeof kindOf>): string {
  const { word, says, example } = entryOf(kind);
  return `**${word}**: ${says}\n\n\`\`\`booth\n${example}\n\`\`\``;
}

function describeCheck(id: string): string | undefined {
  const check = checks.find((each) => each.id === id);
  return check && `**${check.title}** (\`${id}\`): ${check.question}\n\n${check.computes}\n\n${check.limits}`;
}

function isFirst(leaf: LeafCstNode, node: AstNode): boolean {
  return leaf.offset === node.$cstNode?.offset;
}

import { type AstNode, AstUtils, CstUtils, type LangiumDocument, type LeafCstNode } from 'langium';
import type { HoverProvider } from 'langium/lsp';
import { type Assessment, said, say } from '@boothwright/fit';
import type { HoverParams } from 'vscode-languageserver';
import type { Hover } from 'vscode-languageserver-types';
import {
  type Accept,
  type Block,
  isAccept,
  isBlock,
  isLimit,
  isPlacement,
  isQuantity,
  type Limit,
  type Placement,
} from '../generated/ast.js';
import { showOf } from '../reading/reader.js';
import type { BoothServices } from '../services.js';
import { entryOfProperty, type Holder, isHolder, isPropertyNode, kindOf, type PropertyNode } from '../syntax/tree.js';
import { kinds } from '../vocabulary/entries.js';
import { entryOf } from '../vocabulary/vocabulary.js';
import { describeCheck, describeKind, describeProperty, describeRow } from './descriptions.js';
import { boothFigures, figuresOf, findingsAt, findingsOfCheck, placedTable } from './figures.js';
import { inAllUnits, saidTable, valueOf } from './said.js';

/** A paragraph, a table or a list; nothing if there is nothing to say. */
type Part = string | undefined;

/** What a word means, and what was computed of the thing it names. */
export class BoothHoverProvider implements HoverProvider {
  constructor(private readonly services: BoothServices) {}

  getHoverContent(document: LangiumDocument, { position }: Pick<HoverParams, 'position'>): Hover | undefined {
    const root = document.parseResult.value.$cstNode;
    const offset = document.textDocument.offsetAt(position);
    const leaf = root && CstUtils.findDeclarationNodeAtOffset(root, offset, /[\p{L}\p{N}_"'’″-]/u);
    const parts = leaf && this.contentOf(leaf, document).filter(Boolean);
    return parts?.length
      ? { contents: { kind: 'markdown', value: parts.join('\n\n') }, range: leaf!.range }
      : undefined;
  }

  /** What is said of a block where it is named, in Markdown, with the figures of the booth that `main` describes. */
  describe(block: Block, main: LangiumDocument): string {
    const parts = block.name === undefined ? this.ofKind(block, main) : this.ofName(block, main);
    return parts.filter(Boolean).join('\n\n');
  }

  private contentOf(leaf: LeafCstNode, document: LangiumDocument): Part[] {
    const node = leaf.astNode;
    const property = AstUtils.getContainerOfType(node, isPropertyNode);
    if (isPropertyNode(node) && isFirst(leaf, node)) return this.ofProperty(node, document);
    if (isPlacement(node) && /^(in|a|row)$/.test(leaf.text)) return [describeRow(), this.placedBy(node, document)];
    if (isHolder(node) && isFirst(leaf, node)) return this.ofKind(node, document);
    if ((isAccept(node) || isLimit(node)) && leaf.text === node.check) return this.ofCheck(node, document);
    if (isBlock(node) && leaf.text === node.title) return this.ofBooth(node, document);
    if (property && isQuantity(node) && /\d/.test(leaf.text)) return this.ofValue(leaf, property, document);
    const [target] = this.services.references.References.findDeclarations(leaf);
    return isBlock(target) && target.name === leaf.text ? this.ofName(target, document) : [];
  }

  private ofProperty(node: PropertyNode, document: LangiumDocument): Part[] {
    const entry = entryOfProperty(node);
    if (!entry) return [];
    const value = node.$cstNode!.text === node.key ? '' : say`Here: ${valueOf(node, entry, showOf(document))}.`;
    return [describeProperty(entry), value, this.findingsIn(node, document)];
  }

  private ofValue(leaf: LeafCstNode, property: PropertyNode, document: LangiumDocument): Part[] {
    return [inAllUnits(leaf.text), this.findingsIn(property, document)];
  }

  private ofKind(holder: Holder, document: LangiumDocument): Part[] {
    const isNamed = isBlock(holder) && holder.name !== undefined;
    const own = isPlacement(holder)
      ? this.placedBy(holder, document)
      : isNamed
        ? undefined
        : saidTable(holder, showOf(document));
    return [describeKind(kindOf(holder)), own];
  }

  private ofCheck(node: Accept | Limit, document: LangiumDocument): Part[] {
    const assessment = this.assessmentOf(document);
    const subject = isAccept(node) ? node.subject?.$refText : undefined;
    const about = describeCheck(node.check!);
    return about && assessment ? [about, findingsOfCheck(node.check!, subject, assessment)] : [about];
  }

  private ofBooth(booth: Block, document: LangiumDocument): Part[] {
    const assessment = this.assessmentOf(document);
    return [assessment && boothFigures(assessment), saidTable(booth, showOf(document))];
  }

  private ofName(block: Block, document: LangiumDocument): Part[] {
    const name = block.name!;
    const assessment = this.assessmentOf(document);
    const [figures, findings] = assessment ? figuresOf(block.kind, name, assessment) : ['', ''];
    const isPerson = block.kind === 'operator' || block.kind === 'crowd';
    const own = isPerson && figures ? '' : saidTable(block, showOf(document));
    const says = figures || findings ? '' : said(entryOf(block.kind).says);
    return [`**${name}**, ${said(kinds[block.kind])}`, says, figures, own, findings];
  }

  private placedBy(placement: Placement, document: LangiumDocument): string | undefined {
    const assessment = this.assessmentOf(document);
    const names = placement.pieces.map(({ $refText }) => $refText);
    return assessment && placedTable(names, assessment);
  }

  private findingsIn(node: AstNode, document: LangiumDocument): string | undefined {
    const assessment = this.assessmentOf(document);
    const range = node.$cstNode?.range;
    return assessment && range && findingsAt(document.uri.toString(), range, assessment);
  }

  private assessmentOf(document: LangiumDocument): Assessment | undefined {
    return this.services.Assessments.safelyOf(document)?.assessment;
  }
}

function isFirst(leaf: LeafCstNode, node: AstNode): boolean {
  return leaf.offset === node.$cstNode?.offset;
}

import {
  AstUtils,
  type AstNode,
  type AstNodeDescription,
  type AstNodeDescriptionProvider,
  DefaultScopeComputation,
  type LangiumDocument,
  MultiMap,
  type ReferenceInfo,
  type Scope,
  type ScopeProvider,
  stream,
  type Stream,
} from 'langium';
import { type Block, isDocument, isNames, isPlacement, isScreen, isSide } from '../generated/ast.js';
import type { BoothServices } from '../services.js';
import { allBlocks, entryOfProperty } from '../syntax/tree.js';
import { type Kind, pieceKinds } from '../vocabulary/entries.js';
import type { Imports } from '../workspace/imports.js';

/** The kinds that a name at that place may be of; nothing if any will do. */
export function wantedKinds(container: AstNode): readonly Kind[] | undefined {
  if (isScreen(container)) return ['monitor'];
  if (isPlacement(container)) return ['desk', 'rack'];
  if (isSide(container)) return pieceKinds;
  if (!isNames(container)) return undefined;
  const shape = entryOfProperty(container)?.shape;
  return shape?.is === 'names' ? shape.kinds : undefined;
}

export function exportsOf(document: LangiumDocument, descriptions: AstNodeDescriptionProvider): AstNodeDescription[] {
  const root = document.parseResult.value;
  const blocks = isDocument(root) ? allBlocks(root) : [];
  const named = blocks.filter(({ name }) => name !== undefined);
  return named.map((block) => descriptions.createDescription(block, block.name, document));
}

/** Only blocks are exported, and nothing is looked up through the default tables: see `BoothScopeProvider`. */
export class BoothScopeComputation extends DefaultScopeComputation {
  override collectExportedSymbols(document: LangiumDocument): Promise<AstNodeDescription[]> {
    return Promise.resolve(exportsOf(document, this.descriptions));
  }

  override collectLocalSymbols(): Promise<MultiMap<AstNode, AstNodeDescription>> {
    return Promise.resolve(new MultiMap());
  }
}

/**
 * Resolves a name to a block of this file or of those it imports, directly or through others. A block of a kind that is
 * wanted at the place wins over others of the same name; if there is none, any block of that name is the answer, so that a message can
 * say what it is instead.
 */
export class BoothScopeProvider implements ScopeProvider {
  private readonly imports: Imports;
  private readonly descriptions: BoothServices['workspace']['AstNodeDescriptionProvider'];
  private readonly described = new WeakMap<Block, AstNodeDescription>();

  constructor(services: BoothServices) {
    this.imports = services.workspace.Imports;
    this.descriptions = services.workspace.AstNodeDescriptionProvider;
  }

  getScope({ container }: ReferenceInfo): Scope {
    return new BoothScope(this.imports.visibleFrom(AstUtils.getDocument(container)), wantedKinds(container), (block) =>
      this.describe(block),
    );
  }

  private describe(block: Block): AstNodeDescription {
    let description = this.described.get(block);
    if (!description) {
      description = this.descriptions.createDescription(block, block.name);
      this.described.set(block, description);
    }
    return description;
  }
}

class BoothScope implements Scope {
  constructor(
    private readonly documents: readonly LangiumDocument[],
    private readonly kinds: readonly Kind[] | undefined,
    private readonly describe: (block: Block) => AstNodeDescription,
  ) {}

  getElement(name: string): AstNodeDescription | undefined {
    let otherKind: Block | undefined;
    for (const document of this.documents) {
      for (const block of blocksNamed(document, name)) {
        if (!this.kinds || this.kinds.includes(block.kind)) return this.describe(block);
        otherKind ??= block;
      }
    }
    return otherKind && this.describe(otherKind);
  }

  getElements(name: string): Stream<AstNodeDescription> {
    const element = this.getElement(name);
    return stream(element ? [element] : []);
  }

  getAllElements(): Stream<AstNodeDescription> {
    const kinds = this.kinds;
    return stream(this.documents)
      .flatMap((document) => [...namesOf(document).values()])
      .filter((block) => !kinds || kinds.includes(block.kind))
      .map(this.describe);
  }
}

const tables = new WeakMap<AstNode, MultiMap<string, Block>>();

/** All named blocks of a document by name; the table lives as long as the syntax tree. */
export function namesOf(document: LangiumDocument): MultiMap<string, Block> {
  const root = document.parseResult.value;
  let table = tables.get(root);
  if (!table) {
    table = new MultiMap();
    for (const block of isDocument(root) ? allBlocks(root) : []) if (block.name) table.add(block.name, block);
    tables.set(root, table);
  }
  return table;
}

export function blocksNamed(document: LangiumDocument, name: string): readonly Block[] {
  return namesOf(document).get(name);
}

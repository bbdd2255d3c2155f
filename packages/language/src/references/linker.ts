import {
  type AstNode,
  AstUtils,
  Cancellation,
  DefaultLinker,
  interruptAndCheck,
  type LangiumDocument,
  type ReferenceInfo,
} from 'langium';
import { topLevel } from '../syntax/tree.js';

const known = new WeakMap<AstNode, readonly ReferenceInfo[]>();

/** The references in a declaration of a file, found once in its life. */
export function referencesIn(declaration: AstNode): readonly ReferenceInfo[] {
  let found = known.get(declaration);
  if (!found) {
    found = AstUtils.streamAst(declaration)
      .flatMap((node) => AstUtils.streamReferences(node))
      .toArray();
    known.set(declaration, found);
  }
  return found;
}

/** Links declaration by declaration. */
export class BoothLinker extends DefaultLinker {
  override async link(document: LangiumDocument, token = Cancellation.CancellationToken.None): Promise<void> {
    await interruptAndCheck(token);
    for (const declaration of topLevel(document))
      for (const reference of referencesIn(declaration)) this.doLink(reference, document);
  }
}

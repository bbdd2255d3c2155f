import { type AstNodeDescription, DefaultIndexManager, type LangiumDocument, type ReferenceDescription } from 'langium';
import type { AstNode, Stream, URI } from 'langium';
import { exportsOf } from '../references/scope.js';
import type { BoothReferenceDescriptions } from '../references/descriptions.js';
import { importsOf } from './imports.js';

/**
 * A document is affected by a change in any file that it imports, directly or through others: values come from there too. What
 * a document exports, and which names it uses, is found out when somebody asks, not at each keystroke.
 */
export class BoothIndexManager extends DefaultIndexManager {
  private readonly unlisted = new Map<string, LangiumDocument>();
  private readonly unread = new Map<string, LangiumDocument>();

  override isAffected(document: LangiumDocument, changed: Set<string>): boolean {
    const seen = new Set([document]);
    for (const each of seen) {
      for (const { uri } of importsOf(each)) {
        if (!uri) continue;
        if (changed.has(uri.toString())) return true;
        const imported = this.documents.getDocument(uri);
        if (imported) seen.add(imported);
      }
    }
    return false;
  }

  override updateContent(document: LangiumDocument): Promise<void> {
    this.unlisted.set(document.uri.toString(), document);
    return Promise.resolve();
  }

  override updateReferences(document: LangiumDocument): Promise<void> {
    this.unread.set(document.uri.toString(), document);
    return Promise.resolve();
  }

  override removeContent(uri: URI): void {
    this.unlisted.delete(uri.toString());
    super.removeContent(uri);
  }

  override removeReferences(uri: URI): void {
    this.unread.delete(uri.toString());
    super.removeReferences(uri);
  }

  override allElements(nodeType?: string, uris?: Set<string>): Stream<AstNodeDescription> {
    for (const [uri, document] of this.unlisted) {
      const { AstNodeDescriptionProvider } = this.serviceRegistry.getServices(document.uri).workspace;
      this.symbolIndex.set(uri, exportsOf(document, AstNodeDescriptionProvider));
      this.symbolByTypeIndex.clear(uri);
    }
    this.unlisted.clear();
    return super.allElements(nodeType, uris);
  }

  override findAllReferences(target: AstNode, path: string): Stream<ReferenceDescription> {
    for (const [uri, document] of this.unread) {
      const { ReferenceDescriptionProvider } = this.serviceRegistry.getServices(document.uri).workspace;
      this.referenceIndex.set(uri, (ReferenceDescriptionProvider as BoothReferenceDescriptions).of(document));
    }
    this.unread.clear();
    return super.findAllReferences(target, path);
  }
}

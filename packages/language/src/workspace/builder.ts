import type { Cancellation } from 'langium';
import { type BuildOptions, DefaultDocumentBuilder, DocumentState, type LangiumDocument, type URI } from 'langium';
import { importsOf } from './imports.js';

/** Builds documents together with the files that they import, which are loaded when they are first needed. */
export class BoothDocumentBuilder extends DefaultDocumentBuilder {
  protected override async buildDocuments(
    documents: LangiumDocument[],
    options: BuildOptions,
    token: Cancellation.CancellationToken,
  ): Promise<void> {
    await super.buildDocuments(await this.withImports(documents, token), options, token);
  }

  private async withImports(
    documents: readonly LangiumDocument[],
    token: Cancellation.CancellationToken,
  ): Promise<LangiumDocument[]> {
    const all = new Set(documents);
    for (const document of all) {
      if (document.state < DocumentState.Parsed) await this.langiumDocumentFactory.update(document, token);
      for (const { uri } of importsOf(document)) {
        const imported = uri && (await this.load(uri));
        if (imported && imported.state < DocumentState.Validated) all.add(imported);
      }
    }
    return [...all];
  }

  private async load(uri: URI): Promise<LangiumDocument | undefined> {
    try {
      return await this.langiumDocuments.getOrCreateDocument(uri);
    } catch {
      return undefined;
    }
  }
}

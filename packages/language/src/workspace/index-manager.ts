import { DefaultIndexManager, type LangiumDocument } from 'langium';
import { importsOf } from './imports.js';

/** A document is affected by a change in any file that it imports, directly or through others: values come from there too. */
export class BoothIndexManager extends DefaultIndexManager {
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
}

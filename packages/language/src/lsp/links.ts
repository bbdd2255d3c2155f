import type { LangiumDocument } from 'langium';
import type { DocumentLinkProvider } from 'langium/lsp';
import type { DocumentLink } from 'vscode-languageserver-types';
import { partOf } from '../syntax/tree.js';
import { importsOf } from '../workspace/imports.js';

/** Makes the paths of imports links to the files. */
export class BoothDocumentLinkProvider implements DocumentLinkProvider {
  getDocumentLinks(document: LangiumDocument): DocumentLink[] {
    return importsOf(document).flatMap(({ node, uri }) => {
      const path = uri && partOf(node, 'path');
      return path ? [{ range: path.range, target: uri.toString() }] : [];
    });
  }
}

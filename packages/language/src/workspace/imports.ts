import { say } from '@boothwright/fit';
import type { URI } from 'langium';
import { type LangiumDocument, type LangiumDocuments, UriUtils, WorkspaceCache } from 'langium';
import type { LangiumSharedServices } from 'langium/lsp';
import { type Document, type Import, isDocument } from '../generated/ast.js';
import { bounds } from '../bounds.js';
import { readText } from '../syntax/texts.js';

/** A file that a file imports. */
export interface Imported {
  readonly node: Import;
  /** Absent if the path cannot be one of a booth file. */
  readonly uri?: URI;
}

/** Which files a file sees. Only files beside it on the same file system can be imported, never a web address. */
export class Imports {
  private readonly documents: LangiumDocuments;
  private readonly visible: WorkspaceCache<string, readonly LangiumDocument[]>;

  constructor({ shared }: { readonly shared: LangiumSharedServices }) {
    this.documents = shared.workspace.LangiumDocuments;
    this.visible = new WorkspaceCache(shared);
  }

  /** The document itself, then all that it imports, directly or through others, that could be loaded. */
  visibleFrom(document: LangiumDocument): readonly LangiumDocument[] {
    return this.visible.get(document.uri.toString(), () => this.reach(document));
  }

  private reach(document: LangiumDocument): readonly LangiumDocument[] {
    const found = new Gathering(document);
    for (const each of found.files)
      for (const { uri } of importsOf(each)) {
        const imported = uri && this.documents.getDocument(uri);
        if (imported) found.take(imported);
      }
    return [...found.files];
  }

  /** Whether a file is left out because there are more, or larger ones, than may be. */
  isBeyond(uri: URI, visible: readonly LangiumDocument[]): boolean {
    const document = this.documents.getDocument(uri);
    if (visible.length >= bounds.files) return true;
    return document !== undefined && !visible.includes(document);
  }
}

/** A file and those that it imports, as far as their number and their size may go. */
export class Gathering {
  readonly files: Set<LangiumDocument>;
  private characters: number;

  constructor(first: LangiumDocument) {
    this.files = new Set([first]);
    this.characters = lengthOf(first);
  }

  get isFull(): boolean {
    return this.files.size >= bounds.files;
  }

  take(document: LangiumDocument): void {
    const length = lengthOf(document);
    if (this.files.has(document) || this.isFull || this.characters + length > bounds.characters) return;
    this.files.add(document);
    this.characters += length;
  }
}

/** A file that is too large by itself is read no further, and says so; it takes no room from others. */
function lengthOf({ textDocument }: LangiumDocument): number {
  const { length } = textDocument.getText();
  return length > bounds.characters ? 0 : length;
}

export function importsOf(document: LangiumDocument): readonly Imported[] {
  const root = document.parseResult.value;
  if (!isDocument(root)) return [];
  return root.imports.map((node) => ({ node, uri: uriOf(node, document.uri) }));
}

/** The roots of the documents. */
export function rootsOf(documents: readonly LangiumDocument[]): readonly Document[] {
  return documents.map(({ parseResult }) => parseResult.value).filter(isDocument);
}

/** Why a path cannot be imported; nothing if it can. */
export function faultOfPath(path: string): string | undefined {
  if (path === '') return say`An import needs a path, such as "furniture.booth".`;
  if (/^[a-z][a-z0-9+.-]+:/i.test(path)) return say`Only files beside this one can be imported, not a web address.`;
  if (path.includes('\\')) return say`Write the path with /: "${path.replace(/\\+/g, '/')}".`;
  if (path.startsWith('/') || /^[a-z]:/i.test(path))
    return say`Write the path from this file, such as "../furniture.booth".`;
  if (/\p{Surrogate}/u.test(path)) return say`The path holds half of a character: write the name of the file anew.`;
  if (!path.endsWith('.booth')) return say`Only .booth files can be imported.`;
  return undefined;
}

function uriOf({ path }: Import, from: URI): URI | undefined {
  if (path === undefined) return undefined;
  const { inner } = readText(path);
  if (faultOfPath(inner) !== undefined || /^https?$/.test(from.scheme)) return undefined;
  return UriUtils.resolvePath(UriUtils.dirname(from), inner);
}

import {
  type AstNode,
  type Cancellation,
  DefaultLangiumDocumentFactory,
  type LangiumDocument,
  type ParseResult,
  type URI,
} from 'langium';
import type { LangiumSharedServices } from 'langium/lsp';
import { patch } from '../syntax/patch.js';

/** Parses a changed document block by block where it can. */
export class BoothDocumentFactory extends DefaultLangiumDocumentFactory {
  /** Of the documents that are being updated. */
  private readonly last = new Map<string, ParseResult>();

  constructor(services: LangiumSharedServices) {
    super(services);
  }

  override async update<T extends AstNode>(
    document: LangiumDocument<T>,
    token: Cancellation.CancellationToken,
  ): Promise<LangiumDocument<T>> {
    const uri = document.uri.toString();
    this.last.set(uri, document.parseResult);
    try {
      return await super.update(document, token);
    } finally {
      this.last.delete(uri);
    }
  }

  protected override async parseAsync<T extends AstNode>(
    uri: URI,
    text: string,
    token: Cancellation.CancellationToken,
  ): Promise<ParseResult<T>> {
    const last = this.last.get(uri.toString());
    const patched = last && patch(last, text, (part) => this.parse(uri, part));
    return patched ? (patched as ParseResult<T>) : super.parseAsync(uri, text, token);
  }
}

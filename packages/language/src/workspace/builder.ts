import {
  type BuildOptions,
  Cancellation,
  DefaultDocumentBuilder,
  DocumentState,
  type LangiumDocument,
  interruptAndCheck,
  type URI,
} from 'langium';
import type { LangiumSharedServices } from 'langium/lsp';
import { Gathering, importsOf } from './imports.js';

/** Changes that follow each other faster than this are typing, in milliseconds. */
const BURST = 300;
/** A parse that lasts longer than this delays the keys behind it, in milliseconds. */
const SLOW_PARSE = 20;

/** Builds documents together with the files that they import, which are loaded when they are first needed. */
export class BoothDocumentBuilder extends DefaultDocumentBuilder {
  private readonly isServing: boolean;
  private lastStart = -Infinity;
  private lastParse = 0;

  constructor(services: LangiumSharedServices) {
    super(services);
    this.isServing = services.lsp.Connection !== undefined;
  }

  protected override async buildDocuments(
    documents: LangiumDocument[],
    options: BuildOptions,
    token: Cancellation.CancellationToken,
  ): Promise<void> {
    await this.gatherKeys(token);
    const all = await this.withImports(documents, token);
    await super.buildDocuments(this.importedFirst(all), options, token);
  }

  /** What is wrong with a file is known before what imports it is looked at. A file sees more than each that it imports. */
  private importedFirst(documents: readonly LangiumDocument[]): LangiumDocument[] {
    const reach = new Map(documents.map((document) => [document, this.seenFrom([document]).size]));
    return [...documents].sort((a, b) => reach.get(a)! - reach.get(b)!);
  }

  private seenFrom(documents: Iterable<LangiumDocument>): ReadonlySet<LangiumDocument> {
    const seen = new Set(documents);
    for (const each of seen) {
      for (const { uri } of importsOf(each)) {
        const imported = uri && this.langiumDocuments.getDocument(uri);
        if (imported) seen.add(imported);
      }
    }
    return seen;
  }

  /** An editor wants to hear of the files that are open and of those that they import, not of the whole workspace. */
  protected override shouldValidate(document: LangiumDocument): boolean {
    return super.shouldValidate(document) && (!this.isServing || this.isInUse(document));
  }

  /** Whether a file is open, or imported by one that is. */
  isInUse(document: LangiumDocument): boolean {
    const open = this.langiumDocuments.all.filter(({ uri }) => this.textDocuments?.get(uri) !== undefined);
    return this.seenFrom(open).has(document);
  }

  /** Whoever waits for a document hears of it also if the build is cancelled at that moment: the next one may not pass there again. */
  protected override notifyDocumentPhase(document: LangiumDocument, state: DocumentState): Promise<void> {
    return super.notifyDocumentPhase(document, state, Cancellation.CancellationToken.None);
  }

  /**
   * While a person types fast into a long file, lets the next keys arrive before a parse, which nothing can interrupt: if
   * one does, this build is cancelled.
   */
  private async gatherKeys(token: Cancellation.CancellationToken): Promise<void> {
    const isBurst = performance.now() - this.lastStart < BURST;
    this.lastStart = performance.now();
    if (isBurst && this.lastParse > SLOW_PARSE) await new Promise((resolve) => setTimeout(resolve, this.lastParse / 2));
    await interruptAndCheck(token);
  }

  private async withImports(
    documents: readonly LangiumDocument[],
    token: Cancellation.CancellationToken,
  ): Promise<LangiumDocument[]> {
    const all = new Set(documents);
    for (const document of documents) {
      const gathering = new Gathering(document);
      for (const each of gathering.files) {
        all.add(each);
        await this.parse(each, token);
        for (const { uri } of importsOf(each)) {
          if (gathering.isFull) break;
          const imported = uri && (await this.load(uri));
          if (!imported) continue;
          await this.parse(imported, token);
          gathering.take(imported);
        }
      }
    }
    return [...all].filter((document) => documents.includes(document) || document.state < DocumentState.Validated);
  }

  private async parse(document: LangiumDocument, token: Cancellation.CancellationToken): Promise<void> {
    if (document.state >= DocumentState.Parsed) return;
    const start = performance.now();
    await this.langiumDocumentFactory.update(document, token);
    this.lastParse = performance.now() - start;
    await this.notifyDocumentPhase(document, DocumentState.Parsed);
  }

  private async load(uri: URI): Promise<LangiumDocument | undefined> {
    try {
      return await this.langiumDocuments.getOrCreateDocument(uri);
    } catch {
      return undefined;
    }
  }
}

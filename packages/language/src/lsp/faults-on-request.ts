import { delayNextTick, DocumentState, type LangiumDocument, URI } from 'langium';
import {
  type CancellationToken,
  type Connection,
  type Diagnostic,
  type DocumentDiagnosticParams,
  type DocumentDiagnosticReport,
  type PublishDiagnosticsParams,
} from 'vscode-languageserver';
import type { BoothServices } from '../services.js';
import type { BoothValidator } from '../validation/validator.js';
import { rethrow } from './cancelled.js';
import { isOfOpenText } from './versions.js';

/** How long a question may come after its change, milliseconds: an editor sends the one right after the other. */
const PATIENCE = 3;
/** How often an answer passes through the loop of events until it is written. */
const TICKS = 2;

/** What an editor was told last of the faults of a text. */
interface Told {
  readonly faults: string;
  readonly id: string;
  readonly version: number;
}

/**
 * The faults of a text, for an editor that asks for them after each change. They are known long before what the booth comes
 * to, which is still told unasked; the faults of a file that the editor asks about are not told twice.
 */
export class FaultsOnRequest {
  /** By file, as long as it is open. */
  private readonly told = new Map<string, Told>();
  private answers = 0;
  /** By file: who waits until its faults are told. */
  private readonly waiting = new Map<string, () => void>();

  constructor(private readonly services: BoothServices) {}

  serve(connection: Connection): void {
    const { DocumentBuilder, TextDocuments } = this.services.shared.workspace;
    connection.languages.diagnostics.on((params, token) => this.answer(connection, params, token).catch(rethrow));
    TextDocuments.onDidClose(({ document: { uri } }) => this.told.delete(uri));
    DocumentBuilder.onDocumentPhase(DocumentState.Validated, (document) => this.refresh(connection, document));
  }

  /** Lets an editor that asks for the faults after each change have them before anything is computed. */
  async lead(document: LangiumDocument): Promise<void> {
    const uri = document.uri.toString();
    const last = this.told.get(uri);
    if (!last) return;
    if (last.version !== document.textDocument.version)
      await new Promise<void>((resolve) => {
        this.waiting.set(uri, resolve);
        setTimeout(resolve, PATIENCE);
      });
    for (let n = 0; n < TICKS; n++) await delayNextTick();
  }

  /** What is left to tell unasked. */
  unasked(params: PublishDiagnosticsParams): PublishDiagnosticsParams {
    if (!this.told.has(params.uri)) return params;
    return { ...params, diagnostics: params.diagnostics.filter((each) => !this.validator.isFault(each)) };
  }

  private async answer(
    connection: Connection,
    { textDocument: { uri }, previousResultId }: DocumentDiagnosticParams,
    token: CancellationToken,
  ): Promise<DocumentDiagnosticReport> {
    const document = await this.linked(URI.parse(uri), token);
    const isFirst = !this.told.has(uri);
    const items = [...this.validator.faultsOf(document)];
    const { id } = this.tell(document, items);
    if (isFirst && document.state === DocumentState.Validated && items.length > 0)
      void connection.sendDiagnostics({ uri, diagnostics: document.diagnostics ?? [] });
    return id === previousResultId ? { kind: 'unchanged', resultId: id } : { kind: 'full', resultId: id, items };
  }

  private tell(document: LangiumDocument, items: readonly Diagnostic[]): Told {
    const uri = document.uri.toString();
    const faults = JSON.stringify(items);
    const last = this.told.get(uri);
    const id = last?.faults === faults ? last.id : String(++this.answers);
    const told = { faults, id, version: document.textDocument.version };
    this.told.set(uri, told);
    this.waiting.get(uri)?.();
    this.waiting.delete(uri);
    return told;
  }

  /** An imported file can change the faults of a text that did not change: the editor does not know that it should ask. */
  private refresh(connection: Connection, document: LangiumDocument): void {
    const last = this.told.get(document.uri.toString());
    if (last?.version !== document.textDocument.version) return;
    if (last.faults !== JSON.stringify(this.validator.faultsOf(document)) && this.services.Editor.refreshesFaults)
      void connection.languages.diagnostics.refresh().catch(() => undefined);
  }

  /** Resolves once a document is linked as its text is now. */
  private async linked(uri: URI, token: CancellationToken): Promise<LangiumDocument> {
    const { DocumentBuilder, LangiumDocuments, WorkspaceManager } = this.services.shared.workspace;
    await WorkspaceManager.ready;
    for (;;) {
      await DocumentBuilder.waitUntil(DocumentState.IndexedReferences, uri, token);
      const document = LangiumDocuments.getDocument(uri);
      if (document && isOfOpenText(document, this.services.shared)) return document;
      await new Promise<void>((resolve) => {
        const update = DocumentBuilder.onUpdate(() => {
          update.dispose();
          resolve();
        });
      });
    }
  }

  private get validator(): BoothValidator {
    return this.services.validation.DocumentValidator as BoothValidator;
  }
}

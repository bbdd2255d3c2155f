import { type TextDocument, URI } from 'langium';
import { DefaultDocumentUpdateHandler, type LangiumSharedServices } from 'langium/lsp';
import type { FileSystemWatcher, TextDocumentChangeEvent } from 'vscode-languageserver';

/** Watches booth files only, and forgets what was typed into a file that is closed without saving. */
export class BoothDocumentUpdateHandler extends DefaultDocumentUpdateHandler {
  private readonly files: LangiumSharedServices['workspace']['FileSystemProvider'];

  constructor(services: LangiumSharedServices) {
    super(services);
    this.files = services.workspace.FileSystemProvider;
  }

  protected override getWatchers(): FileSystemWatcher[] {
    return [{ globPattern: '**/*.booth' }];
  }

  didCloseDocument({ document }: TextDocumentChangeEvent<TextDocument>): void {
    const uri = URI.parse(document.uri);
    void this.files.exists(uri).then(
      (exists) => (exists ? this.fireDocumentUpdate([uri], []) : this.fireDocumentUpdate([], [uri])),
      () => this.fireDocumentUpdate([], [uri]),
    );
  }
}

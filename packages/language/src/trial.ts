import { EmptyFileSystemProvider, type FileSystemProvider, type LangiumDocument, TextDocument } from 'langium';
import type { LangiumSharedServices } from 'langium/lsp';
import type { Assessment } from '@boothwright/fit';
import type { FileEdit } from './preview/set.js';
import type { Assessments } from './assessments.js';
import type { Computation } from './computation.js';
import type { Imports } from './workspace/imports.js';

/** Makes services that know no file, to try a text without touching what the editor shows. */
type Create = (context: {
  readonly fileSystemProvider: () => FileSystemProvider;
  readonly computation: Computation;
}) => { readonly shared: LangiumSharedServices; readonly booth: { readonly Assessments: Assessments } };

/** Assesses a text that a file might have, beside the files that it imports as they are now. */
export class Trial {
  constructor(
    private readonly services: {
      readonly Computation: Computation;
      readonly workspace: { readonly Imports: Imports };
    },
    private readonly create: Create,
  ) {}

  assess(document: LangiumDocument, text: string): Promise<Assessment | undefined> {
    return this.assessAs(document, (each) => (each === document ? text : each.textDocument.getText()));
  }

  /** As `assess`, with edits of the file and of those that it imports. */
  assessWith(document: LangiumDocument, edits: readonly FileEdit[]): Promise<Assessment | undefined> {
    return this.assessAs(document, ({ textDocument, uri }) =>
      TextDocument.applyEdits(
        textDocument,
        edits.filter((edit) => edit.uri === uri.toString()),
      ),
    );
  }

  private async assessAs(
    document: LangiumDocument,
    textOf: (each: LangiumDocument) => string,
  ): Promise<Assessment | undefined> {
    const { shared, booth } = this.create({
      fileSystemProvider: () => new EmptyFileSystemProvider(),
      computation: this.services.Computation,
    });
    const { LangiumDocumentFactory, LangiumDocuments, DocumentBuilder } = shared.workspace;
    const drafts = this.services.workspace.Imports.visibleFrom(document).map((each) =>
      LangiumDocumentFactory.fromString(textOf(each), each.uri),
    );
    for (const draft of drafts) LangiumDocuments.addDocument(draft);
    await DocumentBuilder.build(drafts);
    return booth.Assessments.safelyOf(drafts[0]!)?.assessment;
  }
}

import { EmptyFileSystemProvider, type FileSystemProvider, type LangiumDocument, TextDocument, URI } from 'langium';
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

/**
 * Assesses a text that a file might have, beside the files that it imports as they are now. What was tried last is kept: a text that
 * differs from it in one place costs no more than a keystroke does, and the same one nothing.
 */
export class Trial {
  /** What is tried, by the files' URIs. */
  private texts: ReadonlyMap<string, string> = new Map();
  private made: ReturnType<Create> | undefined;
  private last: Promise<unknown> = Promise.resolve();

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

  /** One after another: there is one set of drafts. */
  private assessAs(
    document: LangiumDocument,
    textOf: (each: LangiumDocument) => string,
  ): Promise<Assessment | undefined> {
    const assessed = this.last.then(() => this.assessNow(document, textOf));
    this.last = assessed.catch(() => this.forget());
    return assessed;
  }

  private async assessNow(
    document: LangiumDocument,
    textOf: (each: LangiumDocument) => string,
  ): Promise<Assessment | undefined> {
    const { shared, booth } = this.workshop();
    const { LangiumDocumentFactory, LangiumDocuments, DocumentBuilder } = shared.workspace;
    const files = this.services.workspace.Imports.visibleFrom(document);
    const texts = new Map(files.map((file) => [file.uri.toString(), textOf(file)]));
    const gone = [...this.texts.keys()].filter((uri) => !texts.has(uri)).map((uri) => URI.parse(uri));
    this.texts = texts;
    const changed = files.flatMap(({ uri }) => {
      const text = texts.get(uri.toString())!;
      const draft = LangiumDocuments.getDocument(uri);
      if (!draft) LangiumDocuments.addDocument(LangiumDocumentFactory.fromString(text, uri));
      return draft?.textDocument.getText() === text ? [] : [uri];
    });
    if (changed.length + gone.length > 0) await DocumentBuilder.update(changed, gone);
    const draft = LangiumDocuments.getDocument(document.uri);
    return draft && booth.Assessments.safelyOf(draft)?.assessment;
  }

  /** What is half built is no ground to go on from. */
  private forget(): void {
    this.made = undefined;
    this.texts = new Map();
  }

  private workshop(): ReturnType<Create> {
    if (this.made) return this.made;
    const none = new EmptyFileSystemProvider();
    const refuse = none.readFile.bind(none);
    const readFile = (uri: URI) => {
      const text = this.texts.get(uri.toString());
      return text === undefined ? refuse() : Promise.resolve(text);
    };
    const drafts = Object.assign(none, { readFile });
    this.made = this.create({ fileSystemProvider: () => drafts, computation: this.services.Computation });
    this.made.shared.workspace.DocumentBuilder.updateBuildOptions = {};
    return this.made;
  }
}

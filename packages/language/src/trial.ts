import {
  EmptyFileSystemProvider,
  type FileSystemProvider,
  type LangiumDocument,
  type LangiumParser,
  TextDocument,
  URI,
} from 'langium';
import type { LangiumSharedServices } from 'langium/lsp';
import type { Assessment, Booth } from '@boothwright/fit';
import type { FileEdit } from './preview/set.js';
import type { Assessments } from './assessments.js';
import type { Computation } from './computation.js';
import { isBooth, readBooth } from './reading/reader.js';
import { tryBlock } from './syntax/patch.js';
import type { Imports } from './workspace/imports.js';

type Texts = ReadonlyMap<string, string>;

/** Makes services that know no file, to try a text without touching what the editor shows. */
type Create = (context: {
  readonly fileSystemProvider: () => FileSystemProvider;
  readonly computation: Computation;
}) => { readonly shared: LangiumSharedServices; readonly booth: { readonly Assessments: Assessments } };

/**
 * Assesses a text that a file might have, beside the files that it imports as they are now. The drafts say in between what the files say: a text
 * that differs from that in one place costs no more than two keystrokes do, and the one that was tried last nothing.
 */
export class Trial {
  /** What the drafts say, by the files' URIs. */
  private texts: Texts = new Map();
  private made: ReturnType<Create> | undefined;
  private last: Promise<unknown> = Promise.resolve();
  private answer: { readonly texts: Texts; readonly assessment: Assessment | undefined } | undefined;

  constructor(
    private readonly services: {
      readonly Computation: Computation;
      readonly parser: { readonly LangiumParser: LangiumParser };
      readonly workspace: { readonly Imports: Imports };
    },
    private readonly create: Create,
  ) {}

  assess(document: LangiumDocument, text: string): Promise<Assessment | undefined> {
    return this.assessAs(document, (each) => (each === document ? text : each.textDocument.getText()));
  }

  /**
   * The booth of such a text, for somebody who looks no farther than the block in which it differs from the file: what follows may be
   * said to stand where it stands in the file. If the text differs inside one block's braces alone, only that block is read anew. The
   * document must be linked.
   */
  async boothOf(document: LangiumDocument, text: string): Promise<Booth | undefined> {
    const { parser, workspace } = this.services;
    const instead = tryBlock(document.parseResult, text, (part) => parser.LangiumParser.parse(part));
    if (!instead || !isBooth(document)) return (await this.assess(document, text))?.booth;
    const { references } = document;
    const { length } = references;
    const booth = readBooth(document, workspace.Imports.visibleFrom(document), instead);
    // The library counts a name that is looked up among those of the document.
    references.length = length;
    return booth;
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
    this.last = assessed.then(() => this.restore(document)).catch(() => this.forget());
    return assessed;
  }

  private async assessNow(
    document: LangiumDocument,
    textOf: (each: LangiumDocument) => string,
  ): Promise<Assessment | undefined> {
    const texts = this.textsOf(document, textOf);
    if (this.answer && isSame(this.answer.texts, texts)) return this.answer.assessment;
    if (this.made) await this.restore(document);
    await this.bringTo(texts);
    const { shared, booth } = this.workshop();
    const draft = shared.workspace.LangiumDocuments.getDocument(document.uri);
    const assessment = draft && booth.Assessments.safelyOf(draft)?.assessment;
    this.answer = { texts, assessment };
    return assessment;
  }

  /** Makes the drafts say what a file and those that it imports say now. */
  private restore(document: LangiumDocument): Promise<void> {
    return this.bringTo(this.textsOf(document, ({ textDocument }) => textDocument.getText()));
  }

  private textsOf(document: LangiumDocument, textOf: (each: LangiumDocument) => string): Texts {
    const files = this.services.workspace.Imports.visibleFrom(document);
    return new Map(files.map((file) => [file.uri.toString(), textOf(file)]));
  }

  /** Makes the drafts say this. */
  private async bringTo(texts: Texts): Promise<void> {
    const { LangiumDocumentFactory, LangiumDocuments, DocumentBuilder } = this.workshop().shared.workspace;
    const gone = [...this.texts.keys()].filter((uri) => !texts.has(uri)).map((uri) => URI.parse(uri));
    this.texts = texts;
    const changed = [...texts].flatMap(([name, text]) => {
      const uri = URI.parse(name);
      const draft = LangiumDocuments.getDocument(uri);
      if (!draft) LangiumDocuments.addDocument(LangiumDocumentFactory.fromString(text, uri));
      return draft?.textDocument.getText() === text ? [] : [uri];
    });
    if (changed.length + gone.length > 0) await DocumentBuilder.update(changed, gone);
  }

  /** What is half built is no ground to go on from. */
  private forget(): void {
    this.made = undefined;
    this.answer = undefined;
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

/** Of the same file, too: it is the first of those that it sees. */
function isSame(a: Texts, b: Texts): boolean {
  const others = [...b];
  return (
    a.size === b.size && [...a].every(([uri, text], index) => others[index]![0] === uri && others[index]![1] === text)
  );
}

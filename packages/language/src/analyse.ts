import type { URI } from 'langium';
import { type FileSystemProvider, type LangiumDocument } from 'langium';
import type { Assessment, Booth, Origin, TextPosition } from '@boothwright/fit';
import type { Computation } from './computation.js';
import { createBoothServices } from './module.js';
import type { BoothServices } from './services.js';

/** What is said of one place in one file. */
export interface FileDiagnostic {
  readonly uri: string;
  readonly start: TextPosition;
  readonly end: TextPosition;
  readonly severity: 'error' | 'warning' | 'information' | 'hint';
  /** A fault of the text, or the id of the check that found something. */
  readonly code: string;
  readonly kind: 'text' | 'finding';
  readonly message: string;
  readonly related: readonly { readonly origin: Origin; readonly message: string }[];
}

export interface Analysis {
  /** The file's own, then those of the files that it imports, in the order of each text. */
  readonly diagnostics: readonly FileDiagnostic[];
  /** No file of the set has a fault of the text. */
  readonly understood: boolean;
  /** The files, the analysed one first. */
  readonly files: readonly string[];
  /** Absent for a file that only holds furniture for others. What is faulty is left out of it. */
  readonly booth?: Booth;
  readonly assessment?: Assessment;
}

export interface AnalysisOptions {
  readonly fileSystem: FileSystemProvider;
  readonly computation?: Computation;
}

/** A file by its place, or a text that stands in for it. */
export type FileOrText = URI | { readonly uri: URI; readonly text: string };

/**
 * Reads, checks and assesses one booth file and what it imports. Fails if the file itself cannot be read; faults in it, and
 * imports that cannot be read, are diagnostics.
 */
export function analyse(file: FileOrText, options: AnalysisOptions): Promise<Analysis> {
  return createAnalyser(options)(file);
}

/** As `analyse`, for several files one after another: what they import is read once. */
export function createAnalyser(options: AnalysisOptions): (file: FileOrText) => Promise<Analysis> {
  const { shared, booth: services } = createBoothServices({
    fileSystemProvider: () => options.fileSystem,
    computation: options.computation,
  });
  const { LangiumDocuments, LangiumDocumentFactory, DocumentBuilder } = shared.workspace;
  return async (file) => {
    let document: LangiumDocument;
    if ('text' in file) {
      if (LangiumDocuments.hasDocument(file.uri)) LangiumDocuments.deleteDocument(file.uri);
      document = LangiumDocumentFactory.fromString(file.text, file.uri);
      LangiumDocuments.addDocument(document);
    } else document = await LangiumDocuments.getOrCreateDocument(file);
    await DocumentBuilder.build([document], { validation: true });
    return analysisOf(document, services);
  };
}

/** The analysis of a document that is built and validated. */
export function analysisOf(document: LangiumDocument, services: BoothServices): Analysis {
  const visible = services.workspace.Imports.visibleFrom(document);
  const assessed = services.Assessments.safelyOf(document);
  const diagnostics = visible.flatMap(toFileDiagnostics);
  return {
    diagnostics,
    understood: !diagnostics.some(({ kind, severity }) => kind === 'text' && severity === 'error'),
    files: visible.map(({ uri }) => uri.toString()),
    booth: assessed?.booth,
    assessment: assessed?.assessment,
  };
}

const severities = ['error', 'warning', 'information', 'hint'] as const;

function toFileDiagnostics({ uri, diagnostics = [] }: LangiumDocument): FileDiagnostic[] {
  return diagnostics.map(({ range, severity, code, message, relatedInformation = [], data }) => ({
    uri: uri.toString(),
    start: range.start,
    end: range.end,
    severity: severities[(severity ?? 1) - 1]!,
    code: String(code),
    kind: data && typeof data === 'object' && 'check' in data ? 'finding' : 'text',
    message: typeof message === 'string' ? message : message.value,
    related: relatedInformation.map(({ location, message: says }) => ({
      origin: { uri: location.uri, start: location.range.start, end: location.range.end },
      message: says,
    })),
  }));
}

import { DocumentState, type FileSystemProvider, URI } from 'langium';
import { createRequestHandler, startLanguageServer } from 'langium/lsp';
import {
  type CancellationToken,
  CodeLensRefreshRequest,
  type Connection,
  type SelectionRange,
  type SelectionRangeParams,
} from 'vscode-languageserver';
import { inEnglish, speak, speaksEnglish, type Translation } from '@boothwright/fit';
import { analysisOf } from '../analyse.js';
import {
  type AdviceParams,
  adviceRequest,
  type AdviceResult,
  type AssessmentParams,
  assessmentRequest,
  type AssessmentResult,
  type ClientOptions,
} from '../protocol.js';
import { servePreview } from '../preview/requests.js';
import type { Computation } from '../computation.js';
import { createBoothServices } from '../module.js';
import type { BoothDocumentBuilder } from '../workspace/builder.js';
import { selectionRangesOf } from './selection.js';
import { tellVerdicts } from './verdicts.js';
import { withVersions } from './versions.js';
import { whenCheckedIn } from './when-checked.js';

/**
 * Serves an editor over a connection: the standard protocol, and the assessment of a file on request. Speaks the language whose
 * sentences the editor sends along, else that of the editor's locale if `translationTo` knows it, else English.
 */
export function serve(
  connection: Connection,
  fileSystemProvider: () => FileSystemProvider,
  translationTo: (locale: string) => Translation | undefined = () => undefined,
): void {
  const speaking: Connection = withVersions(
    connection,
    () => shared,
    (params) => booth.FaultsOnRequest.unasked(params),
  );
  const { shared, booth } = createBoothServices({ connection: speaking, fileSystemProvider });
  shared.lsp.LanguageServer.onInitialize(({ locale, initializationOptions }) => {
    const { sentences } = (initializationOptions ?? {}) as ClientOptions;
    const translation = sentences ?? (locale === undefined ? undefined : translationTo(locale));
    if (translation) speak(translation);
  });
  const { ConfigurationProvider, DocumentBuilder, LangiumDocuments, TextDocuments } = shared.workspace;
  const whenChecked = whenCheckedIn(shared);
  const lastGood = new Map<string, AssessmentResult>();

  const current = (uri: URI): AssessmentResult | undefined => {
    const document = LangiumDocuments.getDocument(uri);
    const { understood, assessment } = document ? analysisOf(document, booth) : { understood: false };
    if (understood && assessment) lastGood.set(uri.toString(), { assessment, stale: false });
    if (understood && !assessment) lastGood.delete(uri.toString());
    if (understood) return lastGood.get(uri.toString());
    const last = lastGood.get(uri.toString());
    return last && { ...last, stale: true };
  };

  /** Takes back what was said of a file that is closed, and of those that only it imported. */
  const forget = (closed: URI): void => {
    const document = LangiumDocuments.getDocument(closed);
    const seen = document ? booth.workspace.Imports.visibleFrom(document) : [];
    for (const each of seen)
      if (!(DocumentBuilder as BoothDocumentBuilder).isInUse(each))
        void speaking.sendDiagnostics({ uri: each.uri.toString(), diagnostics: [] });
  };

  DocumentBuilder.onDocumentPhase(DocumentState.Validated, ({ uri }) => void current(uri));
  TextDocuments.onDidClose(({ document: { uri } }) => {
    lastGood.delete(URI.parse(uri).toString());
    booth.LastFindings.forget(URI.parse(uri).toString());
    forget(URI.parse(uri));
  });
  connection.onRequest(
    assessmentRequest,
    ({ uri: text, advice }: AssessmentParams, token: CancellationToken): Promise<AssessmentResult | null> =>
      whenChecked(text, token, (uri) => {
        const result = current(uri);
        return result ? forReport(result, advice === true, booth.Computation) : null;
      }),
  );

  connection.onRequest(
    adviceRequest,
    ({ uri: text, workstation }: AdviceParams, token: CancellationToken): Promise<AdviceResult | null> =>
      whenChecked(text, token, (uri) => {
        const document = LangiumDocuments.getDocument(uri);
        return (document && booth.Assessments.adviceFor(document, workstation)) ?? null;
      }),
  );

  booth.FaultsOnRequest.serve(speaking);
  tellVerdicts(connection, shared, booth);
  servePreview(connection, shared, booth, current, (result) => forReport(result, false, booth.Computation));

  connection.onSelectionRanges(
    createRequestHandler<SelectionRangeParams, SelectionRange[]>(
      (_, document, { positions }) => selectionRangesOf(document, positions),
      shared,
      DocumentState.Parsed,
    ),
  );

  const ignore = () => undefined;
  ConfigurationProvider.onConfigurationSectionUpdate(() => {
    void connection.languages.inlayHint.refresh().catch(ignore);
    void connection.sendRequest(CodeLensRefreshRequest.type).catch(ignore);
  });

  startLanguageServer(shared);
}

/** A report is written in English, and drawings are, so what it tells of is computed in English too, the figures of its drawings with it. */
function forReport(result: AssessmentResult, advice: boolean, { assess, advise }: Computation): AssessmentResult {
  const { booth } = result.assessment;
  const english = speaksEnglish() ? result.assessment : undefined;
  return inEnglish(() => {
    const assessment = english ?? assess(booth);
    return {
      ...result,
      assessment: { ...assessment, sketch: assessment.sketch },
      ...(advice && { advice: advise(booth) }),
    };
  });
}

import { URI } from 'langium';
import type { LangiumSharedServices } from 'langium/lsp';
import type { Assessment, Finding, Origin, PieceRef } from '@boothwright/fit';
import type { CancellationToken, Connection, WorkspaceEdit } from 'vscode-languageserver';
import { editOf } from '../lsp/edits.js';
import type { BoothHoverProvider } from '../lsp/hover.js';
import { whenCheckedIn } from '../lsp/when-checked.js';
import type { AssessmentResult } from '../protocol.js';
import type { BoothServices } from '../services.js';
import {
  pieceFiguresRequest,
  type PieceParams,
  piecesAtRequest,
  type PiecesAtParams,
  pieceSourceRequest,
  previewRequest,
  type PreviewParams,
  type PreviewResult,
  setRequest,
  type Setting,
  type SettingsParams,
  tryRequest,
} from './protocol.js';
import { editsFor, offeredHandles, triedHandles } from './set.js';
import { blockAt, piecesAt, sourceOf } from './pieces.js';

/**
 * Answers what a preview asks. `lastGood` knows the assessment of a file as it was when it could last be read; `drawable` gives it in the
 * language of drawings, with all that they need.
 */
export function servePreview(
  connection: Connection,
  shared: LangiumSharedServices,
  services: BoothServices,
  lastGood: (uri: URI) => AssessmentResult | undefined,
  drawable: (result: AssessmentResult) => AssessmentResult,
): void {
  const { LangiumDocuments } = shared.workspace;
  const whenChecked = whenCheckedIn(shared);

  /** What the hover says of a thing: in the text and in the preview the same. */
  const describe = (uri: URI, piece: PieceRef): string => {
    const main = LangiumDocuments.getDocument(uri);
    const booth = main && services.Assessments.safelyOf(main)?.booth;
    const source = booth && sourceOf(piece, booth);
    const document = source && LangiumDocuments.getDocument(URI.parse(source.uri));
    const block = document && blockAt(document, source.start);
    return block ? (services.lsp.HoverProvider as BoothHoverProvider).describe(block, main) : '';
  };

  connection.onRequest(previewRequest, ({ uri: text }: PreviewParams, token: CancellationToken) =>
    whenChecked(text, token, (uri): PreviewResult => {
      const result = lastGood(uri);
      if (result) {
        const { assessment, stale } = drawable(result);
        const handles = stale ? [] : offeredHandles(assessment, LangiumDocuments);
        return { is: 'booth', assessment: shortened(assessment), stale, handles };
      }
      const document = LangiumDocuments.getDocument(uri);
      const isBooth = document && services.Assessments.safelyOf(document) !== undefined;
      return { is: 'nothing', because: isBooth ? 'unread' : 'no booth' };
    }),
  );

  connection.onRequest(
    piecesAtRequest,
    async ({ booth: text, uri, position }: PiecesAtParams, token: CancellationToken): Promise<readonly PieceRef[]> =>
      (await whenChecked(text, token, (main) => {
        const assessment = lastGood(main)?.assessment;
        const document = LangiumDocuments.getDocument(URI.parse(uri));
        const own = LangiumDocuments.getDocument(main);
        if (!assessment || !document || !own) return [];
        if (!services.workspace.Imports.visibleFrom(own).includes(document)) return [];
        return piecesAt(document, position, assessment.booth);
      })) ?? [],
  );

  connection.onRequest(pieceSourceRequest, ({ uri: text, piece }: PieceParams, token: CancellationToken) =>
    whenChecked(text, token, (uri): Origin | null => {
      const document = LangiumDocuments.getDocument(uri);
      const now = document && services.Assessments.safelyOf(document)?.booth;
      return (now && sourceOf(piece, now)) ?? null;
    }),
  );

  connection.onRequest(
    pieceFiguresRequest,
    async ({ uri: text, piece }: PieceParams, token: CancellationToken): Promise<string> =>
      (await whenChecked(text, token, (uri) => describe(uri, piece))) ?? '',
  );

  /** The edits that set numbers, in the text as it is now. */
  const editsOf = (uri: URI, settings: readonly Setting[]) => {
    const current = lastGood(uri);
    return current && !current.stale ? editsFor(settings, current.assessment, LangiumDocuments) : undefined;
  };

  connection.onRequest(setRequest, ({ uri: text, settings }: SettingsParams, token: CancellationToken) =>
    whenChecked(text, token, (uri): WorkspaceEdit | null => {
      const edits = editsOf(uri, settings);
      return edits ? editOf(edits) : null;
    }),
  );

  connection.onRequest(
    tryRequest,
    async ({ uri: text, settings }: SettingsParams, token: CancellationToken): Promise<PreviewResult | null> => {
      const tried = await whenChecked(text, token, (uri) => {
        const document = LangiumDocuments.getDocument(uri);
        const current = lastGood(uri)?.assessment;
        const edits = editsOf(uri, settings);
        return document && current && edits ? { document, current, edits } : null;
      });
      const found = tried && (await services.Trial.assessWith(tried.document, tried.edits));
      if (!found) return null;
      const { assessment } = drawable({ assessment: found, stale: false });
      const handles = triedHandles(assessment, tried.current, LangiumDocuments);
      return { is: 'booth', assessment: shortened(assessment), stale: false, handles };
    },
  );
}

/** Without what no drawing shows, which is more than half of it: it is sent with every key. */
function shortened(assessment: Assessment): Assessment {
  return { ...assessment, findings: assessment.findings.map(judgement), operators: [] };
}

/** Of a finding its verdict, what it is about, and the limit that a dimension names; its texts stay here. */
function judgement({ check, subject, operator, posture, verdict, accepted, limit, strength }: Finding) {
  const texts = { message: '', source: '', related: [], remedies: [], assumptions: [], defaults: [] };
  return { check, subject, operator, posture, verdict, accepted, limit, strength, ...texts };
}

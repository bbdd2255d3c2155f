import { DocumentState, type LangiumDocument } from 'langium';
import type { LangiumSharedServices } from 'langium/lsp';
import type { Verdict } from '@boothwright/fit';
import type { Connection } from 'vscode-languageserver';
import { analysisOf } from '../analyse.js';
import { type ClientOptions, verdictNotification, type VerdictParams } from '../protocol.js';
import type { BoothServices } from '../services.js';

/** Tells an editor that wants it the verdict in numbers, each time an open file has been checked. */
export function tellVerdicts(connection: Connection, shared: LangiumSharedServices, services: BoothServices): void {
  let isWanted = false;
  shared.lsp.LanguageServer.onInitialize(({ initializationOptions }) => {
    isWanted = (initializationOptions as ClientOptions | undefined)?.showsVerdict === true;
  });
  const { DocumentBuilder, TextDocuments } = shared.workspace;
  DocumentBuilder.onDocumentPhase(DocumentState.Validated, (document) => {
    if (!isWanted || !TextDocuments.get(document.uri)) return;
    void connection.sendNotification(verdictNotification, verdictOn(document, services));
  });
}

function verdictOn(document: LangiumDocument, services: BoothServices): VerdictParams {
  const { diagnostics } = analysisOf(document, services);
  const assessed = services.Assessments.safelyOf(document);
  const findings = assessed?.assessment.findings ?? [];
  const of = (verdict: Verdict) =>
    findings.filter((finding) => finding.verdict === verdict && finding.accepted === undefined).length;
  return {
    uri: document.uri.toString(),
    version: document.textDocument.version,
    faults: diagnostics.filter(({ kind }) => kind === 'text').length,
    ...(assessed && {
      counts: {
        fail: of('fail'),
        marginal: of('marginal'),
        unknown: of('unknown'),
        pass: of('pass'),
        accepted: findings.filter(({ accepted }) => accepted !== undefined).length,
      },
      took: assessed.took,
    }),
  };
}

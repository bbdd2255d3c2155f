import { say } from '@boothwright/fit';
import {
  Cancellation,
  DefaultDocumentValidator,
  type LangiumDocument,
  interruptAndCheck,
  type ValidationOptions,
  WorkspaceCache,
} from 'langium';
import type { Assessment } from '@boothwright/fit';
import type { Diagnostic, DiagnosticTag } from 'vscode-languageserver-types';
import { pageUri } from '../protocol.js';
import type { BoothServices } from '../services.js';
import { checkDocument } from './check.js';
import { diagnosticsOf, idleAcceptances } from './findings.js';
import type { Issue } from './issue.js';

/** Checks a whole document at once: its text first, then what its booth comes to. */
export class BoothValidator extends DefaultDocumentValidator {
  private readonly services: BoothServices;

  private readonly checks: Parameters<typeof checkDocument>[2];
  private readonly faults: WorkspaceCache<string, readonly Diagnostic[]>;
  private readonly told = new WeakSet<Diagnostic>();

  constructor(services: BoothServices) {
    super(services);
    this.services = services;
    const { checks, limits = checks } = services.Computation;
    this.checks = { all: checks, limits };
    this.faults = new WorkspaceCache(services.shared);
  }

  override async validateDocument(
    document: LangiumDocument,
    options: ValidationOptions = {},
    token = Cancellation.CancellationToken.None,
  ): Promise<Diagnostic[]> {
    if (options.categories && !options.categories.includes('built-in')) return [];
    await interruptAndCheck(token);
    const faults = this.faultsOf(document);
    await this.services.FaultsOnRequest.lead(document);
    await interruptAndCheck(token);
    await this.services.Assessments.prepare(document, token);
    const visible = this.services.workspace.Imports.visibleFrom(document);
    const hasFaults = faults.length > 0 || visible.some((each) => each !== document && isFaulty(each));
    return [...faults, ...this.findings(document, hasFaults).map((each) => this.linked(each))];
  }

  /** What is wrong with the text of a document that is linked: found once until something changes. */
  faultsOf(document: LangiumDocument): readonly Diagnostic[] {
    return this.faults.get(document.uri.toString(), () => {
      const { Imports } = this.services.workspace;
      const visible = Imports.visibleFrom(document);
      const issues = checkDocument(document, visible, this.checks, (uri) => Imports.isBeyond(uri, visible));
      const faults = issues.map((issue) => this.linked(this.ofIssue(issue)));
      for (const fault of faults) this.told.add(fault);
      return faults;
    });
  }

  /** Whether a diagnostic is one of a text, not of what its booth comes to. */
  isFault(diagnostic: Diagnostic): boolean {
    return this.told.has(diagnostic);
  }

  /** A computation that breaks must not take the other diagnostics with it, nor break silently. */
  private findings(document: LangiumDocument, hasFaults: boolean): Diagnostic[] {
    try {
      const assessment = this.services.Assessments.of(document)?.assessment;
      const shown = assessment ? diagnosticsOf(assessment, document, hasFaults, this.getSource()) : [];
      const own = shown.map(({ diagnostic }) => diagnostic);
      if (hasFaults) return [...own, ...this.staying(document, assessment)];
      if (this.isServing) this.services.LastFindings.keep(document.textDocument, shown);
      const idle = assessment ? idleAcceptances(assessment, document.uri.toString()) : [];
      return [...own, ...idle.map((issue) => this.ofIssue(issue))];
    } catch (error) {
      const range = { start: { line: 0, character: 0 }, end: { line: 0, character: 1 } };
      const why = error instanceof Error ? error.message : String(error);
      const message = say`The checks stopped on this file, by a fault of their own: ${why}. Nothing was checked but the text.`;
      return [this.ofIssue({ code: 'checks-stopped', message, range })];
    }
  }

  /** Only an editor has seen the text before. */
  private staying(document: LangiumDocument, assessment: Assessment | undefined): Diagnostic[] {
    return this.isServing ? this.services.LastFindings.staying(document.textDocument, assessment) : [];
  }

  private get isServing(): boolean {
    return this.services.shared.lsp.Connection !== undefined;
  }

  /** Leads from the code to its page, in an editor that can open it. */
  private linked(diagnostic: Diagnostic): Diagnostic {
    if (typeof diagnostic.code !== 'string' || !this.services.Editor.opensPages) return diagnostic;
    return { ...diagnostic, codeDescription: { href: pageUri(diagnostic.code) } };
  }

  private ofIssue({ code, message, range, data, related, isIdle = false }: Issue): Diagnostic {
    return {
      range,
      severity: isIdle ? 4 : 1,
      ...(isIdle && { tags: [unnecessary] }),
      code,
      source: this.getSource(),
      message,
      relatedInformation: related?.map(({ origin, message: says }) => ({
        location: { uri: origin.uri, range: { start: origin.start, end: origin.end } },
        message: says,
      })),
      data,
    };
  }
}

const unnecessary: DiagnosticTag = 1;

/** Whether a file cannot be read in part, as far as is known. */
function isFaulty({ parseResult, diagnostics = [] }: LangiumDocument): boolean {
  const hasErrors = parseResult.lexerErrors.length > 0 || parseResult.parserErrors.length > 0;
  const isFault = ({ severity, data }: Diagnostic) =>
    severity === 1 && !(typeof data === 'object' && data !== null && 'check' in data);
  return hasErrors || diagnostics.some(isFault);
}

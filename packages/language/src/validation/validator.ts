import { say } from '@boothwright/fit';
import {
  Cancellation,
  DefaultDocumentValidator,
  type LangiumDocument,
  interruptAndCheck,
  type ValidationOptions,
} from 'langium';
import type { Diagnostic } from 'vscode-languageserver-types';
import { pageUri } from '../protocol.js';
import type { BoothServices } from '../services.js';
import { checkDocument } from './check.js';
import { diagnosticsOf } from './findings.js';
import type { Issue } from './issue.js';

/** Checks a whole document at once: its text first, then what its booth comes to. */
export class BoothValidator extends DefaultDocumentValidator {
  private readonly services: BoothServices;

  constructor(services: BoothServices) {
    super(services);
    this.services = services;
  }

  override async validateDocument(
    document: LangiumDocument,
    options: ValidationOptions = {},
    token = Cancellation.CancellationToken.None,
  ): Promise<Diagnostic[]> {
    if (options.categories && !options.categories.includes('built-in')) return [];
    await interruptAndCheck(token);
    const { Imports, Computation, Assessments } = { ...this.services.workspace, ...this.services };
    const visible = Imports.visibleFrom(document);
    const issues = checkDocument(document, visible, {
      all: Computation.checks,
      limits: Computation.limits ?? Computation.checks,
    });
    const diagnostics = issues.map((issue) => this.ofIssue(issue));
    await interruptAndCheck(token);
    return [...diagnostics, ...this.findings(document, issues.length > 0, Assessments)].map((each) =>
      this.linked(each),
    );
  }

  /** A computation that breaks must not take the other diagnostics with it, nor break silently. */
  private findings(
    document: LangiumDocument,
    hasFaults: boolean,
    assessments: BoothServices['Assessments'],
  ): Diagnostic[] {
    try {
      const assessed = assessments.of(document);
      return assessed ? diagnosticsOf(assessed.assessment, document, hasFaults, this.getSource()) : [];
    } catch (error) {
      const range = { start: { line: 0, character: 0 }, end: { line: 0, character: 1 } };
      const why = error instanceof Error ? error.message : String(error);
      const message = say`The checks stopped on this file, by a fault of their own: ${why}. Nothing was checked but the text.`;
      return [this.ofIssue({ code: 'checks-stopped', message, range })];
    }
  }

  /** Leads from the code to its page, in an editor that can open it. */
  private linked(diagnostic: Diagnostic): Diagnostic {
    if (typeof diagnostic.code !== 'string' || !this.services.Editor.opensPages) return diagnostic;
    return { ...diagnostic, codeDescription: { href: pageUri(diagnostic.code) } };
  }

  private ofIssue({ code, message, range, data, related }: Issue): Diagnostic {
    return {
      range,
      severity: 1,
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

import type { FileSystemProvider } from 'langium';
import type { DefaultSharedModuleContext, LangiumServices } from 'langium/lsp';
import type { Assessments } from './assessments.js';
import type { Computation } from './computation.js';
import type { EditorAbilities } from './lsp/editor.js';
import type { FaultsOnRequest } from './lsp/faults-on-request.js';
import type { Trial } from './trial.js';
import type { LastFindings } from './validation/last-findings.js';
import type { Imports } from './workspace/imports.js';

/** What the language adds to the services of a language server. */
export interface BoothAddedServices {
  readonly Computation: Computation;
  readonly Assessments: Assessments;
  readonly Trial: Trial;
  readonly LastFindings: LastFindings;
  readonly Editor: EditorAbilities;
  readonly FaultsOnRequest: FaultsOnRequest;
  readonly workspace: { readonly Imports: Imports };
}

export type BoothServices = LangiumServices & BoothAddedServices;

export interface BoothContext extends DefaultSharedModuleContext {
  readonly fileSystemProvider: () => FileSystemProvider;
  /** Something else than the checks of the product. */
  readonly computation?: Computation;
}

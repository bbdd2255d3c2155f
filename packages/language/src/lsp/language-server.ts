import { DefaultLanguageServer } from 'langium/lsp';
import { fixAllKind } from './fix-all.js';
import type { InitializeParams, InitializeResult } from 'vscode-languageserver';

/** Tells the editor also of what the language offers beyond the library's own services. */
export class BoothLanguageServer extends DefaultLanguageServer {
  protected override buildInitializeResult(params: InitializeParams): InitializeResult {
    const { capabilities, ...result } = super.buildInitializeResult(params);
    return {
      ...result,
      capabilities: {
        ...capabilities,
        selectionRangeProvider: true,
        ...(params.capabilities.textDocument?.diagnostic && {
          diagnosticProvider: { interFileDependencies: true, workspaceDiagnostics: false },
        }),
        codeActionProvider: { codeActionKinds: ['quickfix', 'refactor.rewrite', fixAllKind] },
      },
    };
  }
}

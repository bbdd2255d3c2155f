import { inject, type Module } from 'langium';
import {
  createDefaultModule,
  createDefaultSharedModule,
  type LangiumSharedServices,
  type PartialLangiumServices,
  type PartialLangiumSharedServices,
} from 'langium/lsp';
import { Assessments } from './assessments.js';
import { type Computation, product } from './computation.js';
import { BoothGeneratedSharedModule, BoothLanguageGeneratedModule } from './generated/module.js';
import { BoothCodeActionProvider } from './lsp/code-actions.js';
import { BoothCompletionProvider } from './lsp/completion.js';
import { BoothFoldingRangeProvider } from './lsp/folding.js';
import { BoothFormatter } from './lsp/formatter.js';
import { BoothCodeLensProvider } from './lsp/lenses.js';
import { BoothInlayHintProvider } from './lsp/hints.js';
import { BoothHoverProvider } from './lsp/hover.js';
import { BoothLanguageServer } from './lsp/language-server.js';
import { EditorAbilities } from './lsp/editor.js';
import { FaultsOnRequest } from './lsp/faults-on-request.js';
import { BoothDocumentLinkProvider } from './lsp/links.js';
import { BoothReferencesProvider, BoothRenameProvider, BoothWorkspaceSymbolProvider } from './lsp/names.js';
import { BoothSemanticTokenProvider } from './lsp/semantic-tokens.js';
import { BoothDocumentSymbolProvider, BoothNodeKindProvider } from './lsp/symbols.js';
import { BoothDocumentUpdateHandler } from './lsp/updates.js';
import { BoothReferenceDescriptions } from './references/descriptions.js';
import { BoothLinker } from './references/linker.js';
import { BoothScopeComputation, BoothScopeProvider } from './references/scope.js';
import { BoothLexer } from './syntax/lexer.js';
import { LazyCompletionParser } from './syntax/completion-parser.js';
import { BoothLexerMessages, BoothParserMessages } from './syntax/messages.js';
import { BoothTokenBuilder } from './syntax/token-builder.js';
import type { BoothAddedServices, BoothContext, BoothServices } from './services.js';
import { Trial } from './trial.js';
import { LastFindings } from './validation/last-findings.js';
import { BoothValidator } from './validation/validator.js';
import { BoothDocumentBuilder } from './workspace/builder.js';
import { BoothDocumentFactory } from './workspace/documents.js';
import { Imports } from './workspace/imports.js';
import { BoothIndexManager } from './workspace/index-manager.js';
import { BoothWorkspaceManager } from './workspace/manager.js';
import { BoothFileOperationHandler } from './workspace/moves.js';
import { BoothConfigurationProvider } from './workspace/settings.js';

function languageModule(computation: Computation): Module<BoothServices, PartialLangiumServices & BoothAddedServices> {
  return {
    Computation: () => computation,
    Assessments: (services) => new Assessments(services),
    Trial: (services) => new Trial(services, createBoothServices),
    LastFindings: () => new LastFindings(),
    Editor: (services) => new EditorAbilities(services),
    FaultsOnRequest: (services) => new FaultsOnRequest(services),
    parser: {
      Lexer: (services) => new BoothLexer(services),
      LexerErrorMessageProvider: () => new BoothLexerMessages(),
      ParserErrorMessageProvider: () => new BoothParserMessages(),
      TokenBuilder: () => new BoothTokenBuilder(),
      CompletionParser: (services) => new LazyCompletionParser(services),
    },
    references: {
      Linker: (services) => new BoothLinker(services),
      ScopeComputation: (services) => new BoothScopeComputation(services),
      ScopeProvider: (services) => new BoothScopeProvider(services),
    },
    lsp: {
      CompletionProvider: (services) => new BoothCompletionProvider(services),
      HoverProvider: (services) => new BoothHoverProvider(services),
      CodeActionProvider: (services) => new BoothCodeActionProvider(services),
      Formatter: (services) => new BoothFormatter(services),
      InlayHintProvider: (services) => new BoothInlayHintProvider(services),
      CodeLensProvider: (services) => new BoothCodeLensProvider(services),
      SemanticTokenProvider: (services) => new BoothSemanticTokenProvider(services),
      DocumentSymbolProvider: () => new BoothDocumentSymbolProvider(),
      FoldingRangeProvider: (services) => new BoothFoldingRangeProvider(services),
      DocumentLinkProvider: () => new BoothDocumentLinkProvider(),
      RenameProvider: (services) => new BoothRenameProvider(services),
      ReferencesProvider: (services) => new BoothReferencesProvider(services),
    },
    validation: { DocumentValidator: (services) => new BoothValidator(services) },
    workspace: {
      Imports: (services) => new Imports(services),
      ReferenceDescriptionProvider: (services) => new BoothReferenceDescriptions(services),
    },
  };
}

const sharedModule: Module<LangiumSharedServices, PartialLangiumSharedServices> = {
  lsp: {
    FileOperationHandler: (services) => new BoothFileOperationHandler(services),
    DocumentUpdateHandler: (services) => new BoothDocumentUpdateHandler(services),
    LanguageServer: (services) => new BoothLanguageServer(services),
    NodeKindProvider: () => new BoothNodeKindProvider(),
    WorkspaceSymbolProvider: (services) => new BoothWorkspaceSymbolProvider(services),
  },
  workspace: {
    ConfigurationProvider: (services) => new BoothConfigurationProvider(services),
    DocumentBuilder: (services) => new BoothDocumentBuilder(services),
    IndexManager: (services) => new BoothIndexManager(services),
    LangiumDocumentFactory: (services) => new BoothDocumentFactory(services),
    WorkspaceManager: (services) => new BoothWorkspaceManager(services),
  },
};

/** Puts the language's services together, for an editor (with a connection) or for one run (without). */
export function createBoothServices(context: BoothContext): { shared: LangiumSharedServices; booth: BoothServices } {
  const shared = inject(createDefaultSharedModule(context), BoothGeneratedSharedModule, sharedModule);
  const booth = inject(
    createDefaultModule({ shared }),
    BoothLanguageGeneratedModule,
    languageModule(context.computation ?? product),
  );
  shared.ServiceRegistry.register(booth);
  return { shared, booth };
}

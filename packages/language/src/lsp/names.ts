import { say } from '@boothwright/fit';
import type { LangiumDocument, Lexer } from 'langium';
import {
  DefaultReferencesProvider,
  DefaultRenameProvider,
  DefaultWorkspaceSymbolProvider,
  type LangiumSharedServices,
} from 'langium/lsp';
import {
  type CancellationToken,
  type Location,
  type ReferenceParams,
  type RenameParams,
  ResponseError,
  type WorkspaceEdit,
  type WorkspaceSymbol,
  type WorkspaceSymbolParams,
} from 'vscode-languageserver';
import type { BoothServices } from '../services.js';
import type { BoothWorkspaceManager } from '../workspace/manager.js';

/** Renames a thing in all files of the workspace; refuses a name that the language could not read. */
export class BoothRenameProvider extends DefaultRenameProvider {
  private readonly lexer: Lexer;
  private readonly workspace: BoothWorkspaceManager;

  constructor(services: BoothServices) {
    super(services);
    this.lexer = services.parser.Lexer;
    this.workspace = services.shared.workspace.WorkspaceManager as BoothWorkspaceManager;
  }

  override async rename(document: LangiumDocument, params: RenameParams): Promise<WorkspaceEdit | undefined> {
    const { tokens } = this.lexer.tokenize(params.newName, { mode: 'partial' });
    if (tokens.length !== 1 || tokens[0]!.tokenType.name !== 'ID' || tokens[0]!.image !== params.newName) {
      const invalidParams = -32602;
      throw new ResponseError(
        invalidParams,
        say`${params.newName} cannot be a name: a name is one word and no word of the language.`,
      );
    }
    await this.workspace.loadAll();
    return super.rename(document, params);
  }
}

/** Finds where a thing is used, in all files of the workspace. */
export class BoothReferencesProvider extends DefaultReferencesProvider {
  private readonly workspace: BoothWorkspaceManager;

  constructor(services: BoothServices) {
    super(services);
    this.workspace = services.shared.workspace.WorkspaceManager as BoothWorkspaceManager;
  }

  override async findReferences(document: LangiumDocument, params: ReferenceParams): Promise<Location[]> {
    await this.workspace.loadAll();
    return super.findReferences(document, params);
  }
}

/** Finds things by their names, in all files of the workspace. */
export class BoothWorkspaceSymbolProvider extends DefaultWorkspaceSymbolProvider {
  private readonly workspace: BoothWorkspaceManager;

  constructor(services: LangiumSharedServices) {
    super(services);
    this.workspace = services.workspace.WorkspaceManager as BoothWorkspaceManager;
  }

  override async getSymbols(params: WorkspaceSymbolParams, token?: CancellationToken): Promise<WorkspaceSymbol[]> {
    await this.workspace.loadAll();
    return super.getSymbols(params, token);
  }
}

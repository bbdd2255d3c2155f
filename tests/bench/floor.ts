import { EmptyFileSystem, inject } from 'langium';
import { createDefaultModule, createDefaultSharedModule, startLanguageServer } from 'langium/lsp';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import {
  BoothGeneratedSharedModule,
  BoothLanguageGeneratedModule,
} from '../../packages/language/src/generated/module.js';

/** The floor: a server on the same grammar with the framework's own services, no validation of ours and no checks. */
const connection = createConnection(ProposedFeatures.all);
const shared = inject(createDefaultSharedModule({ connection, ...EmptyFileSystem }), BoothGeneratedSharedModule);
shared.ServiceRegistry.register(inject(createDefaultModule({ shared }), BoothLanguageGeneratedModule));
startLanguageServer(shared);

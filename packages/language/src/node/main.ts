import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { bySchemes, EditorFileSystem } from '../lsp/files.js';
import { serve } from '../lsp/server.js';
import { nodeFileSystem } from './index.js';

/** The language server for editors on this machine: over standard streams, a pipe or IPC, as its arguments say. */
const connection = createConnection(ProposedFeatures.all);
serve(connection, () => bySchemes(nodeFileSystem(), new EditorFileSystem(connection)));

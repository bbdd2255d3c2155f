import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { Translation } from '@boothwright/fit';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { bySchemes, EditorFileSystem } from '../lsp/files.js';
import { serve } from '../lsp/server.js';
import { nodeFileSystem } from './index.js';

/** Where the translations lie, seen from the bundle of this file: beside its folder, or in the extension's. */
const folders = [path.join(__dirname, '../l10n'), path.join(__dirname, '../../extension/l10n')];

/** The language server for editors on this machine: over standard streams, a pipe or IPC, as its arguments say. */
const connection = createConnection(ProposedFeatures.all);
serve(connection, () => bySchemes(nodeFileSystem(), new EditorFileSystem(connection)), translationTo);

/** The sentences of a locale such as `de` or `de-AT`; nothing for English, and for a language that nobody has translated to. */
function translationTo(locale: string): Translation | undefined {
  const language = /^[a-z]{2,3}(?![a-z])/i.exec(locale)?.[0].toLowerCase();
  if (!language || language === 'en') return undefined;
  const file = folders
    .map((folder) => path.join(folder, `bundle.l10n.${language}.json`))
    .find((each) => existsSync(each));
  return file === undefined ? undefined : (JSON.parse(readFileSync(file, 'utf8')) as Translation);
}

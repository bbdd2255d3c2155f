import { showSideCommand, type ShowSideParams } from '@boothwright/language/protocol';
import {
  commands,
  type Disposable,
  type ExtensionContext,
  Uri,
  ViewColumn,
  type WebviewPanel,
  window,
  workspace,
} from 'vscode';
import { type BaseLanguageClient, State } from 'vscode-languageclient';
import { readPageState } from '../webview/messages.js';
import { Preview } from './preview.js';

const viewType = 'boothwright.preview';

/** The previews of a window, at most one for each booth file; they come back with the window. */
export function providePreviews({ extension }: ExtensionContext, client: BaseLanguageClient): Disposable[] {
  const previews = new Map<string, Preview>();

  const adopt = (uri: Uri, panel: WebviewPanel): Preview => {
    const preview = new Preview(uri, panel, client, extension);
    previews.set(uri.toString(), preview);
    panel.onDidDispose(() => {
      preview.dispose();
      if (previews.get(uri.toString()) === preview) previews.delete(uri.toString());
    });
    return preview;
  };
  const open = (uri: Uri): Preview => {
    const known = previews.get(uri.toString());
    if (known) {
      known.panel.reveal(undefined, true);
      return known;
    }
    const beside = { viewColumn: ViewColumn.Beside, preserveFocus: true };
    return adopt(uri, window.createWebviewPanel(viewType, '', beside));
  };
  const openActive = () => {
    const document = window.activeTextEditor?.document;
    if (document?.languageId === 'booth') open(document.uri);
  };
  const changed = () => previews.forEach((preview) => preview.changed());
  const watcher = workspace.createFileSystemWatcher('**/*.booth');

  return [
    commands.registerCommand('boothwright.showPreview', openActive),
    commands.registerCommand(showSideCommand, ({ uri, workstation }: ShowSideParams) =>
      open(Uri.parse(uri)).showSide(workstation),
    ),
    window.registerWebviewPanelSerializer(viewType, {
      deserializeWebviewPanel: (panel: WebviewPanel, given: unknown) => {
        const state = readPageState(given);
        if (state?.uri) adopt(Uri.parse(state.uri), panel);
        else panel.dispose();
        return Promise.resolve();
      },
    }),
    workspace.onDidChangeTextDocument(({ document }) => {
      if (document.languageId === 'booth') changed();
    }),
    watcher,
    watcher.onDidChange(changed),
    watcher.onDidCreate(changed),
    watcher.onDidDelete(changed),
    client.onDidChangeState(({ newState }) => {
      if (newState === State.Running) changed();
    }),
    window.onDidChangeTextEditorSelection(({ textEditor }) => {
      if (textEditor.document.languageId === 'booth')
        previews.forEach((preview) => preview.panel.visible && void preview.follow(textEditor));
    }),
  ];
}

import {
  pieceFiguresRequest,
  type PieceParams,
  type PieceRef,
  piecesAtRequest,
  type PiecesAtParams,
  pieceSourceRequest,
  type PreviewParams,
  previewRequest,
  type PreviewResult,
  setRequest,
  type Setting,
  type SettingsParams,
  tryRequest,
} from '@boothwright/language/protocol';
import {
  CancellationTokenSource,
  type Disposable,
  type Extension,
  l10n,
  Range,
  type TextEditor,
  Uri,
  ViewColumn,
  type WebviewPanel,
  window,
  workspace,
} from 'vscode';
import type { BaseLanguageClient, WorkspaceEdit } from 'vscode-languageclient';
import { nameOf } from '../files.js';
import { type FromPage, readFromPage, type ToPage } from '../webview/messages.js';
import { htmlOf, resourcesOf } from './html.js';
import { write } from './write.js';

/** A drawing that takes longer than this waits until keys and files rest for so long, in milliseconds. */
const QUICK = 50;
const PAUSE = 120;

/** So long after a click a panel can still be told to have the keyboard, though the text has it by then; in milliseconds. */
const LATE_FOCUS = 500;

/** The drawings of one booth file in a panel. It asks the language server, hands on what it says, and computes nothing. */
export class Preview implements Disposable {
  private readonly listening: Disposable[];
  private waiting: ReturnType<typeof setTimeout> | undefined;
  private asking: CancellationTokenSource | undefined;
  private following: CancellationTokenSource | undefined;
  private trying: CancellationTokenSource | undefined;
  /** The last drawing, from the question to the answer, in milliseconds. */
  private took = 0;
  /** What a click led to, to be shown again if the editor hears of the click itself only afterwards. */
  private ledTo: { readonly show: () => Thenable<unknown>; until: number } | undefined;
  private isReady = false;
  private readonly unsent: ToPage[] = [];

  constructor(
    readonly uri: Uri,
    readonly panel: WebviewPanel,
    private readonly client: BaseLanguageClient,
    extension: Extension<unknown>,
  ) {
    const { webview } = panel;
    panel.title = l10n.t('Preview of {0}', nameOf(uri));
    const { extensionUri } = extension;
    panel.iconPath = {
      light: Uri.joinPath(extensionUri, 'packages/extension/icons/booth-light.svg'),
      dark: Uri.joinPath(extensionUri, 'packages/extension/icons/booth-dark.svg'),
    };
    webview.options = { enableScripts: true, localResourceRoots: [resourcesOf(extensionUri)] };
    this.listening = [
      webview.onDidReceiveMessage((given: unknown) => {
        const message = readFromPage(given);
        if (message) this.hear(message);
      }),
      panel.onDidChangeViewState(() => {
        if (panel.active) this.handOn();
      }),
    ];
    webview.html = htmlOf(webview, extension);
  }

  /** Draws anew, with the findings where that is quick. */
  changed(): void {
    clearTimeout(this.waiting);
    this.waiting = setTimeout(() => void this.draw(), this.took > QUICK ? PAUSE : 0);
  }

  /** Lights what the cursor of an editor is on. */
  async follow({ document, selection }: TextEditor): Promise<void> {
    this.following?.cancel();
    const { token } = (this.following = new CancellationTokenSource());
    const { line, character } = selection.active;
    const params: PiecesAtParams = {
      booth: this.uri.toString(),
      uri: document.uri.toString(),
      position: { line, character },
    };
    const pieces = await this.ask<readonly PieceRef[]>(piecesAtRequest, params, token);
    if (pieces && !token.isCancellationRequested) this.send({ type: 'lit', pieces });
  }

  showSide(workstation: string): void {
    this.send({ type: 'showSide', workstation });
  }

  dispose(): void {
    clearTimeout(this.waiting);
    this.asking?.cancel();
    this.following?.cancel();
    this.trying?.cancel();
    for (const each of this.listening) each.dispose();
  }

  private async draw(): Promise<void> {
    this.asking?.cancel();
    const { token } = (this.asking = new CancellationTokenSource());
    const document = await workspace.openTextDocument(this.uri).then(undefined, () => undefined);
    if (!document || token.isCancellationRequested) return;
    const uri = this.uri.toString();
    const params: PreviewParams = { uri };
    const asked = performance.now();
    const result = await this.ask<PreviewResult | null>(previewRequest, params, token);
    if (token.isCancellationRequested) return;
    this.took = performance.now() - asked;
    if (result) this.send({ type: 'show', uri, result });
  }

  private hear(message: FromPage): void {
    switch (message.type) {
      case 'ready':
        return void this.greet();
      case 'goTo':
        return void this.goTo(message.piece);
      case 'figures':
        return void this.tell(message.piece);
      case 'try':
        return void this.try(message.settings);
      case 'set':
        return void this.set(message.settings);
    }
  }

  /** A page begins empty each time that its panel comes into view. */
  private async greet(): Promise<void> {
    this.isReady = true;
    await this.draw();
    for (const message of this.unsent.splice(0)) this.send(message);
    const editor = window.activeTextEditor ?? window.visibleTextEditors.find(({ document }) => this.isOf(document.uri));
    if (editor?.document.languageId === 'booth') await this.follow(editor);
  }

  private async goTo(piece: PieceRef): Promise<void> {
    const origin = await this.ask<{ uri: string; start: Place; end: Place } | null>(
      pieceSourceRequest,
      this.about(piece),
    );
    if (!origin) return;
    const uri = Uri.parse(origin.uri);
    const shown = window.visibleTextEditors.find(({ document }) => document.uri.toString() === uri.toString());
    const beside = window.visibleTextEditors.find(({ document }) => document.languageId === 'booth');
    const { start, end } = origin;
    const show = () =>
      window.showTextDocument(uri, {
        viewColumn: shown?.viewColumn ?? beside?.viewColumn ?? ViewColumn.One,
        selection: new Range(start.line, start.character, end.line, end.character),
      });
    const ledTo = (this.ledTo = { show, until: Infinity });
    try {
      await show();
    } finally {
      ledTo.until = performance.now() + LATE_FOCUS;
    }
  }

  /** The editor looks four times a second where the keyboard is, and then makes the panel the active one; the text has to be it. */
  private handOn(): void {
    if (this.ledTo && performance.now() < this.ledTo.until) void this.ledTo.show();
  }

  private async tell(piece: PieceRef): Promise<void> {
    const markdown = await this.ask<string>(pieceFiguresRequest, this.about(piece));
    if (markdown !== undefined) this.send({ type: 'figures', piece, markdown });
  }

  private async try(settings: readonly Setting[]): Promise<void> {
    this.trying?.cancel();
    const { token } = (this.trying = new CancellationTokenSource());
    const result = await this.ask<PreviewResult | null>(tryRequest, this.to(settings), token);
    if (result && !token.isCancellationRequested) this.send({ type: 'tried', result });
  }

  /** Writes numbers into the text, as one edit that one undo takes back; draws anew also if there is nothing to write. */
  private async set(settings: readonly Setting[]): Promise<void> {
    this.trying?.cancel();
    const isWritten = await this.write(settings);
    // What is being asked may not know of it.
    this.asking?.cancel();
    this.changed();
    if (!isWritten)
      void window.showWarningMessage(
        l10n.t('The text cannot be read now, so the change was not written. Correct its errors, then try again.'),
      );
  }

  /** A text that changes between question and answer is asked again: numbers keep their names, not their places. */
  private write(settings: readonly Setting[]): Promise<boolean> {
    return write({
      versions,
      ask: async () => {
        const edit = await this.ask<WorkspaceEdit | null>(setRequest, this.to(settings));
        return edit && this.client.protocol2CodeConverter.asWorkspaceEdit(edit);
      },
      apply: (change) => workspace.applyEdit(change),
    });
  }

  private to(settings: readonly Setting[]): SettingsParams {
    return { uri: this.uri.toString(), settings };
  }

  private about(piece: PieceRef): PieceParams {
    return { uri: this.uri.toString(), piece };
  }

  /** Nothing if the question was taken back or the server has stopped: an answer that nobody waits for is no fault. */
  private async ask<T>(
    method: string,
    params: unknown,
    token?: CancellationTokenSource['token'],
  ): Promise<T | undefined> {
    try {
      return await this.client.sendRequest<T>(method, params, token);
    } catch {
      return undefined;
    }
  }

  private send(message: ToPage): void {
    if (this.isReady) void this.panel.webview.postMessage(message);
    else this.unsent.push(message);
  }

  private isOf(uri: Uri): boolean {
    return uri.toString() === this.uri.toString();
  }
}

/** Another one as soon as a text is changed. */
function versions(): string {
  return workspace.textDocuments.map(({ uri, version }) => `${uri.toString()} ${version}`).join();
}

interface Place {
  readonly line: number;
  readonly character: number;
}

import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Frame, Locator, Page } from 'playwright-core';
import { inject } from 'vitest';
import { type Host, type HostFolders, trustSetting, userSettings, viewport } from './host.js';
import { startDesktopHost } from './host-desktop.js';
import { startServerHost } from './host-server.js';
import { outputFolder } from './paths.js';
import { virtualFolder, withVirtualFolder } from './virtual-folder.js';
import { type Box, boxOfText, lookAtEditor, type SeenLine, type Squiggle, squigglesIn } from './sight.js';

/** How the extension host's log says that it started the extension. */
export const activated = 'ExtensionService#_doActivateExtension boothwright.boothwright';

/** Those that have not been closed. */
export const openEditors = new Set<Editor>();

/** How an editor differs from the usual; `language`: see `HostFolders`. */
export interface Unusual {
  readonly language?: string;
  /** The folder is not trusted. */
  readonly isRestricted?: boolean;
  /** The folder is on no disk. */
  readonly isVirtual?: boolean;
}

/** Starts an editor on a new folder that holds `files`, by path and text; `settings` are added to the user's. */
export async function openEditor(
  name: string,
  files: Record<string, string>,
  settings: Record<string, unknown> = {},
  { language, isRestricted, isVirtual }: Unusual = {},
): Promise<Editor> {
  const plan = inject('plan');
  // Not named after the product: a complaint of the editor about a file there is none of the extension.
  const scratch = mkdtempSync(path.join(tmpdir(), 'hall-'));
  const folders: HostFolders = {
    workspace: isVirtual ? virtualFolder : path.join(scratch, 'booths'),
    userData: path.join(scratch, 'user'),
    extensions: isVirtual ? withVirtualFolder(files, plan.extensions, scratch) : plan.extensions,
    ...(language !== undefined && { language }),
    ...(isRestricted && { isRestricted }),
  };
  if (!isVirtual) writeFiles(folders.workspace, files);
  const trust = isRestricted && { [trustSetting]: true, 'security.workspace.trust.startupPrompt': 'never' };
  const all = { ...userSettings, ...trust, ...settings };
  writeFiles(folders.userData, { 'User/settings.json': JSON.stringify(all) });
  const host = await (plan.kind === 'server' ? startServerHost(plan, folders) : startDesktopHost(plan, folders));
  await host.page.waitForSelector('.explorer-folders-view .monaco-list-row', { timeout: 60_000 });
  host.page.setDefaultTimeout(30_000);
  const editor = new Editor(name, host, folders.workspace, scratch);
  openEditors.add(editor);
  return editor;
}

function writeFiles(folder: string, files: Record<string, string>): void {
  for (const [file, text] of Object.entries(files)) {
    const full = path.join(folder, file);
    mkdirSync(path.dirname(full), { recursive: true });
    writeFileSync(full, text);
  }
}

/** What a person at the editor does and sees. */
export class Editor {
  constructor(
    private readonly name: string,
    private readonly host: Host,
    private readonly workspace: string,
    private readonly scratch: string,
  ) {
    host.page.on('console', (message) => {
      if (message.type() === 'error') this.complaints.push(message.text());
    });
  }

  private readonly complaints: string[] = [];

  get page(): Page {
    return this.host.page;
  }

  /** Opens a file of the folder by its name. */
  async open(file: string): Promise<void> {
    await this.press('ControlOrMeta+P');
    await this.page.locator('.quick-input-widget input').fill(file);
    await this.page.locator('.quick-input-list .monaco-list-row.focused', { hasText: file }).waitFor();
    await this.press('Enter');
    await this.opened(file);
  }

  /** The row of a file or folder in the explorer. */
  inExplorer(name: string): Locator {
    return this.page.locator('.explorer-folders-view .monaco-list-row', { hasText: name });
  }

  /** Opens a file by a double click in the explorer. */
  async openInExplorer(file: string): Promise<void> {
    await this.inExplorer(file).dblclick();
    await this.opened(file);
  }

  private async opened(file: string): Promise<void> {
    await this.page.locator(`.editor-group-container.active .tab.active[data-resource-name="${file}"]`).waitFor();
    const lines = this.page.locator('.editor-group-container.active .editor-instance .monaco-editor .view-line');
    await lines.filter({ visible: true }).first().waitFor();
  }

  /** Puts the cursor at a line and column, both from 1. */
  async goTo(line: number, column: number): Promise<void> {
    await this.press('Control+G');
    await this.page.locator('.quick-input-widget input').fill(`:${line}:${column}`);
    await this.press('Enter');
    await this.page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
  }

  /**
   * Gives the keyboard to the text. A preview hands on keys that are not its own, so the next key would be the preview's too; one that is
   * pressed just after a click on it can get lost on the way.
   */
  async focusText(): Promise<void> {
    const focused = this.page.locator('.editor-group-container.active .monaco-editor.focused');
    for (let tries = 0; tries < 5; tries++) {
      await this.press('ControlOrMeta+1');
      const hasFocus = await focused.waitFor({ timeout: 3_000 }).then(
        () => true,
        () => false,
      );
      if (hasFocus) return;
    }
    throw new Error('The text does not get the keyboard.');
  }

  async press(keys: string): Promise<void> {
    await this.page.keyboard.press(keys);
  }

  /** Types as fast as a good typist. */
  async type(text: string): Promise<void> {
    await this.page.keyboard.type(text, { delay: 40 });
  }

  /** Runs a command by the title that the command palette shows. */
  async run(title: string): Promise<void> {
    await this.press('F1');
    await this.page.locator('.quick-input-widget input').fill(`>${title}`);
    await this.page.locator('.quick-input-list .monaco-list-row.focused', { hasText: title }).waitFor();
    await this.press('Enter');
  }

  /** The titles that the command palette offers for some text. */
  async offered(text: string): Promise<string[]> {
    await this.press('F1');
    await this.page.locator('.quick-input-widget input').fill(`>${text}`);
    await this.page.locator('.quick-input-list .monaco-list-row').first().waitFor();
    const titles = await this.page.locator('.quick-input-list .monaco-list-row .label-name').allInnerTexts();
    await this.press('Escape');
    return titles;
  }

  /** What the language status says when the mouse rests on it: its text, its detail and what it links to. */
  async status(): Promise<string> {
    await this.page.mouse.move(5, viewport.height / 2);
    await this.page.locator('[id="status.languageStatus"]').hover();
    const shown = this.page.locator('.hover-language-status').first();
    await shown.waitFor();
    return (await shown.innerText()).replaceAll('\u00a0', ' ');
  }

  /** Changes the settings of the folder, as a person who writes them into its file. */
  change(settings: Record<string, unknown>): void {
    const file = path.join(this.workspace, '.vscode/settings.json');
    const before = existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as Record<string, unknown>) : {};
    mkdirSync(path.dirname(file), { recursive: true });
    writeFileSync(file, JSON.stringify({ ...before, ...settings }));
  }

  /** The visible lines of the active editor. */
  async lines(): Promise<readonly SeenLine[]> {
    return (await lookAtEditor(this.page)).lines;
  }

  /** The words under squiggles in the active editor, top to bottom. */
  async squiggles(): Promise<Squiggle[]> {
    return squigglesIn(await lookAtEditor(this.page));
  }

  /** Rests the mouse on the first place where the active editor shows `text`, and reads what appears. */
  async hover(text: string): Promise<string> {
    const box = await this.boxOf(text);
    const hover = this.page.locator('.monaco-hover:not(.hidden):has(.hover-contents)').first();
    for (let tries = 0; tries < 5; tries++) {
      await this.page.mouse.move(5, viewport.height - 5);
      await hover.waitFor({ state: 'hidden' });
      await this.page.mouse.move(box.left + box.width / 2, box.top + box.height / 2, { steps: 4 });
      const seen = await hover.waitFor({ timeout: 2_000 }).then(
        () => true,
        () => false,
      );
      if (seen) return (await hover.innerText()).replaceAll('\u00a0', ' ');
    }
    throw new Error(`Nothing appears over '${text}'.`);
  }

  /** Clicks on the first place where the active editor shows `text`. */
  async click(text: string): Promise<void> {
    const box = await this.boxOf(text);
    await this.page.mouse.click(box.left + box.width / 2, box.top + box.height / 2);
  }

  /** Takes a row of the list that asks. */
  async choose(label: string): Promise<void> {
    await this.page.locator('.quick-input-list .monaco-list-row', { hasText: label }).first().click();
  }

  /** Takes a fix of the problem at the cursor from the light bulb's menu, by a part of its title. */
  async fix(title: string): Promise<void> {
    const bulbs = this.page.locator('.lightBulbWidget, [class*="codicon-gutter-lightbulb"]');
    await bulbs.filter({ visible: true }).first().click();
    await this.page.locator('.action-widget .monaco-list-row.action', { hasText: title }).first().click();
  }

  /** The labels that completion offers. */
  suggestions(): Promise<string[]> {
    return this.page.locator('.suggest-widget.visible .monaco-list-row .label-name').allInnerTexts();
  }

  /** Where the status bar says that the cursor is. */
  cursor(): Promise<string> {
    return this.page.locator('[id="status.editor.selection"]').innerText();
  }

  /** Presses a button of the question that stands before everything else. */
  async answer(button: string): Promise<void> {
    await this.page.locator('.monaco-dialog-box .monaco-button', { hasText: button }).first().click();
  }

  /** What the page that an extension shows says; empty while there is none. */
  async webviewText(): Promise<string> {
    const frames = this.page.frames().filter((frame) => frame.parentFrame()?.parentFrame());
    const texts = await Promise.all(frames.map((frame) => frame.innerText('body').catch(() => '')));
    return texts.join('\n');
  }

  /** The text of a file of the folder, as it is on the disk. */
  read(file: string): string | undefined {
    const full = path.join(this.workspace, file);
    return existsSync(full) ? readFileSync(full, 'utf8') : undefined;
  }

  /** The folder that is open. */
  get folder(): string {
    return this.workspace;
  }

  /** What the editor complains of in its corner. */
  notifications(): Promise<string[]> {
    return this.page.locator('.notification-toast .notification-list-item-message').allInnerTexts();
  }

  /** What the extension host wrote to its log. */
  hostLog(): string {
    return this.logFiles()
      .map((file) => readFileSync(file, 'utf8'))
      .join('\n');
  }

  /** The lines of the logs that report errors of any extension, and what the window reports of this one. */
  logErrors(): string[] {
    const logged = this.hostLog()
      .split('\n')
      .filter((line) => /\[error\]/i.test(line));
    return [...logged, ...this.complaints.filter((text) => /boothwright/i.test(text))];
  }

  /** What the browser refused because a page's content security policy forbids it. */
  refusals(): string[] {
    return this.complaints.filter((text) => /content security policy/i.test(text));
  }

  /** Loads the whole window anew, as a person asks for it: the editor first writes down what its panels keep. */
  async reload(): Promise<void> {
    const isMain = (frame: Frame) => frame === this.page.mainFrame();
    await Promise.all([this.page.waitForEvent('framenavigated', isMain), this.run('Developer: Reload Window')]);
    await this.page.waitForSelector('.explorer-folders-view .monaco-list-row', { timeout: 60_000 });
  }

  /** Leaves a picture under tests/editor/output. */
  async screenshot(title: string): Promise<void> {
    await this.page.screenshot({ path: path.join(outputFolder, `${this.name}-${title}.png`) });
  }

  async close(): Promise<void> {
    await this.screenshot('at-the-end').catch(() => undefined);
    await this.host.stop();
    openEditors.delete(this);
    for (const file of this.logFiles()) cpSync(file, path.join(outputFolder, `${this.name}-${path.basename(file)}`));
    rmSync(this.scratch, { recursive: true, force: true, maxRetries: 5 });
  }

  private logFiles(): string[] {
    if (!existsSync(this.host.logs)) return [];
    return readdirSync(this.host.logs, { recursive: true, encoding: 'utf8' })
      .filter((file) => /exthost\.log$|boothwright\.boothwright.*\.log$/.test(file))
      .map((file) => path.join(this.host.logs, file));
  }

  private async boxOf(text: string): Promise<Box> {
    const box = boxOfText(await lookAtEditor(this.page), text);
    if (!box) throw new Error(`The editor does not show '${text}'.`);
    return box;
  }
}

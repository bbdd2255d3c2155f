import { type AssessmentResult, assessmentRequest } from '@boothwright/language/protocol';
import { isReport, renderReport, type ReportOptions } from '@boothwright/report';
import {
  type ExtensionContext,
  type TextDocument,
  Uri,
  ViewColumn,
  type WebviewPanel,
  window,
  workspace,
} from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { writeSafely } from '../files.js';

/** Asks whose names to print and where to write, renders the report of the active booth file, and shows it. */
export async function writeReport(context: ExtensionContext, client: BaseLanguageClient): Promise<void> {
  const document = window.activeTextEditor?.document;
  if (document?.languageId !== 'booth') return;
  const result = await currentAssessment(client, document);
  if (!result) return;
  const names = await chooseNames();
  if (!names) return;
  const target = await window.showSaveDialog({
    title: 'Write fit report',
    saveLabel: 'Write',
    defaultUri: besides(document),
    filters: { 'Web page': ['html'] },
  });
  if (!target) return;
  const html = renderReport(result.assessment, {
    generatedBy: `Boothwright ${versionOf(context)}`,
    date: new Date().toLocaleDateString('en-GB', { dateStyle: 'long' }),
    names,
    advice: result.advice,
  });
  try {
    if (await writeSafely(target, html, isReport)) show(target, html);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    void window.showErrorMessage(`The report was not written to ${target.path}: ${why}. Choose another place.`);
  }
}

async function currentAssessment(
  client: BaseLanguageClient,
  document: TextDocument,
): Promise<AssessmentResult | undefined> {
  const result = await client.sendRequest<AssessmentResult | null>(assessmentRequest, {
    uri: document.uri.toString(),
    advice: true,
  });
  if (!result) {
    void window.showErrorMessage(
      'This file cannot be read yet. Correct the errors marked in it, then write the report.',
    );
    return undefined;
  }
  if (!result.stale) return result;
  const detail =
    'The report would tell of the file as it was before the errors. Correct them first to report what it says now.';
  const goOn = 'Write it anyway';
  const answer = await window.showWarningMessage('This file has errors.', { modal: true, detail }, goOn);
  return answer === goOn ? result : undefined;
}

async function chooseNames(): Promise<ReportOptions['names'] | undefined> {
  const choices: { label: string; description: string; names: ReportOptions['names'] }[] = [
    { label: 'With names', description: 'The report names the operators', names: 'full' },
    { label: 'With letters', description: 'Person A, Person B … for a report that others see', names: 'letters' },
  ];
  return (
    await window.showQuickPick(choices, { title: 'Write fit report', placeHolder: 'How should it call the operators?' })
  )?.names;
}

function besides(document: TextDocument): Uri | undefined {
  const name = document.uri.path.slice(document.uri.path.lastIndexOf('/') + 1).replace(/\.booth$/, '');
  const folder = workspace.workspaceFolders?.[0]?.uri;
  if (document.isUntitled) return folder && Uri.joinPath(folder, 'fit-report.html');
  return Uri.joinPath(document.uri, '..', `${name}-fit-report.html`);
}

function versionOf(context: ExtensionContext): string {
  return (context.extension.packageJSON as { version: string }).version;
}

const shown = new Map<string, WebviewPanel>();

/** Shows the page without script, as the file holds it; a report that is in view already changes in place. */
function show(target: Uri, html: string): void {
  const key = target.toString();
  const panel = shown.get(key) ?? openPanel(target);
  shown.set(key, panel);
  panel.onDidDispose(() => shown.delete(key));
  panel.webview.html = html;
  panel.reveal(undefined, true);
}

function openPanel(target: Uri): WebviewPanel {
  const title = target.path.slice(target.path.lastIndexOf('/') + 1);
  const column = { viewColumn: ViewColumn.Beside, preserveFocus: true };
  return window.createWebviewPanel('boothwright.report', title, column, { enableScripts: false });
}

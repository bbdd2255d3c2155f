import { type AssessmentResult, assessmentRequest } from '@boothwright/language/protocol';
import { isReport, paperFor, renderMarkdown, renderReport, type Paper, type ReportOptions } from '@boothwright/report';
import {
  type ExtensionContext,
  l10n,
  ProgressLocation,
  type TextDocument,
  Uri,
  ViewColumn,
  type WebviewPanel,
  window,
  workspace,
} from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { nameOf, writeSafely } from '../files.js';
import type { RenderPdf } from '../pdf-messages.js';
import { boothInHand } from './in-hand.js';

/** What opens beside, such as a page that loads, takes the focus but not the question away. */
function question(placeHolder: string) {
  return { title: l10n.t('Write fit report'), placeHolder, ignoreFocusOut: true };
}

/** Asks whose names to print, in which form and where, renders the report of the booth file in hand, and shows it. */
export async function writeReport(
  context: ExtensionContext,
  client: BaseLanguageClient,
  renderPdf: RenderPdf,
): Promise<void> {
  const document = await boothInHand();
  if (!document) return;
  const result = await currentAssessment(client, document);
  if (!result) return;
  const names = await chooseNames();
  const form = names && (await chooseForm(paperFor(result.assessment.booth.show)));
  if (!form) return;
  const target = await window.showSaveDialog({
    title: l10n.t('Write fit report'),
    saveLabel: l10n.t('Write'),
    defaultUri: besides(document, form.ending),
    filters: { [form.label]: [form.ending] },
  });
  if (!target) return;
  const options: ReportOptions = {
    generatedBy: `Boothwright ${versionOf(context)}`,
    date: new Date().toLocaleDateString('en-GB', { dateStyle: 'long' }),
    names,
    advice: result.advice,
  };
  try {
    const content = await render(form, result.assessment, options, renderPdf);
    if (await writeSafely(target, content, isReport)) await show(target, form, content);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    void window.showErrorMessage(
      l10n.t('The report was not written to {0}: {1}. Choose another place.', target.path, why),
    );
  }
}

interface Form {
  readonly label: string;
  readonly ending: 'html' | 'pdf' | 'md';
  readonly paper?: Paper;
}

/** The paper that the booth's units go with stands before the other. */
async function chooseForm(usual: Paper): Promise<Form | undefined> {
  const papers: readonly Paper[] = usual === 'letter' ? ['letter', 'a4'] : ['a4', 'letter'];
  const choices: (Form & { description: string })[] = [
    { label: l10n.t('Web page'), description: l10n.t('One file with the drawings'), ending: 'html' },
    ...papers.map((paper) => ({
      label: l10n.t('PDF on {0}', paper === 'a4' ? 'A4' : 'Letter'),
      description: l10n.t('Pages to print or send'),
      ending: 'pdf' as const,
      paper,
    })),
    { label: 'Markdown', description: l10n.t('Text for a wiki or a mail, without the drawings'), ending: 'md' },
  ];
  return window.showQuickPick(choices, question(l10n.t('What should it be?')));
}

async function render(
  { ending, paper }: Form,
  assessment: AssessmentResult['assessment'],
  options: ReportOptions,
  renderPdf: RenderPdf,
): Promise<string | Uint8Array> {
  switch (ending) {
    case 'html':
      return renderReport(assessment, options);
    case 'md':
      return renderMarkdown(assessment, options);
    case 'pdf':
      return window.withProgress({ location: ProgressLocation.Window, title: l10n.t('Writing the fit report') }, () =>
        renderPdf(assessment, { ...options, made: new Date(), ...(paper && { paper }) }),
      );
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
      l10n.t('This file cannot be read yet. Correct the errors marked in it, then write the report.'),
    );
    return undefined;
  }
  if (!result.stale) return result;
  const detail = l10n.t(
    'The report would tell of the file as it was before the errors. Correct them first to report what it says now.',
  );
  const goOn = l10n.t('Write it anyway');
  const answer = await window.showWarningMessage(l10n.t('This file has errors.'), { modal: true, detail }, goOn);
  return answer === goOn ? result : undefined;
}

async function chooseNames(): Promise<ReportOptions['names'] | undefined> {
  const choices: { label: string; description: string; names: ReportOptions['names'] }[] = [
    { label: l10n.t('With names'), description: l10n.t('The report names the operators'), names: 'full' },
    {
      label: l10n.t('With letters'),
      description: l10n.t('Person A, Person B … for a report that others see'),
      names: 'letters',
    },
  ];
  return (await window.showQuickPick(choices, question(l10n.t('How should it call the operators?'))))?.names;
}

function besides(document: TextDocument, ending: string): Uri | undefined {
  const name = nameOf(document.uri).replace(/\.booth$/, '');
  const folder = workspace.workspaceFolders?.[0]?.uri;
  if (document.isUntitled) return folder && Uri.joinPath(folder, `fit-report.${ending}`);
  return Uri.joinPath(document.uri, '..', `${name}-fit-report.${ending}`);
}

function versionOf(context: ExtensionContext): string {
  return (context.extension.packageJSON as { version: string }).version;
}

const shown = new Map<string, WebviewPanel>();

/** Shows a page without script, as the file holds it, Markdown as text; of a PDF it only says where it is. */
async function show(target: Uri, { ending }: Form, content: string | Uint8Array): Promise<void> {
  if (typeof content !== 'string')
    return void window.showInformationMessage(l10n.t('The report is in {0}.', nameOf(target)));
  if (ending === 'html') return showPage(target, content);
  await window.showTextDocument(target, { viewColumn: ViewColumn.Beside, preserveFocus: true });
}

/** A report that is in view already changes in place. */
function showPage(target: Uri, html: string): void {
  const key = target.toString();
  const panel = shown.get(key) ?? openPanel(target);
  shown.set(key, panel);
  panel.onDidDispose(() => shown.delete(key));
  panel.webview.html = html;
  panel.reveal(undefined, true);
}

function openPanel(target: Uri): WebviewPanel {
  const column = { viewColumn: ViewColumn.Beside, preserveFocus: true };
  return window.createWebviewPanel('boothwright.report', nameOf(target), column, { enableScripts: false });
}

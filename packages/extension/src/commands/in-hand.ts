import { l10n, type TextDocument, window, workspace } from 'vscode';
import { newBooth } from './new-booth.js';

/**
 * The booth file that a command is about: the one in the active editor. Where none is there, as on the page of the walkthrough,
 * the only open one, or the one of them that the person picks. Says so if there is none.
 */
export async function boothInHand(): Promise<TextDocument | undefined> {
  const active = window.activeTextEditor?.document;
  if (active && isBooth(active)) return active;
  const open = workspace.textDocuments.filter(isBooth);
  if (open.length === 0) return offerNew();
  if (open.length === 1) return open[0];
  const choices = open.map((document) => ({ label: workspace.asRelativePath(document.uri), document }));
  return (await window.showQuickPick(choices, { placeHolder: l10n.t('Which booth file?'), ignoreFocusOut: true }))
    ?.document;
}

async function offerNew(): Promise<undefined> {
  const start = l10n.t('New booth file');
  const answer = await window.showInformationMessage(
    l10n.t('No booth file is open. Open one, or start a new one.'),
    start,
  );
  if (answer === start) await newBooth();
}

function isBooth({ languageId, isClosed }: TextDocument): boolean {
  return languageId === 'booth' && !isClosed;
}

import { type TextDocument, window, workspace } from 'vscode';
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
  return (await window.showQuickPick(choices, { placeHolder: 'Which booth file?', ignoreFocusOut: true }))?.document;
}

async function offerNew(): Promise<undefined> {
  const start = 'New booth file';
  const answer = await window.showInformationMessage('No booth file is open. Open one, or start a new one.', start);
  if (answer === start) await newBooth();
}

function isBooth({ languageId, isClosed }: TextDocument): boolean {
  return languageId === 'booth' && !isClosed;
}

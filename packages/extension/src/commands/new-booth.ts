import { commands, l10n, window, workspace } from 'vscode';

/** Opens a new file with a whole small booth in it, as a snippet: Tab leads from one value to the next. Writes nothing. */
export async function newBooth(): Promise<void> {
  const choices = [
    { label: l10n.t('Feet and inches'), snippet: 'A small booth, in feet and inches' },
    { label: l10n.t('Metric'), snippet: 'A small booth, metric' },
  ];
  const choice = await window.showQuickPick(choices, {
    title: l10n.t('New booth file'),
    placeHolder: l10n.t('Which units do you measure in?'),
  });
  if (!choice) return;
  await window.showTextDocument(await workspace.openTextDocument({ language: 'booth' }));
  await commands.executeCommand('editor.action.insertSnippet', { langId: 'booth', name: choice.snippet });
}

import { type AdviceParams, adviceRequest, type AdviceResult } from '@boothwright/language/protocol';
import { type QuickPickItem, window } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';

/** Shows what would fit at a workstation. Applies nothing: the light bulb does that. */
export async function advise(client: BaseLanguageClient, params: AdviceParams): Promise<void> {
  const advice = await client.sendRequest<AdviceResult | null>(adviceRequest, params);
  if (!advice) {
    void window.showInformationMessage('This file cannot be read yet. Correct the errors marked in it first.');
    return;
  }
  const { workstation, plans, notes } = advice;
  const items: QuickPickItem[] = [...plans.map(({ title }) => title), ...notes].map((label) => ({ label }));
  const nothing = `No other height serves more people at ${workstation}.`;
  await window.showQuickPick(items.length > 0 ? items : [{ label: nothing }], {
    title: `What would fit at ${workstation}`,
    placeHolder: 'To set one of these, use the light bulb on the name of the workstation.',
  });
}

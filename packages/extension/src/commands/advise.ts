import {
  type AdviceParams,
  adviceRequest,
  type AdviceResult,
  type AssessmentResult,
  assessmentRequest,
} from '@boothwright/language/protocol';
import { l10n, type QuickPickItem, window } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { boothInHand } from './in-hand.js';

/**
 * Shows what would fit at a workstation. Applies nothing: the light bulb does that. A lens says which workstation; the palette
 * says nothing and a menu only the file, so that the person is asked.
 */
export async function advise(client: BaseLanguageClient, asked?: Partial<AdviceParams>): Promise<void> {
  const params = isWhole(asked) ? asked : await chooseWorkstation(client);
  if (!params) return;
  const advice = await client.sendRequest<AdviceResult | null>(adviceRequest, params);
  if (!advice) return unreadable();
  const { workstation, plans, notes } = advice;
  const items: QuickPickItem[] = [...plans.map(({ title }) => title), ...notes].map((label) => ({ label }));
  const nothing = l10n.t('No other height serves more people at {0}.', workstation);
  await window.showQuickPick(items.length > 0 ? items : [{ label: nothing }], {
    title: l10n.t('What would fit at {0}', workstation),
    placeHolder: l10n.t('To set one of these, use the light bulb on the name of the workstation.'),
  });
}

function isWhole(asked: Partial<AdviceParams> | undefined): asked is AdviceParams {
  return asked?.uri !== undefined && asked.workstation !== undefined;
}

/** One of the workstations of the booth file in hand: the only one, or as the person says. */
async function chooseWorkstation(client: BaseLanguageClient): Promise<AdviceParams | undefined> {
  const document = await boothInHand();
  if (!document) return undefined;
  const uri = document.uri.toString();
  const result = await client.sendRequest<AssessmentResult | null>(assessmentRequest, { uri });
  if (!result) return unreadable();
  const names = result.assessment.workstations.map(({ name }) => name);
  if (names.length === 0) {
    void window.showInformationMessage(
      l10n.t('This file has no workstation yet. Declare one to see what would fit there.'),
    );
    return undefined;
  }
  const workstation =
    names.length === 1
      ? names[0]
      : await window.showQuickPick(names, {
          title: l10n.t('What would fit'),
          placeHolder: l10n.t('At which workstation?'),
        });
  return workstation === undefined ? undefined : { uri, workstation };
}

function unreadable(): undefined {
  void window.showInformationMessage(l10n.t('This file cannot be read yet. Correct the errors marked in it first.'));
}

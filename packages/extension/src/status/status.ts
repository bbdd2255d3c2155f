import { verdictNotification, type VerdictParams } from '@boothwright/language/protocol';
import { Disposable, type DocumentSelector, l10n, languages, LanguageStatusSeverity, window, workspace } from 'vscode';
import { type BaseLanguageClient, State } from 'vscode-languageclient';
import { tellVerdict } from './words.js';

/** A check that lasts longer than this is shown as busy, in milliseconds. */
const PATIENCE = 400;

const severities = {
  information: LanguageStatusSeverity.Information,
  warning: LanguageStatusSeverity.Warning,
  error: LanguageStatusSeverity.Error,
};

/** The verdict on the active booth file in the language status, kept up to date while the person types. */
export function showStatus(client: BaseLanguageClient, name: string, selector: DocumentSelector): Disposable {
  const problems = { command: 'workbench.actions.view.problems', title: l10n.t('Show problems') };
  const log = { command: 'boothwright.showLog', title: l10n.t('Show log') };
  const item = languages.createLanguageStatusItem('boothwright.verdict', selector);
  item.name = name;
  const verdicts = new Map<string, VerdictParams>();
  const lastGood = new Map<string, VerdictParams['counts']>();
  let state: State = State.Starting;
  let waiting: ReturnType<typeof setTimeout> | undefined;

  const show = () => {
    clearTimeout(waiting);
    const document = window.activeTextEditor?.document;
    if (state !== State.Running || !document || languages.match(selector, document) === 0) return showState();
    const verdict = verdicts.get(document.uri.toString());
    item.command = problems;
    item.busy = !verdict;
    if (!verdict)
      return Object.assign(item, { text: l10n.t('Boothwright checks'), detail: '', severity: severities.information });
    const { text, detail, severity } = tellVerdict(verdict, lastGood.get(verdict.uri), l10n);
    Object.assign(item, { text, detail, severity: severities[severity] });
    if (verdict.version < document.version) waiting = setTimeout(() => (item.busy = true), PATIENCE);
  };
  const showState = () => {
    const texts = {
      [State.Starting]: l10n.t('Boothwright starts'),
      [State.Running]: l10n.t('Boothwright is ready'),
      [State.Stopped]: l10n.t('Boothwright has stopped'),
      [State.StartFailed]: l10n.t('Boothwright could not start'),
    };
    item.text = texts[state];
    item.detail = '';
    item.severity = state === State.Starting || state === State.Running ? severities.information : severities.error;
    item.busy = state === State.Starting;
    item.command = log;
  };

  show();
  return Disposable.from(
    item,
    client.onDidChangeState(({ newState }) => {
      state = newState;
      if (state !== State.Running) verdicts.clear();
      show();
    }),
    client.onNotification(verdictNotification, (verdict: VerdictParams) => {
      verdicts.set(verdict.uri, verdict);
      if (verdict.faults === 0) lastGood.set(verdict.uri, verdict.counts);
      show();
    }),
    window.onDidChangeActiveTextEditor(show),
    workspace.onDidChangeTextDocument(({ document }) => {
      if (document === window.activeTextEditor?.document) show();
    }),
    workspace.onDidCloseTextDocument(({ uri }) => {
      verdicts.delete(uri.toString());
      lastGood.delete(uri.toString());
    }),
    new Disposable(() => clearTimeout(waiting)),
  );
}

import { commands, type ExtensionContext, languages, LanguageStatusSeverity, window } from 'vscode';
import {
  type BaseLanguageClient,
  type LanguageClientOptions,
  RevealOutputChannelOn,
  State,
} from 'vscode-languageclient';
import {
  adviseCommand,
  type AdviceParams,
  type ClientOptions,
  explainCommand,
  type ExplainParams,
} from '@boothwright/language/protocol';
import { advise } from './commands/advise.js';
import { explain, servePages } from './commands/explain.js';
import { answerFileRequests } from './file-requests.js';
import { writeReport } from './commands/write-report.js';
import type { RenderPdf } from './pdf-messages.js';

export const clientId = 'boothwright';
export const clientName = 'Boothwright';
const selector = [{ language: 'booth' }];

export interface Running {
  stop(): Promise<void>;
}

/** What both hosts share: the client, its state in the language status, and the commands. */
export async function start(
  context: ExtensionContext,
  createClient: (options: LanguageClientOptions) => BaseLanguageClient,
  renderPdf: RenderPdf,
): Promise<Running> {
  const log = window.createOutputChannel(clientName, { log: true });
  const client = createClient({
    documentSelector: selector,
    outputChannel: log,
    revealOutputChannelOn: RevealOutputChannelOn.Never,
    initializationOptions: { showsAdvice: true, opensPages: true } satisfies ClientOptions,
  });
  context.subscriptions.push(
    log,
    showState(client),
    ...answerFileRequests(client),
    servePages(),
    commands.registerCommand('boothwright.writeReport', () => writeReport(context, client, renderPdf)),
    commands.registerCommand(adviseCommand, (params: AdviceParams) => advise(client, params)),
    commands.registerCommand(explainCommand, (params?: ExplainParams) => explain(params)),
    commands.registerCommand('boothwright.restartServer', () => restart(client)),
    commands.registerCommand('boothwright.showLog', () => log.show()),
  );
  await commands.executeCommand('setContext', 'boothwright.running', true);
  await client.start();
  return { stop: async () => (client.needsStop() ? client.stop() : undefined) };
}

async function restart(client: BaseLanguageClient): Promise<void> {
  if (client.needsStop()) await client.stop();
  await client.start();
}

function showState(client: BaseLanguageClient) {
  const item = languages.createLanguageStatusItem('boothwright.server', selector);
  item.name = clientName;
  item.command = { command: 'boothwright.showLog', title: 'Show log' };
  const show = (state: State) => {
    item.busy = state === State.Starting;
    item.text =
      state === State.Running ? 'Boothwright is ready' : item.busy ? 'Boothwright starts' : 'Boothwright has stopped';
    item.severity = state === State.Stopped ? LanguageStatusSeverity.Error : LanguageStatusSeverity.Information;
  };
  show(State.Starting);
  const listening = client.onDidChangeState(({ newState }) => show(newState));
  return {
    dispose: () => {
      listening.dispose();
      item.dispose();
    },
  };
}

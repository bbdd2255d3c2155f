import { commands, type ExtensionContext, l10n, window } from 'vscode';
import { type BaseLanguageClient, type LanguageClientOptions, RevealOutputChannelOn } from 'vscode-languageclient';
import {
  adviseCommand,
  type AdviceParams,
  type ClientOptions,
  explainCommand,
  type ExplainParams,
} from '@boothwright/language/protocol';
import { advise } from './commands/advise.js';
import { explain, servePages } from './commands/explain.js';
import { newBooth } from './commands/new-booth.js';
import { providePreviews } from './preview/previews.js';
import { writeReport } from './commands/write-report.js';
import { answerFileRequests } from './file-requests.js';
import { traceInto } from './log.js';
import type { RenderPdf } from './pdf-messages.js';
import { showStatus } from './status/status.js';

export const clientId = 'boothwright';
export const clientName = 'Boothwright';
const selector = [{ language: 'booth' }];

export interface Running {
  stop(): Promise<void>;
}

/** What both hosts share: the client, the verdict in the language status, and the commands. */
export async function start(
  context: ExtensionContext,
  createClient: (options: LanguageClientOptions) => BaseLanguageClient,
  renderPdf: RenderPdf,
): Promise<Running> {
  const log = window.createOutputChannel(clientName, { log: true });
  const trace = traceInto(log);
  const client = createClient({
    documentSelector: selector,
    outputChannel: log,
    traceOutputChannel: trace,
    revealOutputChannelOn: RevealOutputChannelOn.Never,
    diagnosticPullOptions: { onChange: true },
    initializationOptions: {
      showsAdvice: true,
      showsVerdict: true,
      opensPages: true,
      showsPreview: true,
      sentences: l10n.bundle,
    } satisfies ClientOptions,
  });
  context.subscriptions.push(
    log,
    trace,
    showStatus(client, clientName, selector),
    ...answerFileRequests(client),
    servePages(),
    commands.registerCommand('boothwright.newBooth', newBooth),
    ...providePreviews(context, client),
    commands.registerCommand('boothwright.writeReport', () => writeReport(context, client, renderPdf)),
    commands.registerCommand(adviseCommand, (params?: Partial<AdviceParams>) => advise(client, params)),
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

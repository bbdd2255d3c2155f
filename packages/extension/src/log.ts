import { EventEmitter, type LogOutputChannel, LogLevel, workspace } from 'vscode';

export const traceSetting = 'boothwright.trace.server';

/**
 * Where the client writes its messages to the server and back. The client asks for the level of this channel; ours follows the
 * setting, so that the setting alone turns the trace on, whatever level the log is shown at.
 */
export function traceInto(log: LogOutputChannel): LogOutputChannel {
  const changed = new EventEmitter<LogLevel>();
  const level = () =>
    workspace.getConfiguration().get<string>(traceSetting, 'off') === 'off' ? LogLevel.Info : LogLevel.Trace;
  const listening = workspace.onDidChangeConfiguration((change) => {
    if (change.affectsConfiguration(traceSetting)) changed.fire(level());
  });
  return {
    ...log,
    get logLevel() {
      return level();
    },
    onDidChangeLogLevel: changed.event,
    trace: (message: string) => log.info(message),
    dispose: () => {
      listening.dispose();
      changed.dispose();
    },
  };
}

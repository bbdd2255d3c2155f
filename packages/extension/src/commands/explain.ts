import { codeOfPage, type ExplainParams, pageScheme, pageUri } from '@boothwright/language/protocol';
import { faultHelp } from '@boothwright/language/fault-help';
import { checkPages, type Page, pageMarkdown, pageOfCode, pageOfFault } from '@boothwright/report';
import { commands, type Disposable, l10n, Uri, ViewColumn, window, workspace } from 'vscode';

/** Makes the pages behind the codes of diagnostics. The editor opens them read-only, as package.json says: as rendered Markdown. */
export function servePages(): Disposable {
  return workspace.registerTextDocumentContentProvider(pageScheme, {
    provideTextDocumentContent: ({ path }) => {
      const code = codeOfPage(path);
      const page = pageOf(code);
      return page
        ? pageMarkdown(page)
        : `${l10n.t('Boothwright has no check called {0}.', `\`${code.replaceAll('`', '')}\``)}\n`;
    },
  });
}

/** Opens the page behind a code, or asks which check to explain. */
export async function explain(params?: ExplainParams): Promise<void> {
  const code = params?.code ?? (await chooseCheck());
  if (code === undefined) return;
  await commands.executeCommand('vscode.open', Uri.parse(pageUri(code)), ViewColumn.Beside);
}

async function chooseCheck(): Promise<string | undefined> {
  const items = checkPages(spoken).map(({ code, title, lead }) => ({ label: code, description: title, detail: lead }));
  const options = {
    title: l10n.t('Explain a check'),
    placeHolder: l10n.t('Which check?'),
    matchOnDescription: true,
    matchOnDetail: true,
  };
  return (await window.showQuickPick(items, options))?.label;
}

function pageOf(code: string): Page | undefined {
  const faults: Partial<Record<string, Parameters<typeof pageOfFault>[1]>> = faultHelp;
  return pageOfCode(code, spoken) ?? (faults[code] && pageOfFault(code, faults[code], spoken));
}

/** A text of the pages in the editor’s language. */
function spoken(english: string): string {
  return l10n.bundle?.[english] ?? english;
}

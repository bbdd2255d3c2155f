import type { LangiumDocument } from 'langium';
import type { CodeLensProvider } from 'langium/lsp';
import { type Assessment, checks, type Finding, type Served, type Verdict, formatPercent, say } from '@boothwright/fit';
import type { CodeLens } from 'vscode-languageserver-types';
import { adviseCommand, type AdviceParams, showSideCommand, type ShowSideParams } from '../protocol.js';
import type { BoothServices } from '../services.js';

const bodyChecks = new Set(checks.filter(({ rule }) => rule).map(({ id }) => id));
const worstFirst: readonly Verdict[] = ['fail', 'marginal', 'unknown', 'pass'];
/** More than these are counted: a lens is one line. */
const DETAILS = 2;

/** Above each workstation, whom it fits and what is wrong for the others; and ways to see it from the side and to ask for advice, in an editor that shows them. */
export class BoothCodeLensProvider implements CodeLensProvider {
  constructor(private readonly services: BoothServices) {}

  async provideCodeLens(document: LangiumDocument): Promise<CodeLens[]> {
    if (!(await this.isWanted())) return [];
    const assessment = this.services.Assessments.safelyOf(document)?.assessment;
    const uri = document.uri.toString();
    return (assessment?.workstations ?? [])
      .filter(({ origin }) => origin.uri === uri)
      .flatMap(({ name, origin: { start, end }, served }) => {
        const range = { start, end };
        const params: AdviceParams & ShowSideParams = { uri, workstation: name };
        return [
          { range, command: { title: verdictOn(name, served, assessment!), command: '' } },
          ...(this.services.Editor.showsPreview
            ? [{ range, command: { title: say`Show`, command: showSideCommand, arguments: [params] } }]
            : []),
          ...(this.services.Editor.showsAdvice
            ? [{ range, command: { title: say`What would fit?`, command: adviseCommand, arguments: [params] } }]
            : []),
        ];
      });
  }

  private async isWanted(): Promise<boolean> {
    const { workspace, lsp } = this.services.shared;
    if (!lsp.Connection) return true;
    const { languageId } = this.services.LanguageMetaData;
    return (await workspace.ConfigurationProvider.getConfiguration(languageId, 'codeLens')) !== false;
  }
}

function verdictOn(name: string, served: readonly Served[], { findings }: Assessment): string {
  const own = findings.filter(
    ({ check, subject }) => subject.kind === 'workstation' && subject.name === name && bodyChecks.has(check),
  );
  const people = [...new Set(served.map(({ who }) => who))];
  if (people.length === 0) return unsaid(own);
  const worst = (who: string) =>
    worstFirst.find((verdict) => served.some((one) => one.who === who && one.verdict === verdict));
  const count = (verdict: Verdict) => people.filter((who) => worst(who) === verdict).length;
  const details = people.filter((who) => worst(who) !== 'pass').flatMap((who) => detailOf(who, served, own) ?? []);
  const more = details.length - DETAILS;
  return [
    count('marginal') > 0
      ? say`${count('pass')} of ${people.length} fit, ${count('marginal')} may`
      : say`${count('pass')} of ${people.length} fit`,
    ...details.slice(0, DETAILS),
    ...(more > 0 ? [say`and ${more} more`] : []),
  ].join(' · ');
}

function unsaid(findings: readonly Finding[]): string {
  const missing = findings.find((finding) => finding.missing)?.missing;
  return missing
    ? say`Cannot say who fits: add ${missing.property} to ${missing.of}`
    : say`Nobody to fit: name operators`;
}

/** What is wrong for a person, as the finding says it first; of a crowd, how much of it is served. */
function detailOf(who: string, served: readonly Served[], findings: readonly Finding[]): string | undefined {
  const crowd = served.filter((one) => one.who === who && one.cover !== undefined);
  if (crowd.length > 0) {
    const least = crowd.reduce((a, b) => (b.share < a.share ? b : a));
    return say`${who}: ${formatPercent(least.share)} served, ${formatPercent(least.cover!)} wanted`;
  }
  const [worst] = findings
    .filter(({ operator, verdict }) => operator === who && (verdict === 'fail' || verdict === 'marginal'))
    .sort(
      (a, b) =>
        Number(a.accepted !== undefined) - Number(b.accepted !== undefined) ||
        worstFirst.indexOf(a.verdict) - worstFirst.indexOf(b.verdict),
    );
  if (!worst) return undefined;
  const fact = worst.message.split(/: |; |, so |, sodass |\. |\.$/)[0]!;
  return worst.accepted === undefined ? fact : say`${fact} (accepted)`;
}

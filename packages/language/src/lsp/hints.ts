import type { LangiumDocument } from 'langium';
import type { InlayHintProvider } from 'langium/lsp';
import {
  type Assessment,
  formatLength,
  formatRange,
  type Origin,
  formatPercent,
  seatedOrStanding,
  inPosture,
  say,
} from '@boothwright/fit';
import type { InlayHintParams } from 'vscode-languageserver';
import type { InlayHint, Range } from 'vscode-languageserver-types';
import type { BoothServices } from '../services.js';

/** The kinds of hints, as the settings under `boothwright.hints` name them; each is shown unless it is turned off. */
export type HintKind = 'viewingDistance' | 'clearWidth' | 'share';

interface Hint {
  readonly kind: HintKind;
  /** The name that it stands behind. */
  readonly origin: Origin;
  readonly label: string;
  /** Where the figure comes from, line by line. */
  readonly tooltip: readonly string[];
}

/** Figures of the assessment beside the names they belong to. */
export class BoothInlayHintProvider implements InlayHintProvider {
  constructor(private readonly services: BoothServices) {}

  async getInlayHints(document: LangiumDocument, { range }: Pick<InlayHintParams, 'range'>): Promise<InlayHint[]> {
    const assessment = this.services.Assessments.safelyOf(document)?.assessment;
    if (!assessment) return [];
    const wanted = await this.settings();
    return [...distances(assessment), ...widths(assessment), ...shares(assessment)]
      .filter(({ kind, origin }) => wanted[kind] !== false && origin.uri === document.uri.toString())
      .filter(({ origin }) => isWithin(origin, range))
      .map(({ origin, label, tooltip }) => ({
        position: origin.end,
        label,
        tooltip: tooltip.join('\n'),
        paddingLeft: true,
      }));
  }

  private async settings(): Promise<Partial<Record<HintKind, unknown>>> {
    const { workspace, lsp } = this.services.shared;
    if (!lsp.Connection) return {};
    const { languageId } = this.services.LanguageMetaData;
    const hints: unknown = await workspace.ConfigurationProvider.getConfiguration(languageId, 'hints');
    return typeof hints === 'object' && hints !== null ? hints : {};
  }
}

function distances({ screens = [], booth: { show } }: Assessment): Hint[] {
  return screens
    .filter(({ distances }) => distances.length > 0)
    .map(({ origin, distances: all }) => {
      const each = all.map(({ distance }) => distance);
      const range = formatRange({ min: Math.min(...each), max: Math.max(...each) }, show);
      const lines = all.map(
        ({ who, posture, distance }) => `${inPosture(who, posture)}: ${formatLength(distance, show)}`,
      );
      return {
        kind: 'viewingDistance',
        origin,
        label: say`${range} from the eyes`,
        tooltip: [say`From the eye to the middle of the screen:`, ...lines],
      };
    });
}

function widths({ walkways, booth: { show } }: Assessment): Hint[] {
  return walkways.flatMap(({ origin, clear, terms }) =>
    clear === undefined
      ? []
      : [
          {
            kind: 'clearWidth' as const,
            origin,
            label: say`${formatLength(clear, show)} clear`,
            tooltip: [terms ?? say`The clear width.`],
          },
        ],
  );
}

function shares({ booth, workstations }: Assessment): Hint[] {
  return booth.workstations.flatMap(({ name, people }) =>
    people.flatMap(({ name: who, origin }) => {
      const served = workstations.find((station) => station.name === name)?.served ?? [];
      const own = served.filter((one) => one.who === who && one.cover !== undefined);
      if (own.length === 0) return [];
      const label = own.map(({ share, posture }) =>
        own.length > 1 ? `${formatPercent(share)} ${seatedOrStanding(posture)}` : say`${formatPercent(share)} served`,
      );
      const lines = own.map(
        ({ share, posture, cover }) =>
          say`Everything at ${name} fits ${formatPercent(share)} of ${inPosture(who, posture)}; ${formatPercent(cover!)} are to be served.`,
      );
      return [{ kind: 'share' as const, origin, label: label.join(', '), tooltip: lines }];
    }),
  );
}

function isWithin({ end: { line, character } }: Origin, { start, end }: Range): boolean {
  const isAfter = line > start.line || (line === start.line && character >= start.character);
  return isAfter && (line < end.line || (line === end.line && character <= end.character));
}

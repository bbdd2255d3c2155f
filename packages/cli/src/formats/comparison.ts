import {
  describe,
  groupsOf,
  wordOf,
  type ComparedResult,
  type Comparison,
  type Outcome,
} from '@boothwright/report/comparison';
import { printed, rounded } from './values.js';
import { caution, plain, wrapper } from './prose.js';

/** The version of the object's form: `schema/comparison-1.schema.json`. A field may be added; none changes its meaning. */
const SCHEMA = 'boothwright-comparison-1';

/** For programs: one object. */
export function formatComparisonJson(comparison: Comparison, files: readonly string[]): string {
  const { layouts, results, served, walkways, changes } = comparison;
  return printed([
    {
      schema: SCHEMA,
      layouts: layouts.map(({ label, open, accepted }, index) => ({ file: files[index], label, open, accepted })),
      changes: changes.map(({ layout, gains, losses, dropped, added }) => ({
        file: files[layout],
        against: files[0],
        gains: gains.map(resultObject),
        losses: losses.map(resultObject),
        dropped: dropped.map(resultObject),
        added: added.map(resultObject),
      })),
      results: results.map(resultObject),
      served: served.map(({ workstation, who, posture, outcomes }) => ({
        workstation,
        who,
        posture,
        outcomes: outcomes.map((one) => (one ? { share: rounded(one.share, 4), verdict: one.verdict } : null)),
      })),
      walkways: walkways.map(({ name, clear }) => ({ name, clear: clear.map((width) => rounded(width, 1)) })),
    },
  ]);
}

function resultObject({ check, subject, operator, posture, outcomes }: ComparedResult) {
  return {
    check,
    subject: subject.name,
    subjectKind: subject.kind,
    operator: operator ?? null,
    posture: posture ?? null,
    outcomes: outcomes.map((outcome: Outcome | undefined) => outcome ?? null),
  };
}

/** For people: what each layout but the first gains and loses, then the figures behind it. */
export function formatComparison(
  { layouts, served, walkways, changes }: Comparison,
  length: (millimetres: number) => string,
  { width }: { readonly width: number },
): string {
  const wrap = wrapper(width);
  const items = (results: readonly ComparedResult[], layout: number) =>
    results.map((result) =>
      wrap(
        plain(`${describe(result)}: ${wordOf(result.outcomes[0])}, then ${wordOf(result.outcomes[layout])}`),
        '  - ',
        '    ',
      ),
    );
  const summaries = layouts.map(({ label, open, accepted }) =>
    wrap(
      plain(
        `${label}: ${open.fail} failed, ${open.marginal} marginal, ${open.unknown} cannot be said, ${open.pass} passed${accepted > 0 ? `, ${accepted} accepted` : ''}.`,
      ),
      '',
    ),
  );
  const parts = [
    summaries,
    ...changes.map((change) => [
      wrap(plain(`${layouts[change.layout]!.label} against ${layouts[0]!.label}`), ''),
      ...groupsOf(change).flatMap(({ title, results }) => [title, ...items(results, change.layout)]),
    ]),
    served.length === 0
      ? []
      : [
          'Everything at once, people within the preferred band',
          ...served.map(({ workstation, who, posture, outcomes }) => {
            const shares = outcomes.map((one) => (one ? `${Math.round(one.share * 100)}%` : '–')).join(' | ');
            return wrap(
              plain(`${who}, ${posture === 'sit' ? 'sitting' : 'standing'} at ${workstation}: ${shares}`),
              '  - ',
              '    ',
            );
          }),
        ],
    walkways.length === 0
      ? []
      : [
          'Clear widths',
          ...walkways.map(({ name, clear }) =>
            wrap(
              plain(`${name}: ${clear.map((one) => (one === undefined ? '–' : length(one))).join(' | ')}`),
              '  - ',
              '    ',
            ),
          ),
        ],
    [wrap(caution, '')],
  ];
  return `${parts
    .filter(({ length: lines }) => lines > 0)
    .map((lines) => lines.join('\n'))
    .join('\n\n')}\n`;
}

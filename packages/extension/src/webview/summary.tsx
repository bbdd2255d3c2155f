import type { PreviewResult } from '@boothwright/language/protocol';
import { tellAnswer, VerdictMark, type Views } from '@boothwright/report/preview';

type Assessment = Extract<PreviewResult, { is: 'booth' }>['assessment'];

interface SummaryProps {
  readonly assessment: Assessment;
  readonly stale: boolean;
  readonly views: Views;
  /** What is tried and not written, in words. */
  readonly trial: string | undefined;
}

/** Does it fit, how many findings of each kind, whether the drawing is of an older text, and the way to each drawing. */
export function Summary({ assessment, stale, views, trial }: SummaryProps) {
  const { headline, tally } = tellAnswer(assessment);
  return (
    <header class="top">
      <h1>{assessment.booth.name}</h1>
      <ul class="tally" aria-label="Does it fit?">
        <li>
          <strong>{headline}</strong>
        </li>
        {tally.map(({ verdict, count, word }) => (
          <li key={verdict}>
            <b>{count}</b> <VerdictMark verdict={verdict} word={word} />
          </li>
        ))}
      </ul>
      <div class="notices" role="status">
        {trial !== undefined && <p>{trial}</p>}
        {stale && (
          <p class="stale">
            <strong>Stale:</strong> the text has errors. This is drawn from the text as it was before them.
          </p>
        )}
      </div>
      <nav aria-label="Drawings">
        {views.plans.map(({ id, caption }) => (
          <a key={id} href={`#${id}-title`} onClick={leap}>
            {caption}
          </a>
        ))}
        {views.stations.map(({ id, name }) => (
          <a key={id} href={`#${id}-title`} onClick={leap}>
            {name}
          </a>
        ))}
      </nav>
    </header>
  );
}

/** An editor's page has no address that a link could change: the page scrolls by itself. */
function leap(event: MouseEvent): void {
  event.preventDefault();
  const id = (event.currentTarget as HTMLAnchorElement).hash.slice(1);
  const target = document.getElementById(id);
  target?.scrollIntoView({ block: 'start' });
  target?.setAttribute('tabindex', '-1');
  target?.focus({ preventScroll: true });
}

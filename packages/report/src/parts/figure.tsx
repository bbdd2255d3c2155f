import type { Figure } from '../content/blocks.js';
import { DrawingSvg } from '../drawings/svg.js';
import { VerdictMark } from './verdict.js';

/** No drawing that stands beside another is made smaller than this part of its own size. */
const SMALLEST = 0.8;

/** A drawing, or one for wide and one for narrow paper of which a page shows the one that fits, with its figures as a list. */
export function FigureElement({ figure: { caption, drawing, narrow }, id }: { figure: Figure; id: string }) {
  const { width } = drawing.sheet;
  return (
    <figure style={{ flex: `${Math.round(width)} 1 min(${Math.round(width * SMALLEST)}px, 100%)` }}>
      <figcaption>{caption}</figcaption>
      <div class={narrow && 'wide'}>
        <DrawingSvg drawing={drawing} id={id} />
      </div>
      {narrow && (
        <div class="narrow">
          <DrawingSvg drawing={narrow} id={`${id}-narrow`} />
        </div>
      )}
      {drawing.facts.length > 0 && (
        <details>
          <summary>The figures as a list</summary>
          <ul>
            {drawing.facts.map(({ what, value, verdict }) => (
              <li>
                {`${what}: ${value}`}
                {verdict && (
                  <>
                    {' · '}
                    <VerdictMark verdict={verdict} />
                  </>
                )}
              </li>
            ))}
          </ul>
        </details>
      )}
    </figure>
  );
}

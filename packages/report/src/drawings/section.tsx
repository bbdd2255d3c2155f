import { listOf, type Assessment, type Verdict } from '@boothwright/fit';
import { VerdictMark } from '../parts/verdict.js';
import { boothPlan } from './booth-plan.js';
import type { Drawing } from './drawing.js';
import { hallSection } from './hall-section.js';
import { roomPlan } from './room-plan.js';
import { shownSides } from './shown.js';
import { sideView } from './side-view.js';
import { DrawingSvg } from './svg.js';

const WIDE = 760;
const NARROW = 380;

/** All drawings of an assessment, each with its figures as a list; nothing if nothing can be drawn. */
export function Drawings({ assessment }: { assessment: Assessment }) {
  const { sketch } = assessment;
  if (!sketch) return null;
  const room = roomPlan(assessment, NARROW);
  const stations = assessment.booth.workstations.map(({ name }) => ({ name, ...shownSides(sketch.sides, name) }));
  const peopled = stations.filter(({ shown }) => shown.length > 0);
  const booth = [boothPlan(assessment, WIDE), boothPlan(assessment, NARROW)] as const;
  const hall = [hallSection(assessment, WIDE), hallSection(assessment, NARROW)] as const;
  if (!room && !booth[0] && !hall[0] && peopled.length === 0) return null;
  return (
    <section class="drawings">
      <h2>Drawings</h2>
      <div class="pair">
        {room && <Figure caption="The room from above" drawings={[room]} id="room-plan" />}
        <Key />
      </div>
      <Figure caption="The booth from above" drawings={booth} id="booth-plan" />
      <Figure caption="From the booth to the stage" drawings={hall} id="section" />
      {peopled.map(({ name, shown, between }, station) => (
        <>
          <h3>{`${name} from the side`}</h3>
          <div class="pair">
            {shown.map((side, index) => {
              const drawing = sideView(assessment, side);
              return <Figure caption={drawing.title} drawings={[drawing]} id={`side-${station + 1}-${index + 1}`} />;
            })}
          </div>
          {between.length > 0 && <p>{`Between the lowest and the highest eyes that are drawn: ${listOf(between)}.`}</p>}
        </>
      ))}
    </section>
  );
}

/** A drawing, or one for wide and one for narrow paper of which a page shows the one that fits. */
function Figure(props: { caption: string; drawings: readonly (Drawing | undefined)[]; id: string }) {
  const { caption, drawings, id } = props;
  const [first, second] = drawings;
  if (!first) return null;
  return (
    <figure>
      <figcaption>{caption}</figcaption>
      <div class={second && 'wide'}>
        <DrawingSvg drawing={first} id={id} />
      </div>
      {second && (
        <div class="narrow">
          <DrawingSvg drawing={second} id={`${id}-narrow`} />
        </div>
      )}
      {first.facts.length > 0 && (
        <details>
          <summary>The figures as a list</summary>
          <ul>
            {first.facts.map(({ what, value, verdict }) => (
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

/** How to read the drawings. */
export const readingKey: readonly string[] = [
  'Drawn to scale; the bar under each drawing tells which.',
  'People are the average of what is known of them, seat and desk set as suits them best.',
  'A bar on the staff of heights beside a person: nine in ten of such people have eye or elbow inside it.',
  'The dashed strip behind a desk is floor that people on seats take.',
  'Dotted arcs: what hands reach easily and, farther out, at most.',
  'Dashed lines from an eye: to a screen, or to the lowest point of the stage that is seen.',
  'A line with a stroke across each end: a length, from stroke to stroke.',
];

function Key() {
  return (
    <figure>
      <figcaption>How to read the drawings</figcaption>
      <ul class="key">
        {readingKey.map((text) => (
          <li>{text}</li>
        ))}
        <li>
          {marks.map((verdict) => (
            <VerdictMark verdict={verdict} />
          ))}
        </li>
      </ul>
    </figure>
  );
}

const marks: readonly Verdict[] = ['fail', 'marginal', 'unknown', 'pass'];

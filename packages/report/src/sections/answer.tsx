import type { Assessment } from '@boothwright/fit';
import { VerdictMark } from '../parts/verdict.js';
import { tellAnswer } from '../telling/answer.js';

/** Does it fit? One word, one paragraph, four numbers. */
export function Answer({ assessment }: { assessment: Assessment }) {
  const { headline, sentences, tally } = tellAnswer(assessment);
  return (
    <section class="answer">
      <h2>Does it fit?</h2>
      <p>
        <strong>{headline}</strong> {sentences.join(' ')}
      </p>
      <ul class="tally">
        {tally.map(({ verdict, count, word }) => (
          <li>
            <b>{count}</b> <VerdictMark verdict={verdict} word={word} />
          </li>
        ))}
      </ul>
    </section>
  );
}

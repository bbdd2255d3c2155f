import type { Verdict } from '@boothwright/fit';
import { verdictWords } from '../words.js';

/** The four shapes, once per page: a disc, a triangle, a square, a ring. They differ without colour and at 8 points. */
export function VerdictShapes() {
  const stroke = { fill: 'none', stroke: 'var(--paper)', 'stroke-width': 2, 'stroke-linecap': 'round' } as const;
  return (
    <svg width="0" height="0" class="shapes" aria-hidden="true">
      <symbol id="shape-pass" viewBox="0 0 16 16">
        <circle cx="8" cy="8" r="7.5" fill="currentColor" />
        <path d="M4.6 8.4 7 10.8l4.4-5.2" {...stroke} />
      </symbol>
      <symbol id="shape-marginal" viewBox="0 0 16 16">
        <path d="M8 .8 15.6 15H.4z" fill="currentColor" />
        <path d="M8 6v4M8 12.6v.1" {...stroke} />
      </symbol>
      <symbol id="shape-fail" viewBox="0 0 16 16">
        <path d="M1 1h14v14H1z" fill="currentColor" />
        <path d="m4.8 4.8 6.4 6.4m0-6.4-6.4 6.4" {...stroke} />
      </symbol>
      <symbol id="shape-unknown" viewBox="0 0 16 16">
        <circle cx="8" cy="8" r="6.7" fill="none" stroke="currentColor" stroke-width="1.6" stroke-dasharray="2.6 1.6" />
        <path
          d="M6 6.4a2 2 0 1 1 2.6 1.9q-.6.3-.6 1.2M8 11.9v.1"
          fill="none"
          stroke="currentColor"
          stroke-width="1.5"
          stroke-linecap="round"
        />
      </symbol>
    </svg>
  );
}

/** A verdict by shape, word and colour. */
export function VerdictMark({ verdict, word = verdictWords[verdict] }: { verdict: Verdict; word?: string }) {
  return (
    <span class={`verdict ${verdict}`}>
      <svg width="12" height="12" aria-hidden="true">
        <use href={`#shape-${verdict}`} />
      </svg>
      {word}
    </span>
  );
}

/** How verdicts and their shapes look, wherever a page gives them their colours. */
export const verdictStyles = `.verdict { white-space: nowrap; font-weight: 600; }
.verdict svg { margin-right: .375em; vertical-align: -.08em; }
.verdict.pass { color: var(--pass); }
.verdict.marginal { color: var(--marginal); }
.verdict.fail { color: var(--fail); }
.verdict.unknown { color: var(--unknown); }
.shapes { position: absolute; }
`;

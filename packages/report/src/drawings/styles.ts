import { TEXT_SIZE } from './drawing.js';

/**
 * How drawings look. Where the page around them has no variables of its own they take its text colour, so they stay readable on any
 * ground; where colours are forced they take the forced ones.
 */
export const drawingStyles = `
.drawn figure { margin: 0 0 2.5rem; }
.drawn figcaption { margin: 0 0 .5rem; font-weight: 600; }
.drawn .figures { display: flex; flex-wrap: wrap; gap: 0 1.5rem; }
.drawn details { margin-top: .5rem; font-size: .875rem; }
.drawn summary { color: var(--soft, currentColor); cursor: pointer; }
.drawn details ul { margin: .375rem 0 0; padding: 0; list-style: none; }
.drawn details li { margin: 0 0 .25rem; }
.drawn .narrow { display: none; }
@media screen and (max-width: 40rem) {
  .drawn .narrow { display: block; }
  .drawn .wide { display: none; }
}
@media print {
  .drawn figure { break-inside: avoid; margin-bottom: 6mm; }
  .drawn .figures { gap: 0 5mm; }
  .drawn details { display: none; }
}
.drawing {
  --d-ink: var(--ink, currentColor); --d-soft: var(--soft, currentColor); --d-paper: var(--paper, Canvas);
  --d-faint: color-mix(in srgb, var(--d-ink) 32%, var(--d-paper));
  --d-wash: color-mix(in srgb, var(--d-ink) 7%, var(--d-paper));
  --d-body: color-mix(in srgb, var(--d-ink) 15%, var(--d-paper));
  --d-pass: var(--pass, currentColor); --d-marginal: var(--marginal, currentColor);
  --d-fail: var(--fail, currentColor); --d-unknown: var(--unknown, currentColor);
  display: block; width: 100%; height: auto;
  font: ${TEXT_SIZE}px Arial, "Helvetica Neue", Helvetica, "Liberation Sans", sans-serif;
  font-variant-numeric: lining-nums; stroke-linejoin: round; stroke-linecap: round;
}
.drawing path, .drawing circle { fill: none; stroke: var(--d-ink); stroke-width: .9; }
.drawing text { fill: var(--d-ink); stroke: var(--d-paper); stroke-width: 3px; paint-order: stroke; }
.drawing .hair { stroke-width: .5; }
.drawing .thin { stroke-width: .9; }
.drawing .medium { stroke-width: 1.5; }
.drawing .thick { stroke-width: 2.6; }
.drawing .silhouette { paint-order: stroke; }
.drawing .silhouette.thin { stroke-width: 1.6; }
.drawing .silhouette.medium { stroke-width: 2.4; }
.drawing .dashed { stroke-dasharray: 6 3.5; stroke-linecap: butt; }
.drawing .dotted { stroke-dasharray: .1 3.2; stroke-linecap: round; stroke-width: 1.3; }
.drawing .chain { stroke-dasharray: 10 3 1.5 3; stroke-linecap: butt; }
.drawing .soft { stroke: var(--d-soft); }
.drawing .faint { stroke: var(--d-faint); }
.drawing text.soft { fill: var(--d-soft); stroke: var(--d-paper); }
.drawing text.strong { font-weight: 600; }
.drawing .fill-paper { fill: var(--d-paper); }
.drawing .fill-wash { fill: var(--d-wash); }
.drawing .fill-body { fill: var(--d-body); }
.drawing .fill-solid { fill: var(--d-ink); }
.drawing .gap { stroke: var(--d-paper); stroke-width: 4; stroke-linecap: butt; }
.drawing .no-line { stroke: none; }
.drawing .pass { stroke: var(--d-pass); }
.drawing .marginal { stroke: var(--d-marginal); }
.drawing .fail { stroke: var(--d-fail); }
.drawing .unknown { stroke: var(--d-unknown); }
.drawing .mark { --mark: var(--d-pass); }
.drawing .mark.marginal { --mark: var(--d-marginal); }
.drawing .mark.fail { --mark: var(--d-fail); }
.drawing .mark.unknown { --mark: var(--d-unknown); }
.drawing .mark .whole { fill: var(--mark); stroke: none; }
.drawing .mark .sign { stroke: var(--d-paper); stroke-width: 2; }
.drawing .mark.unknown .sign { stroke: var(--mark); stroke-width: 1.6; }
@media (forced-colors: active) {
  .drawing {
    --d-ink: CanvasText; --d-soft: CanvasText; --d-paper: Canvas; --d-faint: CanvasText; --d-wash: Canvas; --d-body: Canvas;
    --d-pass: CanvasText; --d-marginal: CanvasText; --d-fail: CanvasText; --d-unknown: CanvasText;
    forced-color-adjust: none;
  }
}
`;

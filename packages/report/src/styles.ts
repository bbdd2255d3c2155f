import { light, properties } from './palette.js';
import { verdictStyles } from './parts/verdict.js';

/** The report's whole look. Screen and paper, light and dark; on paper always light, and verdicts never by colour alone. */
export const styles = `
:root {
  color-scheme: light dark;
  ${properties(light)}
}
@media screen and (prefers-color-scheme: dark) {
  :root {
    --paper: #16191c; --ink: #e4e7e9; --soft: #a2abb3; --line: #363c42; --wash: #1e2226;
    --pass: #7fc99a; --marginal: #e2b45e; --fail: #f2928c; --unknown: #aebbd6;
    --line-1: #8db8ea; --line-2: #efae6c; --line-3: #6bcaca; --line-4: #c9a6ec;
  }
}
* { box-sizing: border-box; }
body {
  margin: 0; background: var(--paper); color: var(--ink);
  font: 1rem/1.5 system-ui, "Segoe UI", "Helvetica Neue", Helvetica, Arial, sans-serif;
  font-variant-numeric: lining-nums; overflow-wrap: break-word;
}
main { max-width: 52rem; margin: 0 auto; padding: 3rem 1.5rem 4rem; }
h1, h2, h3 { font-family: Charter, "Bitstream Charter", "Sitka Text", Cambria, Georgia, serif; line-height: 1.2; text-wrap: balance; }
h1 { font-size: 2.25rem; font-weight: 600; margin: 0; }
h2 { font-size: 1.375rem; font-weight: 600; margin: 2.75rem 0 .75rem; }
h3 { font-size: 1.125rem; font-weight: 600; margin: 2rem 0 .5rem; }
p { margin: 0 0 .625rem; max-width: 42rem; }
.page { padding-bottom: 1.5rem; border-bottom: 2px solid var(--ink); }
.page h2 { margin-top: 1.5rem; }
.page h1 + p { margin: .375rem 0; }

table { width: 100%; border-collapse: collapse; margin: .75rem 0 1.5rem; font-size: .875rem; line-height: 1.4; }
caption { padding: 0 0 .375rem; text-align: left; color: var(--soft); }
th, td { padding: .375rem 1rem .375rem 0; text-align: left; vertical-align: top; border-bottom: 1px solid var(--line); }
th:last-child, td:last-child { padding-right: 0; }
thead th { font-weight: 600; border-bottom: 1.5px solid var(--ink); vertical-align: bottom; }
tbody th { font-weight: 500; }
.scroll { overflow-x: auto; }
.broad td { white-space: nowrap; }
.broad span.soft { white-space: normal; }

${verdictStyles}
.of { display: block; }
span.soft { color: var(--soft); font-size: .875rem; font-weight: 400; }
table span.soft { font-size: .8125rem; }
code { font: .9em/1.4 ui-monospace, "SF Mono", Menlo, Consolas, "DejaVu Sans Mono", monospace; background: var(--wash); padding: .1em .3em; border-radius: .2em; }

ul.items, ol.items { margin: .75rem 0 1.5rem; padding-left: 1.25rem; }
.items > li { margin: 0 0 .625rem; max-width: 42rem; }
.items > [class] { margin: 0 0 1.125rem -1.25rem; padding: 0 0 0 1rem; list-style: none; border-left: 3px solid var(--line); max-width: none; }
.items > .fail { border-left-color: var(--fail); }
.items > .marginal { border-left: 3px double var(--marginal); }
.items .verdict { margin-right: .25em; }
summary { color: var(--soft); cursor: pointer; }
.more { margin: .75rem 0 1.5rem; }
.charts { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(22rem, 100%), 1fr)); gap: 0 2rem; align-items: start; }
.chart { margin: 1rem 0 1.5rem; }
.chart figcaption { color: var(--soft); font-size: .875rem; }
.chart > svg { display: block; width: 100%; max-width: 40rem; height: auto; }
.chart text { fill: var(--soft); font-size: 11px; }
.grid line { stroke: var(--line); stroke-width: 1; }
.grid .axis { stroke: var(--soft); }
.now line { stroke: var(--ink); stroke-width: 1; stroke-dasharray: 1 2; }
.now text { fill: var(--ink); }
.line { fill: none; stroke-width: 2; stroke-linejoin: round; }
.line-1 { stroke: var(--line-1); }
.line-2 { stroke: var(--line-2); }
.line-3 { stroke: var(--line-3); }
.line-4 { stroke: var(--line-4); }
.legend { margin: .25rem 0 .75rem; padding: 0; list-style: none; font-size: .875rem; }
.legend svg { margin-right: .5em; vertical-align: .1em; }

@media screen and (max-width: 30rem) {
  main { padding: 2rem 1rem 3rem; }
  th, td { padding-right: .625rem; overflow-wrap: anywhere; }
  .scroll th, .scroll td { overflow-wrap: normal; }
}
@page {
  margin: 15mm 15mm 17mm;
  @bottom-right { content: counter(page) " of " counter(pages); font: 8pt system-ui, sans-serif; color: #58626b; }
}
@media print {
  :root { color-scheme: light; }
  body { font-size: 9pt; line-height: 1.4; }
  main { max-width: none; padding: 0; }
  h1 { font-size: 20pt; }
  h2, .page h2 { font-size: 13pt; margin: 6mm 0 2mm; }
  h3 { font-size: 10.5pt; margin: 4mm 0 1mm; }
  .page { break-after: page; padding: 0; border: 0; }
  h2, h3, caption, thead, .chart figcaption { break-after: avoid; }
  tr, li, .chart { break-inside: avoid; }
  p { orphans: 3; widows: 3; max-width: none; margin-bottom: 1mm; }
  table { font-size: 8pt; line-height: 1.3; margin: 1mm 0 3mm; }
  th, td { padding: .6mm 4mm .6mm 0; }
  caption { padding-bottom: .5mm; }
  .scroll { overflow: visible; }
  .broad td { white-space: normal; }
  span.soft, table span.soft, .legend, .chart figcaption { font-size: 8pt; }
  .items > li, .items > [class] { max-width: none; margin-bottom: 1.5mm; }
  .items > li:not([class]) { break-inside: auto; margin-bottom: .75mm; }
  ul.items, ol.items { margin: 1mm 0 3mm; }
  .charts { grid-template-columns: 1fr 1fr; gap: 0 6mm; }
  .chart { margin: 1mm 0 3mm; }
  .more { display: none; }
}
`;

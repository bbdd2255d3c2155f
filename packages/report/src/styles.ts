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
.kind { margin: 0 0 .25rem; color: var(--soft); }
.made { margin: .375rem 0 0; color: var(--soft); font-size: .875rem; }
.answer { margin-top: 2rem; padding: 1.25rem 0 1rem; border-top: 2px solid var(--ink); border-bottom: 1px solid var(--line); }
.answer h2 { margin-top: 0; }
.answer p { font-size: 1.125rem; }
.tally { display: flex; flex-wrap: wrap; gap: .25rem 2rem; margin: .875rem 0 0; padding: 0; list-style: none; }
.tally b { font-size: 1.25rem; font-variant-numeric: tabular-nums; }

table { width: 100%; border-collapse: collapse; margin: .75rem 0 1.5rem; font-size: .875rem; line-height: 1.4; }
caption { padding: 0 0 .375rem; text-align: left; color: var(--soft); }
th, td { padding: .375rem 1rem .375rem 0; text-align: left; vertical-align: top; border-bottom: 1px solid var(--line); }
th:last-child, td:last-child { padding-right: 0; }
thead th { font-weight: 600; border-bottom: 1.5px solid var(--ink); vertical-align: bottom; }
tbody th { font-weight: 500; }
.scroll { overflow-x: auto; }
.matrix td { white-space: nowrap; }
.matrix .joint th, .matrix .joint td { border-bottom-width: 2px; }
.passes th:nth-child(1) { width: 22%; }
.passes th:nth-child(3) { width: 26%; }
td p { margin: 0 0 .25rem; }
td p:last-child { margin: 0; }

${verdictStyles}
.of, td .terms, td .source { display: block; font-weight: 400; }
.head .of { display: inline; }
.of, .kindof, .terms, .source { color: var(--soft); font-size: .875rem; }
table .of, table .kindof, table .terms, table .source { font-size: .8125rem; }
.terms { font-variant-numeric: lining-nums tabular-nums; }
.kindof { font-weight: 400; }
.weak { font-style: italic; }
code { font: .9em/1.4 ui-monospace, "SF Mono", Menlo, Consolas, "DejaVu Sans Mono", monospace; background: var(--wash); padding: .1em .3em; border-radius: .2em; }

.findings, .changes { margin: .75rem 0 1.5rem; padding: 0; list-style: none; }
.findings > li { margin: 0 0 1.125rem; padding: 0 0 0 1rem; border-left: 3px solid var(--line); }
.findings > .fail { border-left-color: var(--fail); }
.findings > .marginal { border-left: 3px double var(--marginal); }
.findings p { margin: 0 0 .25rem; }
.findings .head .verdict { margin-right: .5em; }
.changes > li { margin: 0 0 .75rem; max-width: 42rem; }
.reason { font-style: italic; }

.plans { margin: .75rem 0 1.25rem; padding-left: 1.5rem; }
.plans > li { margin: 0 0 .75rem; max-width: 42rem; }
.bands { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(19rem, 100%), 1fr)); gap: 0 2rem; align-items: start; }
.bands tbody th { white-space: nowrap; }
.shopping th:first-child { width: 22%; }
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
.legend { display: flex; flex-wrap: wrap; gap: .25rem 1.5rem; margin: .25rem 0 .75rem; padding: 0; list-style: none; font-size: .875rem; }
.legend svg { margin-right: .5em; vertical-align: .1em; }
.shares tbody th { white-space: nowrap; }
.shares td { font-variant-numeric: lining-nums tabular-nums; }

.facts { margin: 0 0 1.5rem; }
.facts > div { display: flex; gap: 1rem; padding: .25rem 0; }
.facts dt { flex: 0 0 9rem; color: var(--soft); }
.facts dd { margin: 0; }
.cautions { margin-top: 3rem; border-top: 1px solid var(--line); }

@media screen and (max-width: 30rem) {
  main { padding: 2rem 1rem 3rem; }
  th, td { padding-right: .625rem; overflow-wrap: anywhere; }
  .scroll th, .scroll td { overflow-wrap: normal; }
}
@page {
  margin: 18mm 17mm 20mm;
  @bottom-right { content: counter(page) " of " counter(pages); font: 8pt system-ui, sans-serif; color: #58626b; }
}
@media print {
  :root { color-scheme: light; }
  body { font-size: 9.5pt; line-height: 1.4; }
  main { max-width: none; padding: 0; }
  h1 { font-size: 22pt; }
  h2 { font-size: 13.5pt; margin-top: 8mm; }
  h3 { font-size: 11pt; margin-top: 5mm; }
  h2, h3, caption, thead, .head { break-after: avoid; }
  tr, li, .answer, .facts > div, .chart > svg, .bands table { break-inside: avoid; }
  .chart figcaption, .chart > svg, .legend { break-after: avoid; }
  .chart > svg { max-width: 130mm; }
  .legend, .chart figcaption { font-size: 8pt; }
  p { orphans: 3; widows: 3; max-width: none; }
  table, .answer p { font-size: inherit; }
  .scroll { overflow: visible; }
  .of, .kindof, .terms, .source, .made, table .of, table .kindof, table .terms, table .source { font-size: 8pt; }
  .matrix td { white-space: normal; }
  .bodies th, .bodies td { padding-top: .15rem; padding-bottom: .15rem; }
}
`;

import { drawingStyles, verdictStyles } from '@boothwright/report/preview';

/** The page takes the editor's colours; verdicts take those of the report, and in high contrast the editor's text colour. */
const pageStyles = `
:root {
  --paper: var(--vscode-editor-background); --ink: var(--vscode-editor-foreground);
  --soft: var(--vscode-descriptionForeground); --line: var(--vscode-panel-border, currentColor);
  --mark: var(--vscode-focusBorder);
  --pass: #19693c; --marginal: #875800; --fail: #a62a2c; --unknown: #4a5b78;
}
.vscode-dark { --pass: #7fc99a; --marginal: #e2b45e; --fail: #f2928c; --unknown: #aebbd6; }
.vscode-high-contrast {
  --soft: var(--vscode-editor-foreground); --line: var(--vscode-contrastBorder);
  --mark: var(--vscode-contrastActiveBorder, var(--vscode-focusBorder));
  --pass: var(--ink); --marginal: var(--ink); --fail: var(--ink); --unknown: var(--ink);
}
* { box-sizing: border-box; }
html { scroll-padding: 7rem 0 2rem; }
body {
  margin: 0; padding: 0 1.25rem 3rem; background: var(--paper); color: var(--ink);
  font: var(--vscode-font-size, 13px)/1.45 var(--vscode-font-family, system-ui, sans-serif);
  font-variant-numeric: lining-nums; overflow-wrap: break-word; overflow-anchor: none;
}
h1, h2, h3 { font-weight: 600; line-height: 1.25; }
h1 { margin: 0; font-size: 1.25em; }
h2 { margin: 2em 0 .5em; font-size: 1.2em; }
h3 { margin: 1.25em 0 .5em; font-size: 1em; }
p { margin: 0 0 .5em; max-width: 44em; }
.top {
  position: sticky; top: 0; z-index: 2; margin: 0 -1.25rem; padding: .75rem 1.25rem .5rem;
  background: var(--paper); border-bottom: 1px solid var(--line);
}
.tally { display: flex; flex-wrap: wrap; gap: 0 1.25em; margin: .25em 0 0; padding: 0; list-style: none; }
.notices { position: fixed; z-index: 2; bottom: .75rem; left: 1.25rem; right: 1.25rem; }
.notices p { margin: .25em 0 0; padding: .25em .5em; border: 1px dashed var(--ink); background: var(--paper); }
nav { display: flex; flex-wrap: wrap; gap: .25em 1em; margin: .5em 0 0; }
a, button.plain { color: var(--vscode-textLink-foreground); }
.vscode-high-contrast a { text-decoration: underline; }
figure { margin: 1.25rem 0 2rem; }
figcaption { display: flex; flex-wrap: wrap; align-items: center; gap: .25em .75em; margin: 0 0 .5em; font-weight: 600; }
.zoom { display: inline-flex; gap: .25em; }
button {
  min-width: 2em; padding: .1em .5em; border: 1px solid var(--vscode-button-border, var(--line)); border-radius: 3px;
  background: var(--vscode-button-secondaryBackground, transparent); color: var(--vscode-button-secondaryForeground, inherit);
  font: inherit; font-weight: 400; cursor: pointer;
}
button:disabled { opacity: .5; cursor: default; }
.vscode-high-contrast button { border-color: var(--vscode-contrastBorder); }
:focus-visible { outline: 2px solid var(--vscode-focusBorder); outline-offset: 1px; }
.sheet.zoomed { overflow: auto; max-height: 78vh; border: 1px solid var(--line); }
.sheet.zoomed > svg { cursor: grab; }
.sides { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(20rem, 100%), 1fr)); gap: 0 1.5rem; align-items: start; }
.served { margin: 0 0 1em; padding: 0; list-style: none; }
table { border-collapse: collapse; }
th, td { padding: .25em 1em .25em 0; text-align: left; vertical-align: top; border-bottom: 1px solid var(--line); font-weight: 400; }
thead th { font-weight: 600; }
summary { cursor: pointer; color: var(--soft); }
details table { margin: .25em 0 0; }
dl.keys { display: grid; grid-template-columns: max-content 1fr; gap: .125em 1em; margin: .25em 0 0; }
dl.keys dd { margin: 0; }
kbd { font: inherit; border: 1px solid var(--line); border-radius: 3px; padding: 0 .3em; }

.drawing.live { max-width: none; }
.live .target { cursor: pointer; outline: none; pointer-events: all; }
.live > g:not(.target) { pointer-events: none; }
.live .grip path { stroke: transparent; stroke-width: 11; stroke-dasharray: none; fill: none; }
.live .ring { fill: none; stroke: none; pointer-events: none; }
.live .target:hover > .ring { stroke: var(--mark); stroke-width: 1; }
.live .lit > .ring { fill: color-mix(in srgb, var(--mark) 16%, transparent); stroke: var(--mark); stroke-width: 1.5; stroke-dasharray: 5 2; }
.live .target:focus > .ring { stroke: var(--mark); stroke-width: 2.5; stroke-dasharray: none; }

.live.booth-plan .movable, .live.room-plan .movable { cursor: move; }
.live [data-moved] { opacity: .75; }
.sliders { display: grid; gap: .25em; margin: 0 0 1em; padding: .5em .75em; border: 1px solid var(--line); border-radius: 3px; }
.sliders legend { padding: 0 .25em; font-weight: 600; }
.sliders label { display: grid; grid-template-columns: minmax(8em, 1fr) minmax(8em, 2fr) 7em; gap: .75em; align-items: center; }
.sliders input { width: 100%; height: 1.75rem; margin: 0; accent-color: var(--vscode-focusBorder); }
.sliders output { font-variant-numeric: tabular-nums; }

.tip {
  position: fixed; z-index: 3; max-width: min(34rem, calc(100vw - 2rem)); max-height: 45vh; overflow: auto; padding: .5em .75em;
  border: 1px solid var(--vscode-editorHoverWidget-border, var(--line)); border-radius: 3px;
  background: var(--vscode-editorHoverWidget-background, var(--paper)); color: var(--vscode-editorHoverWidget-foreground, var(--ink));
}
.vscode-high-contrast .tip { border-color: var(--vscode-contrastBorder); }

.tip ul { margin: 0 0 .375em; padding: 0; list-style: none; }
.tip li { margin: 0 0 .375em; }
.tip code { font-family: var(--vscode-editor-font-family, monospace); font-size: .95em; color: inherit; background: none; }

.tip th.right, .tip td.right { text-align: right; }
.tip p, .tip table { margin: 0 0 .5em; }
.tip em { font-style: normal; color: var(--soft); }
@media (max-width: 25rem) {
  html { scroll-padding-top: .5rem; }
  body { padding: 0 .75rem 3rem; }
  nav a { padding: .25em 0; }
  .top { position: static; margin: 0 -.75rem; padding: .75rem; }
  .sliders label { grid-template-columns: 1fr auto; gap: 0 .75em; }
  .sliders input { grid-row: 2; grid-column: 1 / -1; }
  dl.keys { grid-template-columns: 1fr; }
  .tip { max-width: calc(100vw - 1rem); }
}
@media (forced-colors: active) {
  .live .lit > .ring, .live .target:focus > .ring { stroke: Highlight; }
}
`;

/** Puts the styles into the document. A sheet that a script makes is no inline style, which the page's policy forbids. */
export function adoptStyles(): void {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(drawingStyles + verdictStyles + pageStyles);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
}

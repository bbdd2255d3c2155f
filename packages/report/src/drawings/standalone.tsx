import { render } from 'preact-render-to-string';
import { light, properties } from '../palette.js';
import type { Drawing } from './drawing.js';
import { drawingStyles } from './styles.js';
import { DrawingSvg } from './svg.js';

/** A drawing as an SVG file that stands alone, on white paper. */
export function drawingFile(drawing: Drawing, madeBy: string): string {
  const svg = render(<DrawingSvg drawing={drawing} id="drawing" />);
  const { width, height } = drawing.sheet;
  const head = `<svg xmlns="http://www.w3.org/2000/svg" width="${Math.round(width)}" height="${Math.round(height)}"`;
  const style = `<style>svg { ${properties(light)} background: ${light.paper}; } ${drawingStyles}</style>`;
  return `<!-- ${madeBy} -->\n${svg.replace('<svg', head).replace('>', `>${style}`)}\n`;
}

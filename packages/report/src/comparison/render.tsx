import { render } from 'preact-render-to-string';
import { BlockList } from '../content/html.js';
import { blocksAsMarkdown } from '../markdown.js';
import { VerdictShapes } from '../parts/verdict.js';
import { styles } from '../styles.js';
import type { Units } from '../words.js';
import type { Comparison } from './compare.js';
import { comparisonContent } from './content.js';

/** A comparison as one web page that stands alone, without script. */
export function renderComparison(comparison: Comparison, units: Units, generatedBy: string): string {
  const page = (
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="generator" content={generatedBy} />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>Layouts side by side</title>
        <style dangerouslySetInnerHTML={{ __html: styles }} />
      </head>
      <body>
        <VerdictShapes />
        <main>
          <BlockList blocks={comparisonContent(comparison, units)} />
        </main>
      </body>
    </html>
  );
  return `<!doctype html>\n${render(page)}\n`;
}

export function comparisonMarkdown(comparison: Comparison, units: Units, generatedBy: string): string {
  return blocksAsMarkdown(comparisonContent(comparison, units), generatedBy);
}

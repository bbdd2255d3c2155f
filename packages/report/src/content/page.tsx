import { render } from 'preact-render-to-string';
import { drawingStyles } from '../drawings/styles.js';
import { VerdictShapes } from '../parts/verdict.js';
import { styles } from '../styles.js';
import type { Block } from './blocks.js';
import { BlockList } from './html.js';

/** Blocks as one web page that stands alone, without script and without anything to fetch. */
export function blocksAsPage(blocks: readonly Block[], title: string, generatedBy: string): string {
  const page = (
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="generator" content={generatedBy} />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>{title}</title>
        <style dangerouslySetInnerHTML={{ __html: styles + drawingStyles }} />
      </head>
      <body>
        <VerdictShapes />
        <main>
          <BlockList blocks={blocks} />
        </main>
      </body>
    </html>
  );
  return `<!doctype html>\n${render(page)}\n`;
}

import type { Assessment } from '@boothwright/fit';
import type { Block, Item, Span, Text } from './content/blocks.js';
import { contentOf } from './content/report.js';
import { code, heading, inline, list, strong, table } from './markdown-text.js';
import type { ReportOptions } from './options.js';

/** The fit report as Markdown: the HTML report without its drawings and without what it folds away. */
export function renderMarkdown(assessment: Assessment, options: ReportOptions): string {
  return blocksAsMarkdown(contentOf(assessment, options), options.generatedBy);
}

/** Blocks as Markdown that is known again as ours. */
export function blocksAsMarkdown(blocks: readonly Block[], generatedBy: string): string {
  return `${[`<!-- ${generatedBy} -->`, ...blocks.flatMap(blockText)].join('\n\n')}\n`;
}

function blockText(block: Block): string[] {
  switch (block.kind) {
    case 'heading':
      return [heading(block.level, block.text)];
    case 'paragraph':
      return [line(block.text)];
    case 'list':
      return list(
        block.items.map((item: Item) => item.map(line)),
        block.numbered ? '1.' : '-',
      );
    case 'table':
      return [
        `${inline(block.caption)}:`,
        ...table(
          block.head.map(cell),
          block.rows.map((row) => row.map(cell)),
        ),
      ];
    case 'charts':
      return list(
        block.charts.map(({ title, lines }) => [strong(title), ...lines.map(({ summary }) => inline(summary))]),
      );
    case 'page':
      return block.blocks.flatMap(blockText);
    case 'figures':
    case 'drawn':
    case 'more':
      return [];
  }
}

function line(text: Text): string {
  return text.map(spanText).join(' ');
}

/** Verdicts fill tables: there they are not set in bold. */
function cell(text: Text): string {
  return text
    .map((span) => (typeof span === 'object' && 'verdict' in span ? inline(span.word) : spanText(span)))
    .join(' ');
}

function spanText(span: Span): string {
  if (typeof span === 'string') return inline(span);
  if ('verdict' in span) return strong(span.word);
  return { strong, code, soft: inline }[span.as](span.text);
}

import { blocksAsPage } from '../content/page.js';
import { blocksAsMarkdown } from '../markdown.js';
import type { ReportOptions } from '../options.js';
import type { Units } from '../words.js';
import type { Comparison } from './compare.js';
import { comparisonContent, comparisonTitle } from './content.js';

export interface ComparisonOptions extends Pick<ReportOptions, 'generatedBy'> {
  readonly units: Units;
  /** What the first lines say of names; nothing where no layout names anybody. */
  readonly names: string | undefined;
}

/** A comparison as one web page that stands alone, without script. */
export function renderComparison(comparison: Comparison, { units, names, generatedBy }: ComparisonOptions): string {
  return blocksAsPage(comparisonContent(comparison, units, names), comparisonTitle, generatedBy);
}

export function comparisonMarkdown(comparison: Comparison, { units, names, generatedBy }: ComparisonOptions): string {
  return blocksAsMarkdown(comparisonContent(comparison, units, names), generatedBy);
}

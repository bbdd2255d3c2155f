import { blocksAsPage } from '../content/page.js';
import { blocksAsMarkdown } from '../markdown.js';
import type { Units } from '../words.js';
import type { Comparison } from './compare.js';
import { comparisonContent, comparisonTitle } from './content.js';

/** A comparison as one web page that stands alone, without script. */
export function renderComparison(comparison: Comparison, units: Units, generatedBy: string): string {
  return blocksAsPage(comparisonContent(comparison, units), comparisonTitle, generatedBy);
}

export function comparisonMarkdown(comparison: Comparison, units: Units, generatedBy: string): string {
  return blocksAsMarkdown(comparisonContent(comparison, units), generatedBy);
}

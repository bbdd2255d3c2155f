export { compareLayouts } from './compare.js';
export type { ComparedResult, Comparison, Outcome } from './compare.js';
export { describe, groupsOf, wordOf } from './content.js';
export { namedLayouts } from './named.js';
export { comparisonMarkdown, renderComparison, type ComparisonOptions } from './render.js';
export { unitsOf } from '../words.js';

export { compareLayouts } from './compare.js';
export type { ComparedResult, Comparison, Outcome } from './compare.js';
export { describe, groupsOf, wordOf } from './content.js';
export { comparisonMarkdown, renderComparison } from './render.js';
export { unitsOf } from '../words.js';

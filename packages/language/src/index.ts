export {
  analyse,
  analysisOf,
  createAnalyser,
  type Analysis,
  type AnalysisOptions,
  type FileDiagnostic,
  type FileOrText,
} from './analyse.js';
export type { Computation } from './computation.js';
export { createBoothServices } from './module.js';
export type { BoothContext, BoothServices } from './services.js';
export { isBooth, readBooth } from './reading/reader.js';
export { issueCodes, type IssueCode } from './validation/issue.js';
export { kinds, type BlockEntry, type Kind, type PropertyEntry, type Shape } from './vocabulary/entries.js';
export { vocabulary } from './vocabulary/vocabulary.js';
export { markAdvice } from './syntax/messages.js';
export { withArticle } from './validation/context.js';

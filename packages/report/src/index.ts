export { renderReport } from './report.js';
export { renderMarkdown } from './markdown.js';
export type { ReportOptions } from './options.js';
export { lettersFor } from './names.js';
export { isReport } from './marker.js';
export { readingMeanings, strengthMeanings } from './strength.js';
export { bandsMean, tellMeasure, tellStations } from './telling/advice.js';
export type { BandsTold, PlanTold, StationTold } from './telling/advice.js';

export { renderReport, type ReportOptions } from './report.js';
export { isReport } from './marker.js';
export { readingMeanings, strengthMeanings } from './strength.js';

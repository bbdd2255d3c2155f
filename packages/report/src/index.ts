export { renderReport, type ReportOptions } from './report.js';
export { isReport } from './marker.js';
export { strengthMeanings } from './strength.js';

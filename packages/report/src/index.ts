export { renderReport, type ReportOptions } from './report.js';
export { isReport } from './marker.js';

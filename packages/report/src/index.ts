export { renderReport, type ReportOptions } from './report.js';
export { isReport } from './marker.js';
export { readingMeanings, strengthMeanings } from './strength.js';
export { bandsMean, tellMeasure, tellStations } from './telling/advice.js';
export type { BandsTold, PlanTold, StationTold } from './telling/advice.js';

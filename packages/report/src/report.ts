import type { Assessment } from '@boothwright/fit';
import { blocksAsPage } from './content/page.js';
import { contentOf } from './content/report.js';
import { naming, type ReportOptions } from './options.js';

/** The fit report of an assessment: one HTML file that stands alone, without script and without anything to fetch. */
export function renderReport(assessment: Assessment, options: ReportOptions): string {
  return blocksAsPage(contentOf(assessment, options), titleOfReport(assessment, options), options.generatedBy);
}

/** What the report calls itself, without a name if it is to have none. */
export function titleOfReport(assessment: Assessment, options: ReportOptions): string {
  return `${naming(assessment, options)(assessment.booth.name)}: fit report`;
}

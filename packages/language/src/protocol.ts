import type { Assessment } from '@boothwright/fit';

/** What an editor asks the language server beyond the standard protocol. */

/** Asks for the assessment of one open booth file. Params `AssessmentParams`, result `AssessmentResult | null`. */
export const assessmentRequest = 'boothwright/assessment';

export interface AssessmentParams {
  /** The URI of the booth file's text document. */
  readonly uri: string;
}

/** `null` instead of this: the server does not know the file, or has never been able to read it. */
export interface AssessmentResult {
  readonly assessment: Assessment;
  /** True if the text cannot be read now, and this is of the last text that could. */
  readonly stale: boolean;
}

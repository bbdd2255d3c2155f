import type { Advice, Assessment } from '@boothwright/fit';
import { lettersFor, type NameStyle } from './names.js';

export interface ReportOptions {
  /** The product and its version, as in 'Boothwright 0.1.0'. By its first word a report is known again as ours. */
  readonly generatedBy: `Boothwright ${string}`;
  /** The day to print on the report, as it should be read. The report has no clock of its own. */
  readonly date?: string;
  readonly names: NameStyle;
  /** What would fit; without it the report has no plans, curves or shopping specification. */
  readonly advice?: Advice;
}

/** The assessment and the advice, names as the options ask for them. */
export function named(
  assessment: Assessment,
  { names, advice }: Pick<ReportOptions, 'names' | 'advice'>,
): [Assessment, Advice | undefined] {
  return naming(assessment, { names })<[Assessment, Advice | undefined]>([assessment, advice]);
}

/** Puts names as the options ask for them into whatever is made of an assessment: all of it, or one text. */
export function naming({ booth }: Assessment, { names }: Pick<ReportOptions, 'names'>): <T>(value: T) => T {
  return names === 'letters' ? lettersFor(booth) : (value) => value;
}

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

/** What the language server asks an editor for files that it cannot reach itself, as in a browser. */

/** Params `FileParams`, result: the text of the file. Fails if it cannot be read. */
export const readFileRequest = 'boothwright/readFile';
/** Params `FileParams`, result `FileEntry[]`: what a folder holds. Fails if it cannot be read. */
export const readDirectoryRequest = 'boothwright/readDirectory';

export interface FileParams {
  readonly uri: string;
}

export interface FileEntry {
  readonly uri: string;
  readonly isFile: boolean;
  readonly isDirectory: boolean;
}

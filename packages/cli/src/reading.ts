import type { Assessment, Origin } from '@boothwright/fit';

/** What became of one booth file. */
export interface Reading {
  /** The path as it was typed. */
  readonly file: string;
  /** What the language says of the text, or the file system of the file. */
  readonly problems: readonly Problem[];
  /** Absent if the file could not be read or understood: a booth half understood is not judged. */
  readonly assessment?: Assessment;
}

export interface Problem {
  readonly severity: 'error' | 'warning';
  readonly message: string;
  readonly code?: string;
  /** Absent if the whole file is meant. */
  readonly origin?: Origin;
}

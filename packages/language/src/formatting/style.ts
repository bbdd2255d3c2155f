/** How an editor asks for a text to be laid out. */
export interface Style {
  /** One step of indentation. */
  readonly indent: string;
  /** What ends a line. */
  readonly newLine: string;
}

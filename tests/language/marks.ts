/** What a mark in a fixture says: `//   ^^^ error: message` under the text that is meant. */
export interface Mark {
  /** Zero-based, of the marked line. */
  readonly line: number;
  readonly start: number;
  readonly end: number;
  readonly severity: string;
  readonly message: string;
}

const mark = /^(\s*\/\/\s*)(\^+) (error|warning|information|hint): (.*)$/;

/** The marks of a text, in the order of the text. Marks under one line may follow each other. */
export function marksOf(text: string): Mark[] {
  const marks: Mark[] = [];
  let marked = -1;
  text.split('\n').forEach((content, line) => {
    const found = mark.exec(content);
    if (!found) {
      marked = line;
      return;
    }
    const start = found[1]!.length;
    marks.push({ line: marked, start, end: start + found[2]!.length, severity: found[3]!, message: found[4]! });
  });
  return marks.sort((a, b) => a.line - b.line || a.start - b.start);
}
